/** A wanted or current cinch in sentences. */
import type { RankedSpec } from '../advice/advice.ts';
import type { Checked, CinchPart } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import type { CinchAsked } from '../order/types.ts';
import { formatLength } from '../units/print.ts';
import { visible } from '../units/clean.ts';
import { capital, phraseText, type Units } from '../units/text.ts';
import { styleName, troubleName } from './words.ts';

/** What was named, and what we filled in. */
export function askedText({ asked, filled, kept = [] }: Checked, units: Units): string {
  const named = kept.length === 0 ? asked : only(asked, (part) => !kept.includes(part));
  const fromOrder = only(asked, (part) => kept.includes(part));
  const rest = kept.length === 0 ? '' : `; the rest as in the order: ${saidText(fromOrder, units)}`;
  const asTold = `${saidText(named, units)}${rest}`;
  if (filled.length === 0) return asTold;
  return `${asTold} (we filled in: ${filled.map((part) => filledText(part, units)).join(', ')})`;
}

const only = (asked: CinchAsked, wanted: (part: CinchPart) => boolean): CinchAsked =>
  Object.fromEntries(Object.entries(asked).filter(([part]) => wanted(part as CinchPart)));

function saidText(asked: CinchAsked, units: Units): string {
  const said = [
    asked.style === undefined ? undefined : styleName(asked.style),
    asked.strands === undefined ? undefined : `${String(asked.strands)} strands`,
    asked.length === undefined ? undefined : `${formatLength(asked.length, units)} long`,
    asked.buckle === undefined ? undefined : `${visible(asked.buckle)} buckle`,
  ].filter((part) => part !== undefined);
  return said.length === 0 ? 'nothing named' : said.join(', ');
}

function filledText({ part, taken }: Checked['filled'][number], units: Units): string {
  if (part === 'strands') return `${String(taken)} strands`;
  return `${part} ${typeof taken === 'number' ? formatLength(taken, units) : visible(taken)}`;
}

export type Standing = 'refused' | 'not sure' | 'passes';

/** Rules that do not apply to a cinch already tied. */
const onlyBeforeTying: ReadonlySet<string> = new Set(['stock', 'strand-range', 'better-than-now']);

/** Those every printer shows; empty when it can't be laid on the horse. */
export function findingsOf({ which, judged }: Checked): readonly Finding[] {
  const findings = judged?.findings ?? [];
  return which === 'current' ? findings.filter(({ rule }) => !onlyBeforeTying.has(rule)) : findings;
}

/** A missing fact here could rule it out. */
const mayDecide = ({ rule, judgement }: Finding): boolean =>
  judgement === 'cannot-tell' && ['elbow-clearance', 'buckle-height', 'buckle-strands'].includes(rule);

/** A cinch that can't be laid is refused. */
export const standingOf = (checked: Checked): Standing =>
  checked.judged === undefined ? 'refused' : standingBy(findingsOf(checked));

/** "not sure" when the elbow is poor or a missing fact may decide. */
export function standingBy(findings: readonly Finding[]): Standing {
  if (findings.some((f) => f.judgement === 'refuse')) return 'refused';
  const elbow = findings.find((f) => f.rule === 'elbow-clearance')?.judgement;
  return elbow === 'poor' || findings.some(mayDecide) ? 'not sure' : 'passes';
}

/** What we could not judge; it must never look good. */
export const openOf = (checked: Checked): readonly Finding[] =>
  standingOf(checked) === 'refused'
    ? []
    : findingsOf(checked).filter(({ judgement }) => judgement === 'cannot-tell');

/** Undefined unless refused. */
export const nearestOf = (checked: Checked): RankedSpec | undefined =>
  standingOf(checked) === 'refused' ? checked.nearest : undefined;

/** Each trouble and its likely cause. */
export function causeTexts({ causes }: Checked, units: Units): string[] {
  return causes.map(({ trouble, explained, words }) => {
    const how =
      explained === undefined
        ? 'we cannot tell:'
        : explained
          ? 'likely from this cinch:'
          : 'this cinch does not explain it;';
    return `${capital(troubleName(trouble))}: ${how} ${phraseText(words, units)}.`;
  });
}
