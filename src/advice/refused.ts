/** What cannot be tied for this horse, and why, in one entry a style and strand count. */
import type { Style } from '../order/types.ts';
import type { Phrase } from '../units/phrase.ts';
import type { Tied } from './make.ts';

export interface Refused {
  readonly style: Style;
  readonly strands: number;
  /** The rule that it fails first, as it would be tied all the same. */
  readonly rule: string;
  readonly reason: Phrase;
  /** How many buckle and length variants were tried; none passed. */
  readonly tried: number;
}

/** A style and strand count of which no way passes, as an entry; none for others. */
export function refusedOf({ style, strands, made, ways }: Tied): Refused[] {
  const tried = made === undefined ? ways() : [];
  const failed = tried[0]?.findings.find(({ judgement }) => judgement === 'refuse');
  if (failed === undefined) return [];
  return [{ style, strands, rule: failed.rule, reason: failed.reason, tried: tried.length }];
}
