/** The materials of a backlog: what to pull, buy and cut, and what is short. */
import type { CuttingPlan, Eighths, MaterialPlan, ShortOrder } from './cutting/types.ts';
import type { Cord, Shop } from '../order/types.ts';
import { cordOf } from '../cinch/shelf.ts';
import { byText } from '../units/by-text.ts';
import { wholeEighths } from '../units/feet.ts';
import { nearestWord } from '../units/nearest.ts';
import { pick } from '../units/pick.ts';
import { cordKey, groups, type TicketCut } from './cuts.ts';
import type { HardwareNeed } from './hardware.ts';
import type { Keyed } from './planned.ts';
import { shelfPlan } from './shelf-plan.ts';
import { comesOn, sharedShelf, type Share } from './shelf.ts';

export interface LotPull {
  /** "" when not tracked. */
  readonly lot: string;
  readonly bought: boolean;
  readonly pieces: number;
  readonly length: Eighths;
}

/** Of one color and ply. */
export interface CordNeed {
  /** Undefined when not chosen. */
  readonly color: string | undefined;
  readonly ply: number;
  readonly pieces: number;
  readonly needed: Eighths;
  /** All lots; undefined when the shop lists none. */
  readonly onHand: Eighths | undefined;
  /** Shop color that may be meant. */
  readonly near: string | undefined;
  readonly lots: readonly LotPull[];
  readonly short: readonly ShortCord[];
  readonly orders: readonly string[];
}

/** Cord we can't supply, and why. */
export interface ShortCord extends ShortOrder {
  readonly why: 'none-to-order' | 'no-length' | 'too-long';
}

/** `comes` is the delivery day, if known. */
export type Buy = Bought & { readonly comes: string | undefined };

/** `cord` is cord of unknown spool length. */
type Bought =
  | {
      readonly kind: 'put-up';
      readonly color: string;
      readonly ply: number;
      readonly count: number;
      readonly length: Eighths;
    }
  | {
      readonly kind: 'cord';
      readonly color: string;
      readonly ply: number;
      readonly length: Eighths;
      readonly longest: Eighths;
    }
  | { readonly kind: 'buckle' | 'dee'; readonly id: string; readonly count: number };

export interface Materials {
  readonly shop: string;
  readonly day: string;
  readonly orders: readonly Keyed[];
  readonly cords: readonly CordNeed[];
  readonly hardware: readonly HardwareNeed[];
  readonly buy: readonly Buy[];
  readonly plan: CuttingPlan;
  /** By order key. */
  readonly shares: ReadonlyMap<string, Share>;
  /** By cut id. */
  readonly cuts: ReadonlyMap<string, TicketCut>;
}

/** Takes sorted orders; missing items are ordered on `day`. */
export function materialsOf(orders: readonly Keyed[], shop: Shop, day: string): Materials {
  const { cuts, fromShelf, hardware, shares } = sharedShelf(orders, shop, day);
  const plan = shelfPlan(cuts, fromShelf, shop);
  const cords = cordNeeds(cuts, plan, shop);
  return {
    shop: shop.name,
    day,
    orders,
    cords,
    hardware,
    buy: [
      ...cords.flatMap((need) => cordToBuy(need, plan, comesOf(need, shop, day))),
      ...hardware.flatMap((need) => hardwareToBuy(need, day)),
    ],
    plan,
    shares,
    cuts: new Map(cuts.map((cut) => [cut.id, cut])),
  };
}

/** Body cord before accent, by color; no color last. */
function cordNeeds(cuts: readonly TicketCut[], plan: CuttingPlan, shop: Shop): CordNeed[] {
  const plans = new Map(plan.materials.map((material) => [cordKey(material), material]));
  return groups(cuts, cordKey)
    .map((group) => cordNeed(group, plans.get(cordKey(pick(group, 0))), shop))
    .sort(
      (a, b) =>
        b.ply - a.ply ||
        Number(a.color === undefined) - Number(b.color === undefined) ||
        byText(a.color ?? '', b.color ?? ''),
    );
}

function cordNeed(cuts: readonly TicketCut[], plan: MaterialPlan | undefined, shop: Shop): CordNeed {
  const { color, ply } = pick(cuts, 0);
  const cord = color === undefined ? undefined : cordOf(color, ply, shop);
  const known = shop.cords.filter((each) => each.ply === ply).map((each) => each.color);
  return {
    color,
    ply,
    pieces: sum(cuts, ({ quantity }) => quantity),
    needed: sum(cuts, ({ length, quantity }) => length * quantity),
    onHand: cord === undefined ? undefined : wholeEighths(cord.feetOnHand),
    near: cord === undefined && color !== undefined ? nearestWord(color, known) : undefined,
    lots: plan === undefined ? [] : lotsOf(plan),
    short: plan === undefined || cord === undefined ? [] : plan.short.map((order) => shortOf(order, cord)),
    orders: [...new Set(cuts.map(({ order }) => order))],
  };
}

const sum = <T>(list: readonly T[], of: (entry: T) => number): number =>
  list.reduce((total, entry) => total + of(entry), 0);

function lotsOf({ putUps }: MaterialPlan): LotPull[] {
  const lots = new Map<string, LotPull>();
  for (const { lot, origin, pieces } of putUps) {
    const bought = origin === 'bought';
    const key = JSON.stringify([bought, lot]);
    const before = lots.get(key);
    lots.set(key, {
      lot,
      bought,
      pieces: (before?.pieces ?? 0) + pieces.length,
      length: (before?.length ?? 0) + sum(pieces, ({ length }) => length),
    });
  }
  return [...lots.values()].sort((a, b) => Number(a.bought) - Number(b.bought) || byText(a.lot, b.lot));
}

function shortOf(order: ShortOrder, { orderable, putUps }: Cord): ShortCord {
  if (!orderable) return { ...order, why: 'none-to-order' };
  return { ...order, why: putUps.length === 0 ? 'no-length' : 'too-long' };
}

function comesOf({ color, ply }: CordNeed, shop: Shop, day: string): string | undefined {
  const cord = color === undefined ? undefined : cordOf(color, ply, shop);
  return cord === undefined ? undefined : comesOn(cord, day);
}

function cordToBuy({ color, ply, short }: CordNeed, plan: CuttingPlan, comes: string | undefined): Buy[] {
  if (color === undefined) return [];
  const own = plan.materials.find((material) => material.color === color && material.ply === ply);
  const open = short.filter(({ why }) => why === 'no-length');
  const lengths = open.flatMap(({ pieces }) => pieces.map(({ length }) => length));
  return [
    ...(own?.toBuy ?? []).map(({ count, length }): Buy => ({
      ...{ kind: 'put-up', color, ply, count, length, comes },
    })),
    ...(open.length === 0
      ? []
      : [
          {
            kind: 'cord',
            color,
            ply,
            length: sum(lengths, (x) => x),
            longest: Math.max(...lengths),
            comes,
          } as const,
        ]),
  ];
}

function hardwareToBuy(need: HardwareNeed, day: string): Buy[] {
  const { kind, id, short, orderable } = need;
  return short > 0 && orderable ? [{ kind, id, count: short, comes: comesOn(need, day) }] : [];
}
