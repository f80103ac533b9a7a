/** What the printers of materials and schedule take, from orders. */
import { sizeOrder } from '../../src/index.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { agendaOf, type Agenda } from '../../src/work/agenda.ts';
import { promiseOn, type Asked } from '../../src/work/new-work.ts';
import { materialsOf, type Materials } from '../../src/work/materials.ts';
import { inOrder, keysOf, plannedOf, type Keyed } from '../../src/work/planned.ts';
import type { BacklogResult } from '../../src/words/about-backlog.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';

export interface BacklogPapers {
  readonly results: readonly BacklogResult[];
  readonly orders: readonly Keyed[];
  readonly materials: Materials;
  readonly agenda: Agenda;
  readonly asked: readonly Asked[];
}

const day = '2026-11-20';

/** Each order has its own file unless `file` is given. */
export function backlogFrom(
  orders: readonly Order[],
  shop: Shop = defaultShop,
  fileOf = (order: Order): string => `${order.order}.yaml`,
): BacklogPapers {
  const planned = orders.flatMap((order) => {
    const plan = plannedOf(sizeOrder(order, shop), day);
    return plan === undefined ? [] : [{ ...plan, file: fileOf(order) }];
  });
  const sorted = inOrder(planned.map((plan) => ({ plan, file: plan.file, order: plan.order.order })));
  const keys = keysOf(sorted);
  const keyed = sorted.map(({ plan }, i): Keyed => ({ ...plan, key: keys[i]! }));
  const before = agendaOf(keyed, shop, { from: day, ordered: day });
  const { agenda, asked } = promiseOn(before, 150);
  return {
    orders: keyed,
    results: keyed.map((paper) => ({
      ok: true,
      file: paper.file,
      order: paper.order.order,
      paper,
      none: undefined,
    })),
    materials: materialsOf(keyed, shop, day),
    agenda,
    asked: [asked],
  };
}
