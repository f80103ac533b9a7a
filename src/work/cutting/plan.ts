/** The cutting plan: which piece comes from which spool, and whether a better plan can be. */
import { firstFrom, pick } from '../../units/pick.ts';
import { ByLot } from './by-lot.ts';
import { fillsOf } from './cover.ts';
import { costOf, type Cost, type Layout } from './layout.ts';
import { materialsOf, totalOf, type Material } from './material.ts';
import { firstLayout } from './start.ts';
import { checkTask } from './task.ts';
import type { CutPutUp, CuttingPlan, CuttingTask, MaterialPlan, Score, ShortOrder } from './types.ts';

/** About a second of work at most. */
const usualSteps = 10_000_000;

/**
 * Plans all cuts: fewest pieces short, then spools bought, then shelf spools opened, then least waste; remnants are free. Pieces of one
 * order, color and ply come from one dye lot, or none is cut. Input order and clock change nothing.
 * @throws RangeError as `checkTask`
 */
export function planCuts(task: CuttingTask): CuttingPlan {
  checkTask(task);
  const materials = materialsOf(task);
  let steps = task.steps ?? usualSteps;
  return planOf(
    materials.map((material, i) => {
      const work = improved(material, Math.floor(steps / (materials.length - i)));
      steps -= work.used;
      return report(material, work);
    }),
  );
}

/** All colors and plies as one plan. */
export function planOf(materials: readonly MaterialPlan[]): CuttingPlan {
  const gaps = materials.map(
    ({ score: { bought, opened } }) => bought.value + opened.value - bought.bound - opened.bound,
  );
  return {
    materials,
    proven: materials.every(({ proven }) => proven),
    gap: gaps.reduce((sum, gap) => sum + gap, 0),
  };
}

/** Whether nothing that matters could be less; waste may. */
export const isProven = ({ short, bought, opened }: Score): boolean =>
  [short, bought, opened].every(({ value, bound }) => value <= bound);

/** Whether every piece can be cut; false also when the steps run out. */
export function allCut(task: CuttingTask, steps: number): boolean {
  return materialsOf(task).every((material) => {
    const search = new ByLot(material, fillsOf(material));
    const none = { ...noLimits, short: 0 };
    if (search.hopeless(none)) return false;
    return firstLayout(material, 0).short.length === 0 || typeof search.within(none, steps) === 'object';
  });
}

const noLimits: Cost = { short: Infinity, bought: Infinity, opened: Infinity, waste: Infinity };

interface Work {
  readonly layout: Layout;
  readonly bounds: Cost;
  readonly used: number;
}

/** Improves cost by cost: tries the bound, then one less than found. */
function improved(material: Material, steps: number): Work {
  const search = new ByLot(material, fillsOf(material));
  let limits = noLimits;
  const least = (part: keyof Cost): number =>
    firstFrom(material.pieces.length, (value) => !search.hopeless({ ...limits, [part]: value }));
  let layout = firstLayout(material, least('short'));
  const bounds = { short: 0, bought: 0, opened: 0, waste: 0 };
  let left = steps;
  for (const part of ['short', 'bought', 'opened', 'waste'] as const) {
    const value = (): number => costOf(material, layout)[part];
    // Each eighth of waste tried would cost too much.
    if (part !== 'waste') bounds[part] = least(part);
    let next = bounds[part];
    while (bounds[part] < value()) {
      const share = Math.floor(left / 2);
      const found = search.within({ ...limits, [part]: next }, share);
      left -= share - search.left;
      if (typeof found === 'object') layout = found;
      else if (found === 'none' && (part !== 'waste' || next === value() - 1)) bounds[part] = next + 1;
      else if (next === value() - 1) break;
      next = typeof found === 'object' || found === 'spent' || part === 'waste' ? value() - 1 : bounds[part];
    }
    limits = { ...limits, [part]: value() };
  }
  return { layout, bounds, used: steps - left };
}

function report(material: Material, { layout, bounds }: Work): MaterialPlan {
  const { short, bought, opened, waste } = costOf(material, layout);
  const score = {
    short: { value: short, bound: bounds.short },
    bought: { value: bought, bound: bounds.bought },
    opened: { value: opened, bound: bounds.opened },
    waste: { value: waste, bound: bounds.waste },
  };
  const putUps = putUpsOf(material, layout);
  return {
    color: material.color,
    ply: material.ply,
    putUps,
    short: layout.short.map((batch) => shortOf(material, batch)),
    toBuy: material.kinds
      .filter(({ origin }) => origin === 'bought')
      .map(({ id, length }) => ({
        id,
        length,
        count: putUps.filter((putUp) => putUp.origin === 'bought' && putUp.id === id).length,
      }))
      .filter(({ count }) => count > 0),
    score,
    proven: isProven(score),
    returned: putUps.reduce((sum, { goesBack, leftover }) => (goesBack ? sum + leftover : sum), 0),
  };
}

function putUpsOf(material: Material, { spools }: Layout): CutPutUp[] {
  const copies = new Map<number, number>();
  return [...spools]
    .sort((a, b) => a.kind - b.kind || pick(a.pieces, 0) - pick(b.pieces, 0))
    .map(({ kind, pieces, free }) => {
      const { id, origin, lot, length } = pick(material.kinds, kind);
      const copy = (copies.get(kind) ?? 0) + 1;
      copies.set(kind, copy);
      return {
        ...{ id, copy, origin, lot, color: material.color, ply: material.ply, length },
        pieces: [...pieces].sort((a, b) => a - b).map((piece) => pick(material.pieces, piece)),
        leftover: free,
        goesBack: free >= material.usable && free > 0,
      };
    });
}

function shortOf(material: Material, batch: number): ShortOrder {
  const { order, pieces } = pick(material.batches, batch);
  const longest = Math.max(0, ...material.kinds.map(({ length }) => length));
  const own = pieces.map((piece) => pick(material.pieces, piece));
  return {
    order,
    pieces: own,
    total: totalOf(material, batch),
    tooLong: own.some(({ length }) => length > longest),
  };
}
