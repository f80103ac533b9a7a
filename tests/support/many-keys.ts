/** Orders and shops whose candidates have more keys than any shop's we know of. */
import { factsOf } from '../../src/facts/facts.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { troubles } from '../../src/order/words.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { shelfOf } from '../../src/stock/shelf.ts';

/** So many buckles, no two frames alike, each for two strand counts, and lengths by the quarter inch. */
export function shopOfManyBuckles(count: number): Shop {
  const [buckle] = defaultShop.buckles;
  return {
    ...defaultShop,
    strands: { min: 15, max: 45 },
    lengths: { min: 20, max: 60, step: 0.25 },
    buckles: Array.from({ length: count }, (_, i) => ({
      ...buckle!,
      id: `frame ${String(i)}`,
      frameWidth: 3 + i / 64,
      frameHeight: 2 + i / 256,
      single: { min: 15 + 2 * (i % 16), max: 17 + 2 * (i % 16) },
    })),
  };
}

/** An order with all troubles, of a horse that is roped from: it asks for every criterion that an order can ask for. */
export function factsForAll(order: Order, shop: Shop): CaseFacts {
  const asking: Order = { ...order, use: 'roping', horse: { ...order.horse, trouble: troubles } };
  return { ...factsOf(asking, shop.model), shop, shelf: shelfOf(asking, shop) };
}
