/** The rest of an advice: what we assumed and what is ruled out. */
import type { Advice } from '../advice/advice.ts';
import type { Refused } from '../advice/refused.ts';
import type { Assumption } from '../horse/estimate.ts';
import type { Style } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { basisText, inputText, phraseText, ratioSpread, spreadNumber, type Units } from '../units/text.ts';
import { refusedRuns, type RefusedRun } from './refused-runs.ts';
import { styleName } from './words.ts';

/** Value, spread and basis. */
export function assumptionText(entry: Assumption, units: Units): string {
  const { input, sd, unit } = entry;
  const spread = unit === 'ratio' ? ratioSpread(sd) : spreadNumber(sd, units);
  return `${input} ${inputText(entry, units)}, give or take ${spread} (${basisText(entry)})`;
}

/** One line per run of counts that fail alike, and per impossible style. */
export function refusedTexts(advice: Advice, units: Units): string[] {
  const { refused, impossible } = advice;
  const runs = refusedRuns(refused).map((run) => runText(run, units));
  return [
    ...runs.map((text, i) => withoutRepeat(text, runs[i - 1])),
    ...impossible.map((style) => `${styleName(style)}: ${impossibleText(style, advice)}`),
  ];
}

/** Drops an ending that the line before has too. */
function withoutRepeat(text: string, before: string | undefined): string {
  const tail = text.lastIndexOf('; ');
  return tail > 0 && before?.endsWith(text.slice(tail)) === true ? text.slice(0, tail) : text;
}

/** Why a style can't be tied. */
export const impossibleText = (style: Style, { noBuckle, facts }: Advice): string =>
  noBuckle ? `cannot be tied, ${noBuckleText(facts)}` : noSideText(style);

/** No buckle takes any count of the shop. */
export const noBuckleText = ({ shop: { strands } }: Pick<CaseFacts, 'shop'>): string =>
  `no buckle of the shop file takes ${String(strands.min)} to ${String(strands.max)} strands`;

const noSideText = (style: Style): string =>
  style === 'low-flare'
    ? 'cannot be tied here, no room below the buckle for the flare'
    : 'cannot be tied here, no room below the buckle';

function runText({ style, from, to, mildest }: RefusedRun, units: Units): string {
  const counts = from === to ? String(from) : `${String(from)} to ${String(to)}`;
  const which = from === to ? '' : `even at ${String(mildest.strands)}, `;
  return `${styleName(style)}, ${counts} strands: ${which}${refusedText(mildest, units)}`;
}

/** Why it is ruled out. */
export const refusedText = ({ reason }: Refused, units: Units): string => phraseText(reason, units);

/** Nothing passes, and this rule refuses the narrowest of each style. */
export function onlyFails({ specs, refused }: Pick<Advice, 'specs' | 'refused'>, rule: string): boolean {
  const narrowest = refused.filter(
    (entry) => !refused.some(({ style, strands }) => style === entry.style && strands < entry.strands),
  );
  return specs.length === 0 && narrowest.length > 0 && narrowest.every((entry) => entry.rule === rule);
}
