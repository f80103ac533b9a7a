/** What each order of a backlog lacks, and from which day we can tie it. */
import type { Shop } from '../order/types.ts';
import { layersOf } from '../cinch/buckles.ts';
import { cordOf } from '../cinch/shelf.ts';
import { daysAfter } from '../units/days.ts';
import { wholeEighths } from '../units/feet.ts';
import { pick, valueOf } from '../units/pick.ts';
import { cutsFromShelf } from './cord-shelf.ts';
import { cordKey, cutsOf, groups, type TicketCut } from './cuts.ts';
import { hardwareOf, type HardwareNeed, type Needing } from './hardware.ts';
import { earliestDue } from './planned.ts';

export interface Lack {
  readonly kind: 'buckle' | 'dee' | 'cord';
  /** Hardware id or cord color. */
  readonly name: string;
  /** For cord. */
  readonly ply: number | undefined;
  /** Pieces, or eighths of an inch of cord. */
  readonly amount: number;
  /** `none`: we can't get more. `unknown`: not in the shop file. */
  readonly supply: 'ordered' | 'none' | 'too-long' | 'unknown';
  /** Delivery day, if known. */
  readonly comes: string | undefined;
  /** A free buckle for as many strands; it may not clear the elbow. */
  readonly swap?: string | undefined;
}

export interface Share {
  readonly lacks: readonly Lack[];
  /** As the rule `stock` grades one order alone. */
  readonly shelf: 'good' | 'acceptable' | 'refuse' | 'cannot-tell';
  /** Last known delivery it waits for. */
  readonly from: string | undefined;
  /** Every delivery has a known day. */
  readonly certain: boolean;
}

export interface SharedShelf {
  /** By order key. */
  readonly shares: ReadonlyMap<string, Share>;
  readonly hardware: readonly HardwareNeed[];
  readonly cuts: readonly TicketCut[];
  /** Cut ids. */
  readonly fromShelf: ReadonlySet<string>;
}

/** The earliest due take first; missing items are ordered on a day. */
export function sharedShelf(orders: readonly Needing[], shop: Shop, ordered: string): SharedShelf {
  const cutsBy = new Map(orders.map((order) => [order.key, cutsOf(order, shop)]));
  const hardware = hardwareOf(orders, shop);
  const fromShelf = cutsFromShelf(
    earliestDue(orders).flatMap(({ key }) => valueOf(cutsBy, key)),
    shop,
  );
  const shares = orders.map(({ key, ticket }) => {
    const cord = valueOf(cutsBy, key).filter(({ id }) => !fromShelf.has(id));
    const lacks = [
      ...hardware.flatMap((need) =>
        hardwareLack(need, key, ordered).map((lack) =>
          lack.kind === 'buckle' ? { ...lack, swap: swapFor(ticket, hardware, shop) } : lack,
        ),
      ),
      ...groups(cord, cordKey).flatMap((cuts) => cordLack(cuts, shop, ordered)),
    ];
    return [key, shareOf(lacks)] as const;
  });
  return { shares: new Map(shares), hardware, cuts: [...cutsBy.values()].flat(), fromShelf };
}

function hardwareLack({ kind, id, lacking, ...need }: HardwareNeed, key: string, ordered: string): Lack[] {
  const count = lacking.find(({ order }) => order === key)?.count;
  if (count === undefined) return [];
  const supply = need.orderable ? 'ordered' : 'none';
  return [{ kind, name: id, ply: undefined, amount: count, supply, comes: comesOn(need, ordered) }];
}

function swapFor(
  { strands, layers, quantity }: Needing['ticket'],
  hardware: readonly HardwareNeed[],
  { buckles }: Shop,
): string | undefined {
  const needed = (id: string): number =>
    hardware.find((need) => need.kind === 'buckle' && need.id === id)?.needed ?? 0;
  return buckles.find(
    (other) =>
      layersOf(other, strands).some((each) => each === layers) &&
      other.onHand - needed(other.id) >= 2 * quantity,
  )?.id;
}

/** One dye lot for all cuts of an order and cord, or none is cut. */
function cordLack(cuts: readonly TicketCut[], shop: Shop, ordered: string): Lack[] {
  const { color, ply } = pick(cuts, 0);
  const amount = cuts.reduce((sum, { length, quantity }) => sum + length * quantity, 0);
  if (color === undefined || amount === 0) return [];
  const lack = { kind: 'cord', name: color, ply, amount } as const;
  const cord = cordOf(color, ply, shop);
  if (cord === undefined) return [{ ...lack, supply: 'unknown', comes: undefined }];
  const longest = Math.max(...cord.putUps.map(({ feet }) => wholeEighths(feet)));
  const tooLong = cord.orderable && cord.putUps.length > 0 && cuts.some(({ length }) => length > longest);
  const supply = tooLong ? 'too-long' : cord.orderable ? 'ordered' : 'none';
  return [{ ...lack, supply, comes: tooLong ? undefined : comesOn(cord, ordered) }];
}

/** Delivery day; undefined when we can't get more or know no lead time. */
export const comesOn = (
  { orderable, leadDays }: { readonly orderable: boolean; readonly leadDays?: number | undefined },
  ordered: string,
): string | undefined => (orderable && leadDays !== undefined ? daysAfter(ordered, leadDays) : undefined);

function shareOf(lacks: readonly Lack[]): Share {
  const has = (...kinds: Lack['supply'][]): boolean => lacks.some(({ supply }) => kinds.includes(supply));
  const days = lacks.flatMap(({ comes }) => comes ?? []).sort();
  const open = has('unknown') ? 'cannot-tell' : has('ordered') ? 'acceptable' : 'good';
  return {
    lacks,
    shelf: has('none', 'too-long') ? 'refuse' : open,
    from: days.at(-1),
    certain: lacks.every(({ comes }) => comes !== undefined),
  };
}
