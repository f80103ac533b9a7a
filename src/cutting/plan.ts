/** The cutting plan: which piece of cord is cut from which put-up, what is left over, what must be bought, and how good that is. */
import { pick } from '../units/pick.ts';
import { boundsOf, isProven, type Bounds } from './bounds.ts';
import { diveLayout } from './dive.ts';
import { fewPieces, searchAll } from './exhaustive.ts';
import { greedyLayout } from './greedy.ts';
import { cheaper, costOf, type Layout } from './layout.ts';
import { materialsOf, totalOf, type Material } from './material.ts';
import { neaten } from './neaten.ts';
import { Steps } from './steps.ts';
import { checkTask } from './task.ts';
import type { CutPutUp, CuttingPlan, CuttingTask, MaterialPlan, ShortOrder } from './types.ts';

/** Steps allowed when the task does not say: about a second of work. */
export const usualSteps = 200_000_000;

/**
 * Plans the cuts of all orders. Every piece is one unbroken length; all pieces of one order, color and ply come from
 * one dye lot, or the order stays short of that cord altogether. Best is, one after the other: fewest pieces short,
 * fewest put-ups bought (the shelf is used before anything is bought), fewest put-ups of the shelf opened, least
 * waste. Remnants cost nothing. The same task in another order gives the same plan; no clock is read.
 * @throws RangeError when a length or count is no whole number or an id is used twice
 */
export function planCuts(task: CuttingTask): CuttingPlan {
  checkTask(task);
  const all = materialsOf(task);
  const allowed = task.steps ?? usualSteps;
  let used = 0;
  const materials = all.map((material, i) => {
    // What one material leaves over, the next ones may use.
    const steps = new Steps(Math.floor((allowed - used) / (all.length - i)));
    const plan = planMaterial(material, steps);
    used += steps.used;
    return plan;
  });
  const gap = materials.reduce((sum, { score: { bought, opened } }) => {
    return sum + Math.max(0, bought.value + opened.value - bought.bound - opened.bound);
  }, 0);
  return { materials, proven: materials.every(({ proven }) => proven), gap, stepsUsed: used };
}

interface Found {
  readonly layout: Layout;
  readonly bounds: Bounds;
  /** Every plan was tried or ruled out. */
  readonly complete: boolean;
}

function planMaterial(material: Material, steps: Steps): MaterialPlan {
  const { layout, bounds, complete } = solve(material, steps);
  const { short, bought, opened, waste } = costOf(material, layout);
  const score = {
    short: { value: short, bound: bounds.short },
    bought: { value: bought, bound: bounds.bought },
    opened: { value: opened, bound: bounds.opened },
    waste: { value: waste, bound: complete ? waste : 0 },
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
    proven: isProven({ short, bought, opened, waste }, bounds),
    returned: putUps.reduce((sum, { goesBack, leftover }) => (goesBack ? sum + leftover : sum), 0),
  };
}

/** Quick ways first; then, unless they are proven best, the relaxed problem; then, if few, all there are. */
function solve(material: Material, steps: Steps): Found {
  let layout = neaten(material, greedyLayout(material, steps), steps);
  let bounds = boundsOf(material, layout, steps);
  if (!isProven(costOf(material, layout), bounds)) {
    const dived = diveLayout(material, steps);
    if (dived !== undefined) layout = cheaper(material, layout, neaten(material, dived, steps));
    bounds = boundsOf(material, layout, steps);
  }
  if (material.pieces.length > fewPieces || isSettled(material, layout, bounds)) {
    return { layout, bounds, complete: isSettled(material, layout, bounds) };
  }
  const { layout: best, complete } = searchAll(material, layout, steps);
  return { layout: best, bounds: complete ? costOf(material, best) : bounds, complete };
}

/** Proven best, and nothing wasted. */
function isSettled(material: Material, layout: Layout, bounds: Bounds): boolean {
  const cost = costOf(material, layout);
  return cost.waste === 0 && isProven(cost, bounds);
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
