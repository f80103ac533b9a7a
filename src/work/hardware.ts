/** Buckles and dees of a backlog: needed, on hand and short. */
import type { Shop } from '../order/types.ts';
import { earliestDue, type Keyed } from './planned.ts';

export type Needing = Pick<Keyed, 'key' | 'ticket'>;

export interface HardwareNeed {
  readonly kind: 'buckle' | 'dee';
  readonly id: string;
  readonly metal: string | undefined;
  readonly needed: number;
  readonly onHand: number;
  readonly short: number;
  readonly orderable: boolean;
  readonly leadDays: number | undefined;
  readonly orders: readonly string[];
  readonly lacking: readonly { readonly order: string; readonly count: number }[];
}

/** In shop file order. The earliest due take first. */
export function hardwareOf(orders: readonly Needing[], { buckles, dees }: Shop): HardwareNeed[] {
  const inTurn = earliestDue(orders);
  const of = (kind: HardwareNeed['kind'], list: typeof buckles | typeof dees): HardwareNeed[] =>
    list.flatMap(({ id, metal, onHand, orderable, leadDays }) => {
      const count = ({ ticket }: Needing): number => countOf(ticket, kind, id);
      const own = orders.filter((order) => count(order) > 0).map(({ key }) => key);
      if (own.length === 0) return [];
      let needed = 0;
      const lacking = inTurn.flatMap((order) => {
        needed += count(order);
        const lacks = Math.min(count(order), needed - onHand);
        return lacks > 0 ? [{ order: order.key, count: lacks }] : [];
      });
      const short = Math.max(0, needed - onHand);
      return [{ kind, id, metal, needed, onHand, short, orderable, leadDays, orders: own, lacking }];
    });
  return [...of('buckle', buckles), ...of('dee', dees)];
}

function countOf(
  { buckle, dees, quantity }: Keyed['ticket'],
  kind: HardwareNeed['kind'],
  id: string,
): number {
  if (kind === 'buckle') return buckle.id === id ? 2 * quantity : 0;
  return quantity * dees.reduce((sum, dee) => sum + (dee.id === id ? dee.count : 0), 0);
}
