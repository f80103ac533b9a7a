/** A cinch that somebody wants or rides in, in sentences: what was asked, how it stands, what would pass. */
import type { RankedSpec } from '../advice/advice.ts';
import type { Checked, CinchPart } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import type { Facts } from '../facts/facts.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { CinchAsked } from '../order/types.ts';
import { listed } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { visible } from './clean.ts';
import { elbowText, lesserTexts, ruleWords, toTell, type Reader } from './about-specs.ts';
import { capital, phraseText, type Units } from './text.ts';
import { styleName, troubleName } from './words.ts';

/** Whose cinch it is. */
export const whichText = ({ which }: Checked): string =>
  which === 'wants'
    ? 'What the customer wants'
    : which === 'current'
      ? 'The cinch ridden in now'
      : 'The cinch named on the command line';

/** What was said about it, and what was taken for the parts nobody named. */
export function askedText({ asked, filled, kept = [] }: Checked, units: Units): string {
  const named = kept.length === 0 ? asked : only(asked, (part) => !kept.includes(part));
  const fromOrder = only(asked, (part) => kept.includes(part));
  const rest = kept.length === 0 ? '' : `; the rest as the order wants it: ${saidText(fromOrder, units)}`;
  const asTold = `${saidText(named, units)}${rest}`;
  if (filled.length === 0) return asTold;
  return `${asTold} (not said, so taken: ${filled.map((part) => filledText(part, units)).join(', ')})`;
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
  return said.length === 0 ? 'nothing said' : said.join(', ');
}

/** `taken` holds a length as the check writes it, in inches. */
function filledText({ part, taken }: Checked['filled'][number], units: Units): string {
  const inches = part === 'length' ? Number(taken.replace(/ in$/, '')) : Number.NaN;
  const shown = Number.isFinite(inches) ? formatLength(inches, units) : visible(taken);
  return part === 'strands' ? `${shown} strands` : `${part} ${shown}`;
}

/** refused, not sure, or passes. */
export type Standing = 'refused' | 'not sure' | 'passes';

/** What the shop has on its shelf, and what it ties, says nothing about a cinch that is there already; nor is it better than itself. */
const onlyBeforeTying: ReadonlySet<string> = new Set(['stock', 'strand-range', 'better-than-now']);

/** The verdicts that mean something to the reader, none when it could not be laid: every printer takes them from here. */
export function findingsOf({ which, judged }: Checked): readonly Finding[] {
  const findings = judged?.findings ?? [];
  return which === 'current' ? findings.filter(({ rule }) => !onlyBeforeTying.has(rule)) : findings;
}

/** A rule that would refuse it, or not, if only somebody knew. */
const mayDecide = ({ rule, judgement }: Finding): boolean =>
  judgement === 'cannot-tell' && ['elbow-clearance', 'buckle-height', 'buckle-strands'].includes(rule);

/** How it stands: passing is not sure while the elbow is poor or nobody can tell how it and the buckle fit. */
export function standingOf(checked: Checked): Standing {
  const findings = findingsOf(checked);
  if (checked.judged === undefined || findings.some((f) => f.judgement === 'refuse')) return 'refused';
  const elbow = findings.find((f) => f.rule === 'elbow-clearance')?.judgement;
  return elbow === 'poor' || findings.some(mayDecide) ? 'not sure' : 'passes';
}

/** What nobody can tell, though it passes: this must never look like good. */
export const openOf = (checked: Checked): readonly Finding[] =>
  standingOf(checked) === 'refused'
    ? []
    : findingsOf(checked).filter(({ judgement }) => judgement === 'cannot-tell');

/** The passing spec that changes least; undefined when it stands itself. */
export const nearestOf = (checked: Checked): RankedSpec | undefined =>
  standingOf(checked) === 'refused' ? checked.nearest : undefined;

/** In which units, and for whom. */
export interface Telling {
  readonly units: Units;
  readonly reader?: Reader;
}

/** The standing with its reason, after the word. */
export function standingText(
  checked: Checked,
  facts: Pick<Facts, 'lengthNeed'>,
  { units, reader = 'counter' }: Telling,
): string {
  const { judged, cannot } = checked;
  if (judged === undefined) return cannot === undefined ? 'it cannot be laid' : phraseText(cannot, units);
  const worst = toTell({ findings: findingsOf(checked) }, facts);
  if (standingOf(checked) === 'refused') {
    const why = worst.filter(({ judgement }) => judgement === 'refuse');
    return why.map(({ reason }) => phraseText(reason, units)).join('. It also ');
  }
  const clear = elbowText(judged, units);
  const doubts = lesserTexts(worst, reader).map((text) => `; ${text}`);
  const open = openOf(checked);
  const but = open.some(mayDecide) ? ' with the buckle taken' : '';
  return `nothing refuses it${but}; ${clear}${doubts.join('')}${openText(open, { units, reader })}`;
}

/** "; nobody can tell roping strength: nobody said what the horse is used for", each reason once. */
function openText(open: readonly Finding[], { units, reader = 'counter' }: Telling): string {
  const reasons = [...new Set(open.map(({ reason }) => phraseText(reason, units)))];
  const parts = reasons.map((why) => {
    const same = open.filter(({ reason }) => phraseText(reason, units) === why);
    return `${listed(same.map(({ rule }) => ruleWords(rule, reader)))}: ${why}`;
  });
  return parts.length === 0 ? '' : `; nobody can tell ${parts.join('; nor ')}`;
}

/** Each trouble reported with its likely cause. */
export function causeTexts({ causes }: Checked, units: Units): string[] {
  return causes.map(({ trouble, explained, words }) => {
    const how =
      explained === undefined
        ? 'we cannot tell:'
        : explained
          ? 'likely from this cinch:'
          : 'this cinch does not explain it:';
    return `${capital(troubleName(trouble))}: ${how} ${phraseText(words, units)}.`;
  });
}

/** What the customer asked for and how it stands, in a line. */
export function wantsText(
  checked: Checked,
  { specs, facts }: { specs: readonly RankedSpec[]; facts: Facts },
  { units, reader = 'counter' }: Telling,
): string {
  const place = checked.passes ? placeText(checked.judged?.candidate, specs) : '';
  const standing = `${capital(standingOf(checked))}${place}: ${standingText(checked, facts, { units, reader })}`;
  return `The customer asked for: ${askedText(checked, units)}. ${standing}.`;
}

/** ", no. 2 here" only when all four parts agree; else ", much like no. 2 here". */
function placeText(own: Candidate | undefined, specs: readonly RankedSpec[]): string {
  const near = specs.find(({ candidate: c }) => c.style === own?.style && c.strands === own.strands);
  if (near === undefined) return '';
  const { candidate, rank } = near;
  const same = candidate.buckle.id === own?.buckle.id && candidate.length === own.length;
  return `, ${same ? '' : 'much like '}no. ${String(rank)} here`;
}
