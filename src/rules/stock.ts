/** Can the shop put its hands on the buckles and the cord? */
import type { Buckle, Cord, Order, Shop } from '../order/types.ts';
import { nearestWord } from '../units/nearest.ts';
import { count, say } from '../units/phrase.ts';
import { rule, type Judgement, type Verdict } from './rule.ts';

/** Ply of body and of accent cord. */
const BODY = 8;
const ACCENT = 2;
/** Accent cord of one cinch, feet: a craft how-to (source cord-need). */
const ACCENT_FEET = 20;

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
const cord: Cord = { color: 'natural', ply: 8, putUps: [], feetOnHand: 120, orderable: false };
const accent: Cord = { color: 'rust', ply: 2, putUps: [], feetOnHand: 5, orderable: true };
const shop = { cords: [cord, accent] } as unknown as Shop;
const order = { quantity: 1, colors: { body: ['natural'] } } as unknown as Order;

export const stock = rule({
  id: 'stock',
  question: 'Are the buckles and the cord on the shelf?',
  reads: ['order', 'shop'],
  looks: ['buckle', 'cordFeet'],
  evidence: [{ basis: 'choice', source: 'engineering-choice', why: 'the shelf stands in the shop file' }],
  can: ['good', 'acceptable', 'refuse', 'cannot-tell'],
  ownCriterion: true,
  judge({ order, shop }, { buckle, cordFeet }) {
    const { quantity, colors } = order;
    const body = cordVerdict({ ply: BODY, colors: colors?.body ?? [], feet: cordFeet * quantity }, shop);
    const accent = cordVerdict(
      { ply: ACCENT, colors: colors?.accent ?? [], feet: ACCENT_FEET * quantity },
      shop,
    );
    return worseOf(worseOf(body, accent), buckleVerdict(buckle, 2 * quantity));
  },
  examples: [
    {
      shows: 'both on the shelf',
      facts: { order, shop },
      candidate: { buckle, cordFeet: 60 },
      gives: 'good',
    },
    {
      shows: 'buckles to be ordered',
      facts: { order, shop },
      candidate: { buckle: { ...buckle, onHand: 0 }, cordFeet: 60 },
      gives: 'acceptable',
    },
    {
      shows: 'no such buckles to be had',
      facts: { order, shop },
      candidate: { buckle: { ...buckle, onHand: 1, orderable: false }, cordFeet: 60 },
      gives: 'refuse',
    },
    {
      shows: 'not enough natural cord and none to order',
      facts: { order, shop },
      candidate: { buckle, cordFeet: 130 },
      gives: 'refuse',
    },
    {
      shows: 'not enough rust accent cord, but it can be ordered',
      facts: { order: { ...order, colors: { body: ['natural'], accent: ['rust'] } }, shop },
      candidate: { buckle, cordFeet: 60 },
      gives: 'acceptable',
    },
    {
      shows: 'a color that is not on the list',
      facts: { order: { ...order, colors: { body: ['plum'] } }, shop },
      candidate: { buckle, cordFeet: 60 },
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

interface CordNeed {
  readonly ply: number;
  readonly colors: readonly string[];
  readonly feet: number;
}

const noColor: Verdict = { judgement: 'not-applicable', reason: () => say`no color was asked for` };

/** Not applicable when no color was asked for: then there is nothing to look up. */
function cordVerdict({ ply, colors, feet }: CordNeed, shop: Shop): Verdict {
  if (colors.length === 0) return noColor;
  const kind = ply === BODY ? '' : ' accent';
  let onHand = 0;
  let orderable = true;
  for (const color of colors) {
    const cord = cordOf(color, ply, shop);
    if (cord === undefined) return unknownColor(color, ply, shop);
    onHand += cord.feetOnHand;
    orderable &&= cord.orderable;
  }
  const named = colors.join(' and ');
  const margin = onHand - feet;
  if (margin >= 0) {
    return { judgement: 'good', margin, reason: () => say`buckles and ${named} cord are on the shelf` };
  }
  const reason = () =>
    say`needs ${count(Math.ceil(feet))} ft of ${named}${kind} cord; ${count(onHand)} ft on hand, ${orderable ? 'the rest must be ordered' : 'and no more to be had'}`;
  return { judgement: orderable ? 'acceptable' : 'refuse', margin, reason };
}

/** The cord of that color; capitals do not matter, but most colors are written alike, and that is quicker to see. */
function cordOf(color: string, ply: number, { cords }: Shop): Cord | undefined {
  const same = cords.find((cord) => cord.ply === ply && cord.color === color);
  if (same !== undefined) return same;
  const plain = color.toLowerCase();
  return cords.find((cord) => cord.ply === ply && cord.color.toLowerCase() === plain);
}

function unknownColor(color: string, ply: number, shop: Shop): Verdict {
  const kind = ply === BODY ? 'body' : 'accent';
  const reason = () => {
    const known = shop.cords.filter((cord) => cord.ply === ply).map((cord) => cord.color);
    const near = nearestWord(color, known);
    return say`no ${color} ${kind} cord in the shop file${near === undefined ? '' : `; did you mean ${near}?`}`;
  };
  return { judgement: 'cannot-tell', reason };
}
