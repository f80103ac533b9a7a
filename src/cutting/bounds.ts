/** Lower bounds of the first three objectives of a material, each over the plans that are no worse in those before it. */
import { compareCosts, costOf, type Cost, type Layout } from './layout.ts';
import { pick } from '../units/pick.ts';
import type { Kind, Material } from './material.ts';
import { relaxedBound, type Class, type Pattern, type Relaxed } from './relaxed.ts';
import type { Steps } from './steps.ts';

export interface Bounds {
  readonly short: number;
  readonly bought: number;
  readonly opened: number;
}

/** Classes of equal lengths; that orders keep to one dye lot is relaxed. */
function classesOf({ pieces }: Material): Class[] {
  const demand = new Map<number, number>();
  for (const { length } of pieces) demand.set(length, (demand.get(length) ?? 0) + 1);
  return [...demand].map(([length, count]) => ({ length, demand: count }));
}

type Stage = (kind: Kind) => { cost: number; supply: number };

/** Bounds that hold for every plan as good as `layout` or better. Steps: shared, and not all may be reached. */
export function boundsOf(material: Material, layout: Layout, steps: Steps): Bounds {
  const found = costOf(material, layout);
  const classes = classesOf(material);
  const solve = (stage: Stage, missing: Relaxed['missing'], enough: number): number => {
    if (enough === 0) return 0;
    const sources = merged(material.kinds.map((kind) => ({ length: kind.length, ...stage(kind) })));
    const known = layout.spools.flatMap(({ kind, pieces }): Pattern[] => {
      const own = pick(material.kinds, kind);
      const { cost } = stage(own);
      const source = sources.findIndex((entry) => entry.length === own.length && entry.cost === cost);
      const lengths = pieces.map((piece) => pick(material.pieces, piece).length);
      const counts = classes.map(({ length }) => lengths.filter((other) => other === length).length);
      return source < 0 ? [] : [{ source, counts }];
    });
    return relaxedBound({ classes, sources, missing }, { enough, known }, steps);
  };
  const none = { cost: 0, supply: found.short };
  const free: Stage = ({ count }) => ({ cost: 0, supply: Math.min(count, material.pieces.length) });
  const short = solve(free, { cost: 1, supply: Infinity }, found.short);
  const bought = solve(
    (kind) => (kind.origin === 'bought' ? { cost: 1, supply: kind.count } : free(kind)),
    none,
    found.bought,
  );
  const opened = solve(
    (kind) => {
      const { supply } = free(kind);
      if (kind.origin === 'bought') return { cost: 0, supply: Math.min(supply, found.bought) };
      return kind.origin === 'shelf' ? { cost: 1, supply } : { cost: 0, supply };
    },
    none,
    found.opened,
  );
  return { short, bought, opened };
}

type Source = Relaxed['sources'][number];

/** Put-ups of one length and cost make one source. */
function merged(sources: readonly Source[]): Source[] {
  const together = new Map<string, Source>();
  for (const source of sources) {
    const key = `${source.length} ${source.cost}`;
    const { supply } = together.get(key) ?? { supply: 0 };
    together.set(key, { ...source, supply: supply + source.supply });
  }
  return [...together.values()];
}

/** Whether what was found is proven best in the first three objectives. */
export function isProven(found: Cost, bounds: Bounds): boolean {
  return compareCosts({ ...found, waste: 0 }, { ...bounds, waste: 0 }) <= 0;
}
