/** Can the shop put its hands on the buckles and the cord? */
import type { Cord, Order, Shop } from '../order/types.ts';
import { count, say } from '../units/phrase.ts';
import { rule, type Verdict } from './rule.ts';

const buckle = {
  id: 'plain 3',
  barWidth: 3,
  frameWidth: 3.75,
  frameHeight: 3,
  special: false,
  onHand: 4,
  orderable: true,
};
const cord: Cord = { color: 'natural', ply: 8, feetOnHand: 120, orderable: false };
const shop = { cords: [cord] } as unknown as Shop;
const order = { quantity: 1, colors: { body: ['natural'] } } as unknown as Order;

export const stock = rule({
  id: 'stock',
  question: 'Are the buckles and the cord on the shelf?',
  reads: ['order', 'shop'],
  looks: ['buckle', 'cordFeet'],
  evidence: [{ basis: 'choice', source: 'engineering-choice', why: 'the shelf stands in the shop file' }],
  can: ['good', 'acceptable', 'refuse', 'cannot-tell'],
  judge({ order, shop }, { buckle, cordFeet }) {
    const buckles = 2 * order.quantity;
    const cords = cordVerdict(cordFeet * order.quantity, order.colors?.body ?? [], shop);
    // Another buckle may do, another cord is another cinch: short cord is told first.
    if (cords?.judgement === 'refuse') return cords;
    if (buckle.onHand < buckles && !buckle.orderable) {
      const reason = () =>
        say`needs ${count(buckles)} ${buckle.id} buckles; ${count(buckle.onHand)} on hand, and no more to be had`;
      return { judgement: 'refuse', margin: buckle.onHand - buckles, reason };
    }
    if (cords !== undefined && cords.judgement !== 'good') return cords;
    if (buckle.onHand < buckles) {
      return {
        judgement: 'acceptable',
        margin: buckle.onHand - buckles,
        reason: () => say`${buckle.id} buckles must be ordered`,
      };
    }
    return cords ?? { judgement: 'good', reason: () => say`the ${buckle.id} buckles are on the shelf` };
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
      shows: 'a color that is not on the list',
      facts: { order: { ...order, colors: { body: ['plum'] } }, shop },
      candidate: { buckle, cordFeet: 60 },
      gives: 'cannot-tell',
    },
  ],
  since: '0.1.0',
});

/** Undefined when no color was asked for: then there is nothing to look up. */
function cordVerdict(feet: number, colors: readonly string[], shop: Shop): Verdict | undefined {
  if (colors.length === 0) return undefined;
  let onHand = 0;
  let orderable = true;
  for (const color of colors) {
    const cord = shop.cords.find((entry) => entry.ply === 8 && entry.color === color);
    if (cord === undefined)
      return { judgement: 'cannot-tell', reason: () => say`no ${color} body cord in the shop file` };
    onHand += cord.feetOnHand;
    orderable &&= cord.orderable;
  }
  const named = colors.join(' and ');
  const margin = onHand - feet;
  if (margin >= 0)
    return { judgement: 'good', margin, reason: () => say`buckles and ${named} cord are on the shelf` };
  const need = () =>
    say`needs ${count(Math.ceil(feet))} ft of ${named} cord; ${count(onHand)} ft on hand, ${orderable ? 'the rest must be ordered' : 'and no more to be had'}`;
  return { judgement: orderable ? 'acceptable' : 'refuse', margin, reason: need };
}
