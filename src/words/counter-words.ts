/** What a clerk reads aloud. */
import type { Advice } from '../advice/advice.ts';
import { isVeryThin } from '../advice/welfare.ts';
import type { Candidate, Clearance } from '../cinch/candidate.ts';
import type { Buckle, Order, Shop, Style } from '../order/types.ts';
import { mustBeOrdered } from '../cinch/buckles.ts';
import { gap } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { visible } from '../units/clean.ts';
import { capital, chanceText, quantityText, type Units } from '../units/text.ts';
import { fit } from '../units/width.ts';

/** "2411 Marble, Leda Castellane"; long names are shortened. */
export function orderName({ order, customer, horse }: Order): string {
  const short = (name: string | undefined, most: number): string =>
    name === undefined ? '' : fit(visible(name), most);
  const number = [short(order, 18), short(horse.name, 20)].filter((part) => part !== '').join(' ');
  const who = short(customer?.name, 28);
  return who === '' ? number : `${number}, ${who}`;
}

/** The horse's name, or "the horse". */
export const horseName = ({ horse }: Pick<Order, 'horse'>): string =>
  horse.name === undefined ? 'the horse' : fit(visible(horse.name), 20);

/** What to ask a vet of these horses, in a message; `otherwise` where none is cinchy. */
export const vetText = (orders: readonly Order[], otherwise = ''): string =>
  [
    orders.some(isVeryThin) ? 'Very thin: ask a vet before anyone rides.' : '',
    orders.some(({ horse }) => horse.trouble.includes('girthy'))
      ? 'Cinchy (girthy): ask a vet first.'
      : otherwise,
  ]
    .filter((text) => text !== '')
    .join(' ');

/** For a message to the customer. */
export const soreText = (horses: string): string =>
  `Don't ride ${horses} until the sore heals; open or slow to heal, call a vet.`;

const oddsWords: readonly (readonly [least: number, words: string])[] = [
  [0.99, '99 out of 100'],
  [0.95, '19 out of 20'],
  [0.9, '9 out of 10'],
  [0.8, '4 out of 5'],
  [0.75, '3 out of 4'],
  [0.7, '7 out of 10'],
  [0.6, '6 out of 10'],
  [0.5, '5 out of 10'],
];

/** "4 out of 5 (81%)", rounded down to promise no more. */
export const oddsText = (chance: number): string => `${chanceWords(chance)} (${chanceText(chance)})`;

/** "4 out of 5". */
export function chanceWords(chance: number): string {
  const [, words] = oddsWords.find(([least]) => chance >= least - 0.005) ?? [];
  return words ?? 'less than even';
}

const styleWords: Readonly<Record<Style, string>> = {
  straight: 'straight',
  'high-flare': 'high flare',
  'low-flare': 'low flare',
};

/** "high flare". */
export const shortStyle = (style: Style): string => styleWords[style];

/** "a straight, 19 strands". */
export const aCinch = ({ style, strands }: Pick<Candidate, 'style' | 'strands'>): string =>
  `a ${styleWords[style]}, ${String(strands)} strands`;

/** "strung double", or that the buckle does not take them. */
export const strungText = (layers: Candidate['layers']): string =>
  layers === 0 ? 'which do not take this many strands' : layers === 1 ? 'strung single' : 'strung double';

/** "3 in buckles", or the shop's name if two share that width. */
export function bucklesText(buckle: Buckle, { buckles }: Pick<Shop, 'buckles'>, units: Units): string {
  const alike = buckles.filter(({ barWidth }) => barWidth === buckle.barWidth);
  return alike.length > 1
    ? `${visible(buckle.id)} buckles`
    : `${formatLength(buckle.barWidth, units)} buckles`;
}

export interface Telling {
  readonly advice: Pick<Advice, 'facts'>;
  readonly units: Units;
}

/** "5 3/4 in across the chest, drawn in to 3 in at the buckles". */
export function wideText({ style, width, buckleWidth }: Candidate, units: Units): string {
  const wide = formatLength(width, units);
  if (style === 'straight') return `${wide} wide`;
  return `${wide} across the chest, drawn in to ${formatLength(buckleWidth, units)} at the buckles`;
}

/** "on 3 in buckles, strung double", and what to order. */
export function buckledText(candidate: Candidate, { advice, units }: Telling): string {
  const { shop, order } = advice.facts;
  const wait = mustBeOrdered(candidate.buckle, order.quantity) ? ' (order the buckles first)' : '';
  return `on ${bucklesText(candidate.buckle, shop, units)}${wait}, ${strungText(candidate.layers)}`;
}

/** "a straight, 19 strands, 4 3/4 in wide, 32 in long, ...". */
export const cinchText = (candidate: Candidate, telling: Telling): string =>
  [
    aCinch(candidate),
    wideText(candidate, telling.units),
    `${formatLength(candidate.length, telling.units)} long`,
    buckledText(candidate, telling),
  ].join(', ');

/** Where it comes nearest the elbow; the chance may hang on another place. */
export const nearest = ({ clearance, cordClearance }: Candidate): Clearance =>
  cordClearance.inches < clearance.inches ? cordClearance : clearance;

/** "It should clear the elbow by about 1 3/8 in. ..." */
export function clearText({ cordClearance, clearance }: Candidate, { advice, units }: Telling): string {
  const room = quantityText(gap(cordClearance.inches), units);
  const least = quantityText({ value: cordClearance.floor, as: 'fine-length' }, units);
  const needs = `${capital(horseName(advice.facts.order))} needs ${least}`;
  const tight = clearance.skin ? '' : `, ${tooText(clearance)},`;
  return `It should clear the elbow by about ${room}. ${needs}; the chance of that${tight} is ${oddsText(clearance.chance)}.`;
}

/** "with the buckles clear too", where a chance hangs on them. */
export const tooText = ({ where }: Pick<Clearance, 'where'>): string =>
  `with the ${where === 'buckle' ? 'buckles' : 'strands above the elbow'} clear too`;

/** For a cinch whose length is not taped. */
export const notCutText = ({ assumptions }: Pick<Advice, 'assumptions'>): string =>
  assumptions.some(({ kind }) => kind === 'measured' || kind === 'photo')
    ? 'DO NOT CUT: ring to ring is not taped.'
    : 'DO NOT CUT. Nothing is taped, so this is a first guess.';
