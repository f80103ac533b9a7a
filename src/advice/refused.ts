/** What cannot be tied for this horse, and why, in one entry a style and strand count. */
import type { Style } from '../order/types.ts';
import type { Phrase } from '../units/phrase.ts';
import type { Finding, Judged } from './judge.ts';

export interface Refused {
  readonly style: Style;
  readonly strands: number;
  /** The rule that the variant nearest to passing fails first. */
  readonly rule: string;
  readonly reason: Phrase;
  /** How many buckle and length variants were tried; none passed. */
  readonly tried: number;
}

/** A run of neighbouring strand counts of one style that fail the same rule; `reason` is that of the mildest. */
export interface RefusedRun {
  readonly style: Style;
  readonly from: number;
  readonly to: number;
  readonly rule: string;
  readonly mildest: Refused;
}

const refusals = (judged: Judged): Finding[] =>
  judged.findings.filter(({ judgement }) => judgement === 'refuse');

/** Style and strand counts of which no variant passes. Order as the candidates came: fewest strands first. */
export function refusedOf(judged: readonly Judged[]): Refused[] {
  const groups = new Map<string, Judged[]>();
  for (const entry of judged) {
    const key = `${entry.candidate.style} ${entry.candidate.strands}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [entry]);
    else group.push(entry);
  }
  return [...groups.values()].flatMap((group) => (group.some(passes) ? [] : [summary(group)]));
}

/** A candidate passes when no rule refuses it. */
export const passes = (judged: Judged): boolean => judged.countOf('refuse') === 0;

function summary(group: readonly Judged[]): Refused {
  const seen = group.map((entry) => ({ entry, failed: refusals(entry) }));
  let best = seen[0] as (typeof seen)[number];
  for (const other of seen) if (nearer(other.failed, best.failed)) best = other;
  const { rule, reason } = best.failed[0] as Finding;
  const { style, strands } = best.entry.candidate;
  return { style, strands, rule, reason, tried: group.length };
}

/** Fewer rules failed, else failed by less. */
function nearer(a: readonly Finding[], b: readonly Finding[]): boolean {
  return a.length === b.length ? worstMargin(a) > worstMargin(b) : a.length < b.length;
}

const worstMargin = (failed: readonly Finding[]): number =>
  Math.min(...failed.map(({ margin }) => margin ?? Number.NEGATIVE_INFINITY));

/** Neighbouring counts of a style with the same failing rule, told in one line. */
export function refusedRuns(refused: readonly Refused[]): RefusedRun[] {
  const runs: RefusedRun[] = [];
  for (const style of new Set(refused.map((entry) => entry.style))) {
    const ofStyle = refused.filter((entry) => entry.style === style).sort((a, b) => a.strands - b.strands);
    for (const entry of ofStyle) {
      const last = runs.at(-1);
      const joins = last?.style === style && last.rule === entry.rule && entry.strands === last.to + 2;
      if (last !== undefined && joins) runs[runs.length - 1] = { ...last, to: entry.strands };
      else runs.push({ style, from: entry.strands, to: entry.strands, rule: entry.rule, mildest: entry });
    }
  }
  return runs;
}
