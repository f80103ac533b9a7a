/** The whole idea on one screen: an order becomes facts, rules judge cinches, what passes is ranked. */
import { adviceOn, type Advice } from './advice/advice.ts';
import { factsOf } from './horse/facts.ts';
import type { Order, Shop } from './order/types.ts';

/** Everything the shop can say about one order. Pure; never throws for a checked order and shop. */
export function sizeOrder(order: Order, shop: Shop): Advice {
  const facts = factsOf(order, shop.model); // computed once, with spreads
  return adviceOn(facts, shop); // cinches, verdicts, ranking, questions
}
