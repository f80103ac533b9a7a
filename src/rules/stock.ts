/** Are the buckles and the cord on the shelf? */
import type { Candidate } from '../cinch/candidate.ts';
import type { Cord } from '../order/types.ts';
import { ACCENT_PLY, BODY_PLY } from '../numbers/plies.ts';
import type { CordShelf, Shelf } from '../cinch/shelf.ts';
import { nearestWord } from '../units/nearest.ts';
import { count, say, type Phrase } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule, type CaseFacts, type Judgement, type Verdict } from './rule.ts';

/** What prevents tying comes before what delays it. */
const severity: Readonly<Record<Judgement, number>> = {
  refuse: 5,
  'cannot-tell': 4,
  poor: 3,
  acceptable: 2,
  good: 1,
  'not-applicable': 0,
};

const buckle = { id: 'plain 3', onHand: 4, orderable: true };
const shop = { cords: [{ color: 'natural', ply: 8, putUps: [], feetOnHand: 120, orderable: false }] };
const order = { quantity: 1 };
const natural: CordShelf = {
  ply: BODY_PLY,
  colors: ['natural'],
  unknown: undefined,
  feetOnHand: 120,
  orderable: false,
};
const rust: CordShelf = { ...natural, ply: ACCENT_PLY, colors: ['rust'], feetOnHand: 5, orderable: true };
const noAccent: CordShelf = { ...rust, colors: [], feetOnHand: 0 };
const shelf: Shelf = { body: natural, accent: noAccent };

export const stock = rule({
  id: 'stock',
  question: 'Are the buckles and the cord on the shelf?',
  reads: ['order.quantity', 'shop.cords', 'shelf'],
  looks: ['buckle.id', 'buckle.onHand', 'buckle.orderable', 'cordFeet', 'accentFeet'],
  evidence: [
    { basis: 'choice', source: 'engineering-choice', why: 'the shop file lists what is on the shelf' },
  ],
  can: ['good', 'acceptable', 'refuse', 'cannot-tell'],
  judge({ order: { quantity }, shelf }, candidate) {
    const body = cordVerdict(shelf.body, () => candidate.cordFeet * quantity, bodyCord);
    const accent = cordVerdict(shelf.accent, () => candidate.accentFeet * quantity, accentCord);
    return worseOf(worseOf(body, accent), buckleVerdict(candidate.buckle, 2 * quantity));
  },
  examples: [
    {
      shows: 'both on the shelf',
      facts: { order, shop, shelf },
      candidate: { buckle, cordFeet: 60, accentFeet: 26 },
      gives: 'good',
    },
    {
      shows: 'buckles to be ordered',
      facts: { order, shop, shelf },
      candidate: { buckle: { ...buckle, onHand: 0 }, cordFeet: 60, accentFeet: 26 },
      gives: 'acceptable',
    },
    {
      shows: 'too few buckles, and no more to order',
      facts: { order, shop, shelf },
      candidate: {
        buckle: { ...buckle, onHand: 1, orderable: false },
        cordFeet: 60,
        accentFeet: 26,
      },
      gives: 'refuse',
    },
    {
      shows: 'too little natural cord, and no more to order',
      facts: { order, shop, shelf },
      candidate: { buckle, cordFeet: 130, accentFeet: 26 },
      gives: 'refuse',
    },
    {
      shows: 'too little rust accent cord, but we can order it',
      facts: { order, shop, shelf: { ...shelf, accent: rust } },
      candidate: { buckle, cordFeet: 60, accentFeet: 26 },
      gives: 'acceptable',
    },
    {
      shows: 'a color that is not on the list',
      facts: { order, shop, shelf: { ...shelf, body: { ...natural, colors: ['plum'], unknown: 'plum' } } },
      candidate: { buckle, cordFeet: 60, accentFeet: 26 },
      gives: 'cannot-tell',
    },
  ],
  since: '0.1.0',
});

type Needs = Seen<CaseFacts, 'order.quantity' | 'shop.cords' | 'shelf'>;
type Parts = Seen<Candidate, 'buckle.id' | 'buckle.onHand' | 'buckle.orderable' | 'cordFeet' | 'accentFeet'>;
type StockVerdict = Verdict<Needs, Parts>;

/** Ties go to the first: buckles are easier to change than cord. */
const worseOf = (first: StockVerdict, second: StockVerdict): StockVerdict =>
  severity[second.judgement] > severity[first.judgement] ? second : first;

const buckleThere = (_: Needs, { buckle: { id } }: Parts): Phrase => say`the ${id} buckles are on the shelf`;
const buckleToOrder = (_: Needs, { buckle: { id } }: Parts): Phrase => say`${id} buckles must be ordered`;
const noBuckle = ({ order }: Needs, { buckle: { id, onHand } }: Parts): Phrase =>
  say`needs ${count(2 * order.quantity)} ${id} buckles; ${count(onHand)} on hand, and we can't get more`;

function buckleVerdict({ onHand, orderable }: Parts['buckle'], needed: number): StockVerdict {
  const margin = onHand - needed;
  if (margin >= 0) return { judgement: 'good', margin, reason: buckleThere };
  if (orderable) return { judgement: 'acceptable', margin, reason: buckleToOrder };
  return { judgement: 'refuse', margin, reason: noBuckle };
}

interface CordWords {
  readonly there: StockVerdict['reason'];
  readonly tooLittle: StockVerdict['reason'];
  readonly unknown: StockVerdict['reason'];
}

const wordsOf = (cordOf: (shelf: Shelf) => CordShelf, feetOf: (candidate: Parts) => number): CordWords => ({
  there: ({ shelf }) => say`buckles and ${cordOf(shelf).colors.join(' and ')} cord are on the shelf`,
  tooLittle: ({ shelf, order }, candidate) => tooLittle(cordOf(shelf), feetOf(candidate) * order.quantity),
  unknown: ({ shelf, shop }) => unknownColor(cordOf(shelf), shop.cords),
});
const bodyCord = wordsOf(
  ({ body }) => body,
  ({ cordFeet }) => cordFeet,
);
const accentCord = wordsOf(
  ({ accent }) => accent,
  ({ accentFeet }) => accentFeet,
);

const noColor: StockVerdict = { judgement: 'not-applicable', reason: () => say`no color chosen` };

function cordVerdict(cord: CordShelf, feet: () => number, words: CordWords): StockVerdict {
  if (cord.colors.length === 0) return noColor;
  if (cord.unknown !== undefined) return { judgement: 'cannot-tell', reason: words.unknown };
  const margin = cord.feetOnHand - feet();
  if (margin >= 0) return { judgement: 'good', margin, reason: words.there };
  return { judgement: cord.orderable ? 'acceptable' : 'refuse', margin, reason: words.tooLittle };
}

function tooLittle({ ply, colors, feetOnHand, orderable }: CordShelf, feet: number): Phrase {
  const kind = ply === BODY_PLY ? '' : ' accent';
  const rest = orderable ? 'the rest must be ordered' : "and we can't get more";
  return say`needs ${count(Math.ceil(feet))} ft of ${colors.join(' and ')}${kind} cord; ${count(feetOnHand)} ft on hand, ${rest}`;
}

function unknownColor({ unknown = '', ply }: CordShelf, cords: readonly Cord[]): Phrase {
  const kind = ply === BODY_PLY ? 'body' : 'accent';
  const known = cords.filter((cord) => cord.ply === ply).map((cord) => cord.color);
  const near = nearestWord(unknown, known);
  return say`the shop file has no ${unknown} ${kind} cord${near === undefined ? '' : `; did you mean ${near}?`}`;
}
