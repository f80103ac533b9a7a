/** Lower bounds of the first three objectives of a material, each over the plans that are no worse in those before it. */
import { pick } from '../units/pick.ts';
import { compareCosts, costOf, type Cost, type Layout } from './layout.ts';
import { coverBounds, fillsOf } from './cover.ts';
import type { Material } from './material.ts';
import { relaxedBound, type Class, type Pattern, type Relaxed, type Source } from './relaxed.ts';
import type { Steps } from './steps.ts';
import type { Origin } from './types.ts';

export interface Bounds {
  readonly short: number;
  readonly bought: number;
  readonly opened: number;
}

/** How one objective counts: what a put-up costs, how many may be bought in all, which pieces may be missing. */
interface Stage {
  readonly costs: Readonly<Record<Origin, number>>;
  readonly mayBuy: number;
  readonly missing: Relaxed['missing'];
  /** Value found, above which no bound can be. */
  readonly enough: number;
}

/** Bounds that hold for every plan as good as `layout` or better. Where the steps do not reach, bounds are lower than they could be. */
export function boundsOf(material: Material, layout: Layout, steps: Steps): Bounds {
  const found = costOf(material, layout);
  const cover = coverBounds(material, fillsOf(material, steps), found);
  const bound = (least: number, stage: Stage): number =>
    stage.enough <= least ? least : Math.max(least, stageBound({ material, layout, stage }, steps));
  const missing = { cost: 0, supply: found.short };
  return {
    short: bound(cover.short, {
      costs: { remnant: 0, shelf: 0, bought: 0 },
      mayBuy: Infinity,
      missing: { cost: 1, supply: Infinity },
      enough: found.short,
    }),
    bought: bound(cover.bought, {
      costs: { remnant: 0, shelf: 0, bought: 1 },
      mayBuy: Infinity,
      missing,
      enough: found.bought,
    }),
    opened: bound(cover.opened, {
      costs: { remnant: 0, shelf: 1, bought: 0 },
      mayBuy: found.bought,
      missing,
      enough: found.opened,
    }),
  };
}

interface StageTask {
  readonly material: Material;
  readonly layout: Layout;
  readonly stage: Stage;
}

function stageBound({ material, layout, stage }: StageTask, steps: Steps): number {
  const classes = classesOf(material);
  const { sources, pools } = supplyOf(material, stage);
  const known = layout.spools.map(({ kind, pieces }): Pattern => {
    const { length, origin } = pick(material.kinds, kind);
    const bought = origin === 'bought';
    const source = sources.findIndex(
      (entry) =>
        entry.length === length && entry.cost === stage.costs[origin] && (entry.pool === 0) === bought,
    );
    const lengths = pieces.map((piece) => pick(material.pieces, piece).length);
    const counts = classes.map((own) => lengths.filter((other) => other === own.length).length);
    return { source, counts };
  });
  const task = { classes, sources, pools, missing: stage.missing };
  return relaxedBound(task, { enough: stage.enough, known }, steps);
}

/** Classes of equal lengths; that orders keep to one dye lot is relaxed. */
function classesOf({ pieces }: Material): Class[] {
  const demand = new Map<number, number>();
  for (const { length } of pieces) demand.set(length, (demand.get(length) ?? 0) + 1);
  return [...demand].map(([length, count]) => ({ length, demand: count }));
}

/** Put-ups here of one length and cost make one source with a pool of its own; all that is bought shares one. */
function supplyOf({ kinds, pieces }: Material, { costs, mayBuy }: Stage): Pick<Relaxed, 'sources' | 'pools'> {
  const sources = new Map<string, Source>();
  const pools: number[] = [0];
  for (const { length, origin, count } of kinds) {
    const cost = costs[origin];
    const bought = origin === 'bought';
    const key = `${length} ${cost} ${bought ? 'bought' : ''}`;
    const source = sources.get(key) ?? { length, cost, pool: bought ? 0 : pools.push(0) - 1 };
    sources.set(key, source);
    pools[source.pool] = pick(pools, source.pool) + count;
  }
  // More put-ups than pieces are never needed, and a smaller number makes a better bound where they cost nothing.
  const most = (pool: number): number =>
    pool === 0 ? Math.min(mayBuy, costs.bought > 0 ? Infinity : pieces.length) : pieces.length;
  return { sources: [...sources.values()], pools: pools.map((count, pool) => Math.min(count, most(pool))) };
}

/** Whether what was found is proven best in the first three objectives. */
export function isProven(found: Cost, bounds: Bounds): boolean {
  return compareCosts({ ...found, waste: 0 }, { ...bounds, waste: 0 }) <= 0;
}
