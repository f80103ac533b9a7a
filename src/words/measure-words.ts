/** What to measure and what it gains. */
import type { Advice } from '../advice/advice.ts';
import { isUseful, type Ask } from '../advice/measure-next.ts';
import type { Facts } from '../horse/facts.ts';
import { listed } from '../units/phrase.ts';
import type { Block } from '../pages/sheet.ts';
import { onTape } from '../units/print.ts';
import { capital, chanceText, lower, type Units } from '../units/text.ts';

const MOST = 3;

/** A sentence for one or two, else a list, most useful first. */
export function measureBlocks(advice: Advice, units: Units): Block[] {
  const useful = advice.ask.filter(isUseful).slice(0, MOST);
  if (useful.length === 0) return [];
  const listed_ = useful.length > 2 || useful.some(({ beforeCutting }) => beforeCutting);
  if (!listed_) return [{ kind: 'text', text: sentenceText(useful, advice.facts, units), apart: true }];
  const items = useful.map(
    (ask) => `${capital(ask.input)}, ${places[ask.input]}${gainText(ask, advice.facts, units)}`,
  );
  const [only = ''] = items;
  if (items.length === 1) return [{ kind: 'text', text: `Measure first: ${lower(only)}`, apart: true }];
  return [
    { kind: 'text', text: 'Measure, in this order', tone: 'strong', apart: true },
    { kind: 'list', items, mark: 'number' },
  ];
}

/** "Measure first: elbow room. That makes it 87% if it reads ..." */
function sentenceText(asks: readonly Ask[], facts: Facts, units: Units): string {
  const [first, second] = asks;
  if (first === undefined) return '';
  const took = asks.map((ask) => tookNames[ask.input] + tookText(ask, facts, units));
  const reads = `as we took ${second === undefined ? 'it' : 'them'}: ${took.join(', ')}`;
  const earn = Math.max(...asks.map(({ couldEarn }) => couldEarn ?? 0));
  const more = earn > 0 ? `, and may allow ${String(earn)} strands,` : '';
  if (second === undefined)
    return `Measure first: ${first.input}. That makes it ${chanceText(first.chanceThen)}${more} if it reads ${reads}.`;
  const [a, b] = [chanceText(first.chanceThen), chanceText(second.chanceThen)];
  const gain = a === b ? `Either one makes it ${a}` : `The first makes it ${a}, the second ${b}`;
  return `Measure first: ${first.input}, or ${second.input}. ${gain}${more} if they read ${reads}.`;
}

function gainText(ask: Ask, facts: Facts, units: Units): string {
  if (ask.beforeCutting) return '. It sets the length.';
  const earn = ask.couldEarn === undefined ? '' : `, and may allow ${String(ask.couldEarn)} strands,`;
  return `: ${chanceText(ask.chanceThen)}${earn} if it reads ${tookText(ask, facts, units).replace(' back of full', '')}.`;
}

/** In brief; `ask` has the full text. */
const places: Readonly<Record<Ask['input'], string>> = {
  'elbow room': 'groove straight forward to the elbow',
  'ring set-back': 'full position back to the ring',
  'ring to ring': 'saddle and pad on, under the girth groove',
  'heart girth': 'once around behind withers and elbows',
  'barrel shape': 'seen from the front',
};

const tookNames: Readonly<Record<Ask['input'], string>> = {
  'elbow room': 'elbow room ',
  'ring set-back': 'ring ',
  'ring to ring': 'ring to ring ',
  'heart girth': 'girth ',
  'barrel shape': 'barrel ',
};

function tookText({ input }: Ask, facts: Facts, units: Units): string {
  const about = (inches: number): string => onTape(inches, units, 'nearest');
  switch (input) {
    case 'elbow room':
      return about(facts.room.value);
    case 'ring set-back':
      return setBackText(facts.ring.setBack.value, about);
    case 'ring to ring':
      return about(facts.lengthNeed.ringToRing.value);
    case 'heart girth':
      return about(facts.girth.value);
    case 'barrel shape':
      return 'average';
  }
}

const setBackText = (inches: number, about: (inches: number) => string): string =>
  Math.abs(inches) < 0.05
    ? 'at full'
    : `${about(Math.abs(inches))} ${inches > 0 ? 'back of' : 'ahead of'} full`;

/** "Taped: ring to ring. Not taped: everything else." */
export function tapedText(
  { assumptions, facts }: Pick<Advice, 'assumptions' | 'facts'>,
  units: Units,
): string {
  const of = (kind: string): string[] =>
    assumptions.filter((entry) => entry.kind === kind).map(({ input }) => input);
  const [taped, photo] = [of('measured'), of('photo')];
  const girth =
    facts.girth.kind === 'computed' || facts.girth.kind === 'assumed'
      ? `Worked out: heart girth about ${onTape(Math.round(facts.girth.value), units, 'nearest')}.`
      : '';
  return [
    taped.length === 0 ? '' : `Taped: ${listed(taped)}.`,
    photo.length === 0 ? '' : `By photo: ${listed(photo)}.`,
    girth,
    taped.length + photo.length === 0 ? '' : 'Not taped: everything else.',
  ]
    .filter((part) => part !== '')
    .join(' ');
}
