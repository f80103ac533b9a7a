/** What cannot be tied for this horse, and why. */
import type { Style } from '../order/types.ts';
import type { Phrase } from '../units/phrase.ts';
import type { Tied } from './make.ts';

export interface Refused {
  readonly style: Style;
  readonly strands: number;
  /** The first rule it fails. */
  readonly rule: string;
  readonly reason: Phrase;
  /** Buckles and lengths tried. */
  readonly tried: number;
}

/** Empty when some way passes. */
export function refusedOf({ style, strands, made, ways }: Tied): Refused[] {
  const tried = made === undefined ? ways() : [];
  const failed = tried[0]?.findings.find(({ judgement }) => judgement === 'refuse');
  if (failed === undefined) return [];
  return [{ style, strands, rule: failed.rule, reason: failed.reason, tried: tried.length }];
}
