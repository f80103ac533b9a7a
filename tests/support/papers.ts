/** Quotes and tickets for tests, of orders that tests make up. */
import { sizeOrder } from '../../src/index.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { quoteOf, type Quote } from '../../src/work/quote.ts';
import { takenSpec } from '../../src/work/taken.ts';
import { ticketOf, type Ticket } from '../../src/work/ticket.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';

const day = '2026-11-20';

/** The quote of the spec of a rank, the first when it is not said. Throws when nothing passes. */
export function quoteFor(order: Order, shop: Shop = defaultShop, rank = 1): Quote {
  const advice = sizeOrder(order, shop);
  return quoteOf(takenSpec(advice.specs[rank - 1]!), advice, { day });
}

/** The same of a ticket. */
export function ticketFor(order: Order, shop: Shop = defaultShop, rank = 1): Ticket {
  const advice = sizeOrder(order, shop);
  return ticketOf(advice.specs[rank - 1]!, advice, { day });
}
