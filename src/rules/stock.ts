/** Can the shop put its hands on the buckles and the cord? */
import type { Buckle, Order, Shop } from '../order/types.ts';
import { ACCENT_PLY, BODY_PLY } from '../sources/plies.ts';
import type { CordShelf, Shelf } from '../stock/shelf.ts';
import { nearestWord } from '../units/nearest.ts';
import { count, say, type Phrase } from '../units/phrase.ts';
import { rule, type Judgement, type Verdict } from './rule.ts';

/** What keeps the cinch from being tied is told before what delays it. */
const severity: Readonly<Record<Judgement, number>> = {
  refuse: 5,
  'cannot-tell': 4,
  poor: 3,
  acceptable: 2,
  good: 1,
  'not-applicable': 0,
};

const buckle = {
  id: 'plain 3',
  barWidth: 3,
  frameWidth: 3.75,
  frameHeight: 3,
  special: false,
  onHand: 4,
  orderable: true,
};
const shop = { cords: [{ color: 'natural', ply: 8, feetOnHand: 120, orderable: false }] } as unknown as Shop;
const order = { quantity: 1 } as unknown as Order;
const natural: CordShelf = {
  ply: BODY_PLY,
  colors: ['natural'],
  unknown: undefined,
  feetOnHand: 120,
  orderable: false,
};
const rust: CordShelf = { ...natural, ply: ACCENT_PLY, colors: ['rust'], feetOnHand: 5, orderable: true };
const noAccent: CordShelf = { ...rust, colors: [], feetOnHand: 0 };
const shelf: Shelf = { body: natural, accent: noAccent, accentTight: false };

export const stock = rule({
  id: 'stock',
  question: 'Are the buckles and the cord on the shelf?',
  reads: ['order', 'shop', 'shelf'],
  looks: ['buckle', 'cordFeet', 'accentFeet', 'accentAtMost'],
  idle: ({ shelf }) => (shelf.accentTight ? [] : ['accentFeet', 'accentAtMost']),
  evidence: [{ basis: 'choice', source: 'engineering-choice', why: 'the shelf stands in the shop file' }],
  can: ['good', 'acceptable', 'refuse', 'cannot-tell'],
  ownCriterion: true,
  judge({ order, shop, shelf }, candidate) {
    const { quantity } = order;
    const { buckle } = candidate;
    const body = cordVerdict(shelf.body, candidate.cordFeet * quantity, shop);
    const most = shelf.accentTight ? candidate.accentAtMost * quantity : 0;
    const accent = accentVerdict(shelf, { most, feetOf: () => candidate.accentFeet * quantity }, shop);
    return worseOf(worseOf(body, accent), buckleVerdict(buckle, 2 * quantity));
  },
  examples: [
    {
      shows: 'both on the shelf',
      facts: { order, shop, shelf },
      candidate: { buckle, cordFeet: 60, accentFeet: 26, accentAtMost: 30 },
      gives: 'good',
    },
    {
      shows: 'buckles to be ordered',
      facts: { order, shop, shelf },
      candidate: { buckle: { ...buckle, onHand: 0 }, cordFeet: 60, accentFeet: 26, accentAtMost: 30 },
      gives: 'acceptable',
    },
    {
      shows: 'no such buckles to be had',
      facts: { order, shop, shelf },
      candidate: {
        buckle: { ...buckle, onHand: 1, orderable: false },
        cordFeet: 60,
        accentFeet: 26,
        accentAtMost: 30,
      },
      gives: 'refuse',
    },
    {
      shows: 'not enough natural cord and none to order',
      facts: { order, shop, shelf },
      candidate: { buckle, cordFeet: 130, accentFeet: 26, accentAtMost: 30 },
      gives: 'refuse',
    },
    {
      shows: 'not enough rust accent cord, but it can be ordered',
      facts: { order, shop, shelf: { ...shelf, accent: rust, accentTight: true } },
      candidate: { buckle, cordFeet: 60, accentFeet: 26, accentAtMost: 30 },
      gives: 'acceptable',
    },
    {
      shows: 'a color that is not on the list',
      facts: { order, shop, shelf: { ...shelf, body: { ...natural, colors: ['plum'], unknown: 'plum' } } },
      candidate: { buckle, cordFeet: 60, accentFeet: 26, accentAtMost: 30 },
      gives: 'cannot-tell',
    },
  ],
  since: '0.1.0',
});

/** The worse verdict; of equally bad ones the first: another buckle may do, another cord is another cinch. */
const worseOf = (first: Verdict, second: Verdict): Verdict =>
  severity[second.judgement] > severity[first.judgement] ? second : first;

function buckleVerdict({ id, onHand, orderable }: Buckle, needed: number): Verdict {
  const margin = onHand - needed;
  if (margin >= 0)
    return { judgement: 'good', margin, reason: () => say`the ${id} buckles are on the shelf` };
  if (orderable) return { judgement: 'acceptable', margin, reason: () => say`${id} buckles must be ordered` };
  const reason = () =>
    say`needs ${count(needed)} ${id} buckles; ${count(onHand)} on hand, and no more to be had`;
  return { judgement: 'refuse', margin, reason };
}

const noColor: Verdict = { judgement: 'not-applicable', reason: () => say`no color was asked for` };

/** Not applicable when no color was asked for: then there is nothing to look up. */
function cordVerdict(cord: CordShelf, feet: number, shop: Shop): Verdict {
  const { ply, colors, unknown, feetOnHand, orderable } = cord;
  if (colors.length === 0) return noColor;
  if (unknown !== undefined) return unknownColor(unknown, ply, shop);
  const margin = feetOnHand - feet;
  if (margin >= 0) return { judgement: 'good', margin, reason: () => onShelf(colors) };
  return { judgement: orderable ? 'acceptable' : 'refuse', margin, reason: () => tooLittle(cord, feet) };
}

interface Accent {
  /** Feet that it never exceeds; 0 where every cinch gets the same judgement. */
  readonly most: number;
  readonly feetOf: () => number;
}

/** Where the judgement is plain, the feet of this cinch are counted only when somebody reads them. */
function accentVerdict({ accent }: Shelf, { most, feetOf }: Accent, shop: Shop): Verdict {
  const { colors, unknown, feetOnHand, orderable } = accent;
  if (most > feetOnHand) return cordVerdict(accent, feetOf(), shop);
  if (colors.length === 0 || unknown !== undefined) return cordVerdict(accent, 0, shop);
  // No margin: it would need the feet of this cinch.
  if (feetOnHand > 0) return { judgement: 'good', reason: () => onShelf(colors) };
  return { judgement: orderable ? 'acceptable' : 'refuse', reason: () => tooLittle(accent, feetOf()) };
}

const onShelf = (colors: readonly string[]): Phrase =>
  say`buckles and ${colors.join(' and ')} cord are on the shelf`;

function tooLittle({ ply, colors, feetOnHand, orderable }: CordShelf, feet: number): Phrase {
  const kind = ply === BODY_PLY ? '' : ' accent';
  const rest = orderable ? 'the rest must be ordered' : 'and no more to be had';
  return say`needs ${count(Math.ceil(feet))} ft of ${colors.join(' and ')}${kind} cord; ${count(feetOnHand)} ft on hand, ${rest}`;
}

function unknownColor(color: string, ply: number, shop: Shop): Verdict {
  const kind = ply === BODY_PLY ? 'body' : 'accent';
  const reason = () => {
    const known = shop.cords.filter((cord) => cord.ply === ply).map((cord) => cord.color);
    const near = nearestWord(color, known);
    return say`no ${color} ${kind} cord in the shop file${near === undefined ? '' : `; did you mean ${near}?`}`;
  };
  return { judgement: 'cannot-tell', reason };
}
