/** Quotes and tickets of test orders. */
import { sizeOrder } from '../../src/index.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import type { Drawing } from '../../src/pages/sheet.ts';
import { smallPicture } from '../../src/draw/small.ts';
import { quoteOf, type Invoice, type Quote } from '../../src/work/quote.ts';
import { takenSpec } from '../../src/work/taken.ts';
import { ticketOf, type Ticket } from '../../src/work/ticket.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';

const day = '2026-11-20';

/** @throws when nothing passes */
export function quoteFor(order: Order, shop: Shop = defaultShop, rank = 1): Quote {
  const advice = sizeOrder(order, shop);
  return quoteOf(takenSpec(advice.specs[rank - 1]!), advice, { day });
}

/** `paid` is in minor units. */
export function invoiceFor(
  order: Order,
  shop: Shop = defaultShop,
  paid?: number,
): Quote & { invoice: Invoice } {
  const advice = sizeOrder(order, shop);
  const quote = quoteOf(takenSpec(advice.specs[0]!), advice, {
    day: '2026-12-12',
    invoice: { number: '1041', paid },
  });
  return { ...quote, invoice: quote.invoice! };
}

export const pictureFor = ({ taken, facts }: Quote): Drawing =>
  smallPicture(taken.spec.candidate, facts, 'in');

export function ticketFor(order: Order, shop: Shop = defaultShop, rank = 1): Ticket {
  const advice = sizeOrder(order, shop);
  return ticketOf(advice.specs[rank - 1]!, advice, { day });
}
