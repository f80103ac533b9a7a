/** A ranked spec in sentences: what it is, how it clears the elbow, why it stands where it stands, what is not good about it. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Finding, Judged } from '../advice/judge.ts';
import type { Simulated } from '../advice/simulate.ts';
import type { Facts } from '../facts/facts.ts';
import type { Clearance } from '../fit/candidate.ts';
import type { Style } from '../order/types.ts';
import { decimals, formatLength } from '../units/print.ts';
import { chanceText, listed, ordinal, phraseText, quantityText, spreadNumber, type Units } from './text.ts';
import { judgementWords, ruleName, specName, styleName } from './words.ts';

/** Of what the percentages are sure, which is less than the distance itself: said once above a list. */
export const sureOf = ({ floor }: Pick<Facts, 'floor'>, units: Units): string =>
  `sure: of at least ${formatLength(floor, units, 'computed')}`;

/** "clears the elbow by 1.48 in, 84 % sure", in a list under `sureOf`. */
export function clearanceText({ inches, chance }: Clearance, units: Units): string {
  if (inches < 0) return `lies over the elbow line by ${formatLength(-inches, units, 'computed')}`;
  return `clears the elbow by ${formatLength(inches, units, 'computed')}, ${chanceText(chance)} sure`;
}

/** The same where it stands alone: "..., 84 % sure of at least 1.04 in", as the rule itself says it. */
export function elbowText({ candidate, findings }: Judged, units: Units): string {
  const finding = findings.find(({ rule }) => rule === 'elbow-clearance');
  return finding === undefined
    ? clearanceText(candidate.clearance, units)
    : phraseText(finding.reason, units);
}

/** Where along the cinch it comes nearest, and how sure the distance is. */
export function nearestText({ inches, sd, station, where }: Clearance, units: Units): string {
  const edge = where === 'buckle' ? "the buckle's frame" : 'the front edge of the cinch';
  const at = `${formatLength(station, units)} up the side from the chest midline`;
  const gap = formatLength(Math.abs(inches), units, 'computed');
  const far = `${gap}${inches < 0 ? ' over it' : ''}, give or take ${spreadNumber(sd, units)}`;
  return `Nearest the elbow: ${edge}, ${at}: ${far}.`;
}

/** Why it comes before the next one; undefined for the last. */
export function becauseText(spec: RankedSpec, units: Units): string | undefined {
  const why = becauseOnly(spec, units);
  if (why === undefined) return undefined;
  return `${spec.rank === 1 ? 'First' : `Before no. ${String(spec.rank + 1)}`} because ${why}.`;
}

/** The reason alone, with the other called by its number. */
export function becauseOnly({ rank, becauseOf }: RankedSpec, units: Units): string | undefined {
  if (becauseOf === undefined) return undefined;
  return phraseText(becauseOf.words, units).replace(/^the other\b/, `no. ${String(rank + 1)}`);
}

/** "acceptable: latigo run". */
export const shortFinding = ({ rule, judgement }: Finding): string =>
  `${judgementWords[judgement].word}: ${ruleName(rule)}`;

/** "acceptable on latigo run: leaves 5.50 in of latigo each side". */
export function findingText({ rule, judgement, reason }: Finding, units: Units): string {
  const { word } = judgementWords[judgement];
  const on = judgement === 'cannot-tell' || judgement === 'not-applicable' ? ':' : ' on';
  return `${word}${on} ${ruleName(rule)}: ${phraseText(reason, units)}.`;
}

/** The same on a card, without the clearance and the latigo run that stand there already. */
export function briefText(finding: Finding, units: Units): string {
  const text = findingText(finding, units);
  if (finding.rule === 'elbow-clearance') return text.replace(/: clears the elbow by [^,]*, /, ': ');
  const latigo = finding.rule === 'latigo-run' && finding.judgement === 'acceptable';
  return latigo ? text.replace(/: leaves [^,]* of latigo each side, /, ': ') : text;
}

/** Findings that are neither good nor beside the point, worst first. */
export function notGood({ findings }: Pick<Judged, 'findings'>): Finding[] {
  const order = ['refuse', 'poor', 'cannot-tell', 'acceptable'] as const;
  return order.flatMap((judgement) =>
    findings.filter((finding) => finding.judgement === judgement && !onlyCompares(finding)),
  );
}

/** The pressure index compares widths, so falling short of good by it is nothing to tell a customer; `--why` has it. */
const onlyCompares = ({ rule, judgement }: Finding): boolean =>
  rule === 'pressure-index' && judgement === 'acceptable';

/** A finding's margin in the unit of what was judged, which is that of the first quantity in its reason. */
export function marginText({ margin, reason }: Finding, units: Units): string | undefined {
  if (margin === undefined || !Number.isFinite(margin)) return undefined;
  const first = reason.values.find((value) => typeof value !== 'string');
  if (first === undefined || typeof first === 'string') return undefined;
  const as = first.as === 'length' ? 'fine-length' : first.as;
  const sign = margin > 0 ? '+' : '';
  return `${sign}${as === 'count' ? decimals(margin, 0) : quantityText({ value: margin, as }, units)}`;
}

/** Findings that all the specs share word for word are said once. */
export function sharedFindings(specs: readonly Judged[], units: Units): ReadonlySet<string> {
  const [first, ...others] = specs.map(
    (spec) => new Set(notGood(spec).map((finding) => briefText(finding, units))),
  );
  if (first === undefined || others.length === 0) return new Set();
  return new Set([...first].filter((text) => others.every((other) => other.has(text))));
}

/** What latigo run each length of the specs leaves, and both even neighbours of each. */
export function latigoText(specs: readonly RankedSpec[], units: Units): string {
  const runs = new Map<number, number>();
  for (const { candidate, evenLengths } of specs) {
    runs.set(candidate.length, candidate.run);
    for (const { length, run } of evenLengths) runs.set(length, run);
  }
  const each = [...runs]
    .sort(([a], [b]) => a - b)
    .map(([length, run]) => `${formatLength(run, units, 'computed')} if ${formatLength(length, units)}`);
  const [first = '', ...others] = each;
  return `Latigo each side: ${[`${first} long`, ...others].join(', ')}.`;
}

/** How many pass, and where the best of the styles that are not shown ranks. */
export function othersText({ specs }: Advice, shown: number): string | undefined {
  const rest = specs.slice(shown);
  if (rest.length === 0) return undefined;
  const seen = new Set<Style>(specs.slice(0, shown).map(({ candidate }) => candidate.style));
  const best: string[] = [];
  for (const { candidate, rank } of rest) {
    if (seen.has(candidate.style)) continue;
    seen.add(candidate.style);
    best.push(`${styleName(candidate.style)} ${String(candidate.strands)} strands (${ordinal(rank)})`);
  }
  const also = `${String(rest.length)} more ${rest.length === 1 ? 'passes' : 'pass'}`;
  if (best.length > 0) return `Also pass: ${listed(best)}; ${String(specs.length)} pass in all.`;
  const [next] = rest;
  return next === undefined ? undefined : `${also}; next: ${specName(next.candidate)}.`;
}

/** The clearance as drawn at random, beside the computed one. */
export function simulatedText({ mean, sd, chance, draws, seed }: Simulated, units: Units): string {
  const gap = `${formatLength(mean, units, 'computed')}, give or take ${spreadNumber(sd, units)}`;
  return `Drawn ${String(draws)} times (seed ${String(seed)}): ${gap}, ${chanceText(chance)} of them clear.`;
}
