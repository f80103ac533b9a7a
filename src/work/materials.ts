/** The materials of a backlog: what is pulled from the shelf, what is short, what must be bought, and from what each piece is cut. */
import { planCuts } from './cutting/plan.ts';
import type { CuttingPlan, Eighths, MaterialPlan, ShortOrder } from './cutting/types.ts';
import type { Cord, Shop } from '../order/types.ts';
import { cordOf } from '../cinch/shelf.ts';
import { byText } from '../units/by-text.ts';
import { wholeEighths } from '../units/feet.ts';
import { nearestWord } from '../units/nearest.ts';
import { cutsOf, cuttingTask, type TicketCut } from './cuts.ts';
import { hardwareOf, type HardwareNeed } from './hardware.ts';
import type { Keyed } from './planned.ts';

/** Cord that comes from one dye lot. */
export interface LotPull {
  /** "" where the shop keeps lots apart for none. */
  readonly lot: string;
  readonly bought: boolean;
  readonly pieces: number;
  readonly length: Eighths;
}

/** All that a backlog needs of one color and ply. */
export interface CordNeed {
  /** Undefined: the orders do not say. */
  readonly color: string | undefined;
  readonly ply: number;
  readonly pieces: number;
  readonly needed: Eighths;
  /** Of that color, all lots; undefined when it is no cord of the shop. */
  readonly onHand: Eighths | undefined;
  /** A color of the shop that may be meant. */
  readonly near: string | undefined;
  readonly lots: readonly LotPull[];
  /** What no dye lot can give. */
  readonly short: readonly ShortCord[];
  /** Orders that need it, by name. */
  readonly orders: readonly string[];
}

/** Cord of one order that comes from nowhere, and why. */
export interface ShortCord extends ShortOrder {
  readonly why: 'none-to-order' | 'no-length' | 'too-long';
}

/** Something to buy: put-ups of one length, or cord of which the shop file does not say how long a put-up is, or hardware. */
export type Buy =
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
  /** Every cut by its id, to say what a piece is for. */
  readonly cuts: ReadonlyMap<string, TicketCut>;
}

/** Materials of a sorted backlog. Pure; the same whatever the order of the files, if the list is sorted. */
export function materialsOf(orders: readonly Keyed[], shop: Shop, day: string): Materials {
  const cuts = orders.flatMap((order) => cutsOf(order, shop));
  const plan = planCuts(cuttingTask(cuts, shop));
  const cords = cordNeeds(cuts, plan, shop);
  const hardware = hardwareOf(orders, shop);
  return {
    shop: shop.name,
    day,
    orders,
    cords,
    hardware,
    buy: [...cords.flatMap((need) => cordToBuy(need, plan)), ...hardware.flatMap(hardwareToBuy)],
    plan,
    cuts: new Map(cuts.map((cut) => [cut.id, cut])),
  };
}

const keyOf = ({ color, ply }: { color?: string | undefined; ply: number }): string =>
  JSON.stringify([color, ply]);

/** Body cord before accent cord, by color; what nobody named last. */
function cordNeeds(cuts: readonly TicketCut[], plan: CuttingPlan, shop: Shop): CordNeed[] {
  const groups = new Map<string, TicketCut[]>();
  for (const cut of cuts) {
    const group = groups.get(keyOf(cut));
    if (group === undefined) groups.set(keyOf(cut), [cut]);
    else group.push(cut);
  }
  const plans = new Map(plan.materials.map((material) => [keyOf(material), material]));
  return [...groups]
    .map(([key, group]) => cordNeed(group, plans.get(key), shop))
    .sort(
      (a, b) =>
        b.ply - a.ply ||
        Number(a.color === undefined) - Number(b.color === undefined) ||
        byText(a.color ?? '', b.color ?? ''),
    );
}

function cordNeed(cuts: readonly TicketCut[], plan: MaterialPlan | undefined, shop: Shop): CordNeed {
  const [{ color, ply } = { color: undefined, ply: 0 }] = cuts;
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

function cordToBuy({ color, ply, short }: CordNeed, plan: CuttingPlan): Buy[] {
  if (color === undefined) return [];
  const own = plan.materials.find((material) => material.color === color && material.ply === ply);
  const open = short.filter(({ why }) => why === 'no-length');
  const lengths = open.flatMap(({ pieces }) => pieces.map(({ length }) => length));
  return [
    ...(own?.toBuy ?? []).map(({ count, length }): Buy => ({ kind: 'put-up', color, ply, count, length })),
    ...(open.length === 0
      ? []
      : [
          {
            kind: 'cord',
            color,
            ply,
            length: sum(lengths, (x) => x),
            longest: Math.max(...lengths),
          } as const,
        ]),
  ];
}

const hardwareToBuy = ({ kind, id, short, orderable }: HardwareNeed): Buy[] =>
  short > 0 && orderable ? [{ kind, id, count: short }] : [];
