/** Buckles and dees of a backlog by size: needed, on hand, short. */
import type { Shop } from '../order/types.ts';
import type { Keyed } from './planned.ts';

export interface HardwareNeed {
  readonly kind: 'buckle' | 'dee';
  readonly id: string;
  readonly metal: string | undefined;
  readonly needed: number;
  readonly onHand: number;
  readonly short: number;
  /** Whether more can be had. */
  readonly orderable: boolean;
  /** Orders that need it, by name. */
  readonly orders: readonly string[];
}

/** What is needed at all, in the order of the shop file: buckles, then dees. */
export function hardwareOf(orders: readonly Keyed[], { buckles, dees }: Shop): HardwareNeed[] {
  const needed = new Map<string, { count: number; orders: Set<string> }>();
  const add = (what: string, count: number, order: string): void => {
    const before = needed.get(what) ?? { count: 0, orders: new Set() };
    needed.set(what, { count: before.count + count, orders: before.orders.add(order) });
  };
  for (const { key, ticket } of orders) {
    add(`buckle ${ticket.buckle.id}`, 2 * ticket.quantity, key);
    for (const { id, count } of ticket.dees) add(`dee ${id}`, count * ticket.quantity, key);
  }
  const of = (kind: HardwareNeed['kind'], list: typeof buckles | typeof dees): HardwareNeed[] =>
    list.flatMap(({ id, metal, onHand, orderable }) => {
      const { count = 0, orders: own = [] } = needed.get(`${kind} ${id}`) ?? {};
      const short = Math.max(0, count - onHand);
      return count === 0
        ? []
        : [{ kind, id, metal, needed: count, onHand, short, orderable, orders: [...own] }];
    });
  return [...of('buckle', buckles), ...of('dee', dees)];
}
