/** Shares the cord on the shelf, earliest due first. */
import type { Shop } from '../order/types.ts';
import { allCut, planCuts } from './cutting/plan.ts';
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
  const shelf = { ...cuttingTask([], shop), buyable: [] };
  const task = (list: readonly TicketCut[]) => ({ ...shelf, cuts: cuttingTask(list, shop).cuts });
  const fits = (list: readonly TicketCut[]): boolean => allCut(task(list), looks);
  const inTurn = firstServed(
    groups(cuts, ({ order }) => order),
    fits,
  );
  const orderable = shop.cords.some(
    ({ color, ply, orderable: more }) => more && color === cuts[0]?.color && ply === cuts[0].ply,
  );
  if (orderable || inTurn.length === cuts.length) return inTurn;
  const [plan] = planCuts({ ...task(cuts), steps: 10 * looks }).materials;
  const undone = new Set(plan?.short.map(({ order }) => order));
  const most = cuts.filter(({ order }) => !undone.has(order));
  return pieces(most) > pieces(inTurn) && fits(most) ? most : inTurn;
}

function firstServed(
  orders: readonly TicketCut[][],
  fits: (cuts: readonly TicketCut[]) => boolean,
): TicketCut[] {
  const found: TicketCut[] = [];
  let left = orders;
  while (left.length > 0) {
    const many = most(left.length, (count) => fits([...found, ...left.slice(0, count).flat()]));
    found.push(...left.slice(0, many).flat());
    const refused = left[many];
    left = left.slice(many + 1).filter((order) => refused === undefined || !needsAll(order, refused));
  }
  return found;
}

/** How many from the start fit together. */
function most(count: number, canBe: (count: number) => boolean): number {
  if (canBe(count)) return count;
  let [low, high] = [0, count - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (canBe(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Piece by piece; such an order fails where the other fails. */
function needsAll(order: readonly TicketCut[], other: readonly TicketCut[]): boolean {
  const [a, b] = [order, other].map((cuts) =>
    cuts
      .flatMap(({ length, quantity }) => Array.from({ length: quantity }, () => length))
      .sort((x, y) => y - x),
  );
  return b?.every((length, i) => (a?.[i] ?? 0) >= length) ?? false;
}

const pieces = (cuts: readonly TicketCut[]): number => cuts.reduce((sum, { quantity }) => sum + quantity, 0);
