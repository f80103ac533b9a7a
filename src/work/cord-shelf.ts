/** Shares the cord on the shelf, earliest due first. */
import type { Shop } from '../order/types.ts';
import { cordOf } from '../cinch/shelf.ts';
import { allCut, planCuts } from './cutting/plan.ts';
import { firstFrom, pick } from '../units/pick.ts';
import { cordKey, cuttingTask, groups, type TicketCut } from './cuts.ts';

/** Planner steps for one check of the shelf. */
const looks = 100_000;

/**
 * Cuts come by turn. Per color and ply an order gets all or nothing. Where we can't buy more, serving more
 * pieces beats keeping turns.
 */
export function cutsFromShelf(cuts: readonly TicketCut[], shop: Shop): Set<string> {
  const known = cuts.filter(({ known: has, length }) => has && length > 0);
  const cords = groups(known, cordKey);
  return new Set(cords.flatMap((cord) => served(cord, shop)).map(({ id }) => id));
}

function served(cuts: readonly TicketCut[], shop: Shop): TicketCut[] {
  const task = (list: readonly TicketCut[]) => ({ ...cuttingTask(list, shop), buyable: [] });
  const fits = (list: readonly TicketCut[]): boolean => allCut(task(list), looks);
  if (fits(cuts)) return [...cuts];
  const inTurn = firstServed(
    groups(cuts, ({ order }) => order),
    fits,
  );
  const { color = '', ply } = pick(cuts, 0);
  if (cordOf(color, ply, shop)?.orderable === true) return inTurn;
  const { short } = pick(planCuts({ ...task(cuts), steps: 10 * looks }).materials, 0);
  const undone = new Set(short.map(({ order }) => order));
  const most = cuts.filter(({ order }) => !undone.has(order));
  return pieces(most) > pieces(inTurn) && fits(most) ? most : inTurn;
}

/** As many from the start as fit, then each that still does. */
function firstServed(
  orders: readonly TicketCut[][],
  fits: (cuts: readonly TicketCut[]) => boolean,
): TicketCut[] {
  const many = firstFrom(orders.length, (i) => !fits(orders.slice(0, i + 1).flat()));
  return orders.slice(many).reduce<TicketCut[]>((found, order) => {
    const more = [...found, ...order];
    return fits(more) ? more : found;
  }, orders.slice(0, many).flat());
}

const pieces = (cuts: readonly TicketCut[]): number => cuts.reduce((sum, { quantity }) => sum + quantity, 0);
