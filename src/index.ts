/** The whole idea on one screen: an order becomes facts, candidates meet rules, what passes is ranked. */
import { adviceOn, type Advice } from './advice/advice.ts';
import { factsOf } from './horse/facts.ts';
import type { Order, Shop } from './order/types.ts';

/** Everything the shop can say about one order. Pure, total for orders and shops that came through the door. */
export function sizeOrder(order: Order, shop: Shop): Advice {
  const facts = factsOf(order, shop.model); // what is derived, once, with its spread
  return adviceOn(facts, shop); //            candidates, verdicts, ranking, what to ask
}
