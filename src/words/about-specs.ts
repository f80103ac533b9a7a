/** A ranked spec in sentences. */
import type { RankedSpec } from '../advice/advice.ts';
import type { Finding, Judged } from '../advice/judge.ts';
import type { Simulated } from '../advice/simulate.ts';
import type { Facts } from '../horse/facts.ts';
import type { Clearance } from '../cinch/candidate.ts';
import { decimals, formatLength } from '../units/print.ts';
import {
  chanceText,
  phraseText,
  quantityText,
  spreadNumber,
  type Reading,
  type Units,
} from '../units/text.ts';
import { judgementWords, ruleName } from './words.ts';

/** Where it comes closest, and how sure that is. */
export function nearestText({ inches, sd, station, where }: Clearance, units: Units): string {
  const edge = where === 'buckle' ? "the buckle's frame" : 'the front edge of the cinch';
  const at = `${formatLength(station, units)} up the side from the chest midline`;
  const gap = formatLength(Math.abs(inches), units, 'computed');
  const far = `${gap}${inches < 0 ? ' over it' : ''}, give or take ${spreadNumber(sd, units)}`;
  return `Least sure to clear the elbow: ${edge}, ${at}: ${far}.`;
}

/** Undefined for the last. */
export function becauseText(spec: RankedSpec, units: Units): string | undefined {
  const why = becauseOnly(spec, units);
  if (why === undefined) return undefined;
  return `${spec.rank === 1 ? 'First' : `Before no. ${String(spec.rank + 1)}`} because ${why}.`;
}

/** The reason alone. */
export const becauseOnly = ({ becauseOf }: RankedSpec, units: Units): string | undefined =>
  becauseOf === undefined ? undefined : phraseText(becauseOf.words, units);

/** "acceptable on latigo run: leaves 5.50 in of latigo each side". */
export function findingText({ rule, judgement, reason }: Finding, units: Units, reading?: Reading): string {
  const { word } = judgementWords[judgement];
  const says =
    judgement === 'cannot-tell' ? 'not judged:' : judgement === 'not-applicable' ? `${word}:` : `${word} on`;
  return `${says} ${ruleName(rule)}: ${phraseText(reason, units, reading)}.`;
}

/** Worst first. */
function notGood({ findings }: Pick<Judged, 'findings'>): Finding[] {
  const order = ['refuse', 'poor', 'cannot-tell', 'acceptable'] as const;
  return order.flatMap((judgement) =>
    findings.filter((finding) => finding.judgement === judgement && !onlyCompares(finding)),
  );
}

/** The pressure index compares widths: only `--why` shows it. */
const onlyCompares = ({ rule, judgement }: Finding): boolean =>
  rule === 'pressure-index' && judgement === 'acceptable';

/** In the unit of the reason's first quantity. */
export function marginText({ margin, reason }: Finding, units: Units): string | undefined {
  if (margin === undefined || !Number.isFinite(margin)) return undefined;
  const first = reason.values.find((value) => typeof value !== 'string');
  if (first === undefined || typeof first === 'string') return undefined;
  const as = first.as === 'length' ? 'fine-length' : first.as;
  const sign = margin > 0 ? '+' : '';
  return `${sign}${as === 'count' ? decimals(margin, 0) : quantityText({ value: margin, as }, units, 'decimals')}`;
}

/** What every screen tells, worst first; fair lengths only once ring to ring is taped. */
export function toTell(
  judged: Pick<Judged, 'findings'>,
  { lengthNeed }: Pick<Facts, 'lengthNeed'>,
): Finding[] {
  const found = notGood(judged);
  if (lengthNeed.measured) return found;
  return found.filter(({ rule, judgement }) => judgement !== 'acceptable' || !ofLength.has(rule));
}

/** Two guesses that differ tell us nothing. */
const ofLength: ReadonlySet<string> = new Set(['length-agreement', 'latigo-run']);

/** "Poor: ...; ...", each reason once. */
export function reasonsUnder(lead: string, findings: readonly Finding[], units: Units): string[] {
  const reasons = new Set(findings.map(({ reason }) => phraseText(reason, units)));
  return reasons.size === 0 ? [] : [`${lead}: ${[...reasons].join('; ')}.`];
}

/** At each length of the specs, and one step either way. */
export function latigoText(specs: readonly RankedSpec[], units: Units): string {
  const runs = new Map<number, number>();
  for (const { candidate, evenLengths } of specs) {
    runs.set(candidate.length, candidate.run);
    for (const { length, run } of evenLengths) runs.set(length, run);
  }
  const each = [...runs]
    .sort(([a], [b]) => a - b)
    .map(([length, run]) => `${formatLength(run, units, 'computed')} at ${formatLength(length, units)}`);
  const [first = '', ...others] = each;
  return `Ring-to-buckle gap, each side: ${[first, ...others].join(', ')}.`;
}

/** The clearance by random draws. */
export function simulatedText({ mean, sd, chance, draws, seed }: Simulated, units: Units): string {
  const gap = `${formatLength(mean, units, 'computed')}, give or take ${spreadNumber(sd, units)}`;
  return `${String(draws)} random draws (seed ${String(seed)}): ${gap}, ${chanceText(chance)} of them clear.`;
}
