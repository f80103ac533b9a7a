/** The customer's wish and the current cinch, a sentence each. */
import type { Advice } from '../advice/advice.ts';
import { checkCinch, type Checked } from '../advice/check.ts';
import { isUseful } from '../advice/measure-next.ts';
import { formatLength } from '../units/print.ts';
import { same } from '../work/taken.ts';
import { findingsOf, standingOf } from './about-check.ts';
import { visible } from '../units/clean.ts';
import { oddsText, shortStyle } from './counter-words.ts';
import { capital, phraseText, type Units } from '../units/text.ts';
import type { CinchAsked, Trouble } from '../order/types.ts';

/** "a high flare, 25 strands, 30 in long". */
export const namedText = ({ style, strands, length, buckle }: CinchAsked, units: Units): string =>
  [
    style === undefined ? '' : `a ${shortStyle(style)}`,
    strands === undefined ? '' : `${String(strands)} strands`,
    length === undefined ? '' : `${formatLength(length, units)} long`,
    buckle === undefined ? '' : `${visible(buckle)} buckle`,
  ]
    .filter((part) => part !== '')
    .join(', ');

/** "Not 25 strands, as asked: too close, ..." */
export function wishText(wants: Checked, { first, ask }: Advice, units: Units): string {
  const { judged, asked, cannot } = wants;
  const plain = asked.style === first?.candidate.style ? { ...asked, style: undefined } : asked;
  const named = namedText(plain, units) || namedText(asked, units);
  if (judged === undefined)
    return `Not ${named}, as asked: ${cannot === undefined ? 'it cannot be tied here' : phraseText(cannot, units)}.`;
  const standing = standingOf(wants);
  if (standing === 'refused') return `Not ${named}, as asked: ${reasonsText(wants, units)}.`;
  const { candidate } = judged;
  if (first !== undefined && same(judged, first)) return 'That is what was asked for.';
  const odds = oddsText(candidate.clearance.chance);
  return standing === 'passes'
    ? `${capital(named)}, as asked, passes too: ${odds}.`
    : `${capital(named)}, as asked: not sure, ${odds}.${ask.some(isUseful) ? ' Measure before you tie it.' : ''}`;
}

/** Why it is ruled out. */
export const reasonsText = (checked: Checked, units: Units): string =>
  findingsOf(checked)
    .filter(({ judgement }) => judgement === 'refuse')
    // The reason already follows a colon.
    .map(({ reason }) => phraseText(reason, units).replace(': ', ', '))
    .join('; ');

/** One sentence per trouble the current cinch explains. */
export function likelyCauses(advice: Advice, units: Units): string[] {
  const { current } = advice.facts.order;
  if (current === undefined) return [];
  const { causes } = checkCinch(current, 'current', advice);
  const named = namedText(current, units);
  return causes.flatMap(({ trouble, explained, words }) => {
    const of = causes.length > 1 ? ` of the ${troubleNouns[trouble]}` : '';
    return explained === true
      ? [`Likely cause${of}: the current cinch, ${named}: ${phraseText(words, units)}.`]
      : [];
  });
}

const troubleNouns: Readonly<Record<Trouble, string>> = {
  'elbow-gall': 'gall',
  'buckle-rub': 'rub',
  'saddle-rolls': 'rolling',
  'creeps-forward': 'creeping',
  'slips-back': 'slipping',
  girthy: 'girthiness',
};
