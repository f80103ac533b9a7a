/** Straight or roper? What customers ask most, answered under every order. */
import type { Advice } from '../advice/advice.ts';
import { chanceText, phraseText, type Units } from './text.ts';
import { specName, styleName } from './words.ts';

/** What each style that is not first would be, and why it is not: "high-flare roper, 19 strands, 81 %: nothing slips and nobody ropes." */
export function otherStyleTexts({ otherStyles }: Pick<Advice, 'otherStyles'>, units: Units): string[] {
  return otherStyles.map(({ style, spec, why }) => {
    const reason = phraseText(why, units);
    if (spec === undefined) return `${styleName(style)}: ruled out, ${reason}.`;
    const { candidate } = spec;
    return `${specName(candidate)}, ${chanceText(candidate.clearance.chance)}: ${reason}.`;
  });
}

/** "Straight or roper? A straight." */
export const straightOrRoper = ({ first }: Pick<Advice, 'first'>): string =>
  first === undefined
    ? 'Straight or roper? Neither passes.'
    : `Straight or roper? ${first.candidate.style === 'straight' ? 'Straight' : `Roper: ${styleName(first.candidate.style)}`}.`;

/** What comes before any cinch, sentence by sentence; empty for a sound horse. */
export const welfareTexts = ({ welfare }: Pick<Advice, 'welfare'>, units: Units): string[] =>
  welfare.map((phrase) => phraseText(phrase, units));
