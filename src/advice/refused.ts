/** What cannot be tied for this horse, and why, in one entry a style and strand count. */
import type { Style } from '../order/types.ts';
import type { Phrase } from '../units/phrase.ts';
import type { Finding, Judged } from './judge.ts';
import type { Tied } from './make.ts';

export interface Refused {
  readonly style: Style;
  readonly strands: number;
  /** The rule that the variant nearest to passing fails first. */
  readonly rule: string;
  readonly reason: Phrase;
  /** How many buckle and length variants were tried; none passed. */
  readonly tried: number;
}

const refusals = (judged: Judged): Finding[] =>
  judged.findings.filter(({ judgement }) => judgement === 'refuse');

/** A style and strand count of which no way passes, as an entry; none for others. */
export function refusedOf(tied: Tied): Refused[] {
  const nearest = tied.made === undefined ? nearestTo(tied) : undefined;
  const [failed] = nearest === undefined ? [] : refusals(nearest);
  if (failed === undefined) return [];
  const { style, strands } = tied;
  return [{ style, strands, rule: failed.rule, reason: failed.reason, tried: tied.ways().length }];
}

/** Of the ways that are refused the one nearest to passing: fewer rules failed, else failed by less. */
export function nearestTo({ ways }: Pick<Tied, 'ways'>): Judged | undefined {
  const seen = ways().map((entry) => ({ entry, failed: refusals(entry) }));
  let [best] = seen;
  for (const other of seen) if (best !== undefined && nearer(other.failed, best.failed)) best = other;
  return best?.entry;
}

const nearer = (a: readonly Finding[], b: readonly Finding[]): boolean =>
  a.length === b.length ? worstMargin(a) > worstMargin(b) : a.length < b.length;

const worstMargin = (failed: readonly Finding[]): number =>
  Math.min(...failed.map(({ margin }) => margin ?? Number.NEGATIVE_INFINITY));
