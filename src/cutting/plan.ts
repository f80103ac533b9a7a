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
const usualSteps = 80_000_000;

/**
 * Plans the cuts of all orders. Every piece is one unbroken length; all pieces of one order, color and ply come from
 * one dye lot, or the order stays short of that cord altogether. Best is, one after the other: fewest pieces short,
 * fewest put-ups bought (the shelf is used before anything is bought), fewest put-ups of the shelf opened, least
 * waste. Remnants cost nothing. The same task in another order gives the same plan; no clock is read.
 * @throws RangeError when a length or count is no whole number or an id is used twice
 */
export function planCuts(task: CuttingTask): CuttingPlan {
  checkTask(task);
  const steps = new Steps(task.steps ?? usualSteps);
  const works = materialsOf(task).map((material) => begin(material, steps));
  // Quick work on all of them first; what steps are left then go to those that are not proven best, in equal shares.
  const open = works.filter(({ done }) => !done);
  open.forEach((work, i) => {
    const share = new Steps(Math.floor(steps.left / (open.length - i)));
    finish(work, share);
    steps.take(share.used);
  });
  const materials = works.map(report);
  const gap = materials.reduce((sum, { score: { bought, opened } }) => {
    return sum + Math.max(0, bought.value + opened.value - bought.bound - opened.bound);
  }, 0);
  return { materials, proven: materials.every(({ proven }) => proven), gap, stepsUsed: steps.used };
}

/** A material under work. */
interface Work {
  readonly material: Material;
  layout: Layout;
  bounds: Bounds;
  /** Nothing better can be: proven best, and nothing wasted or every plan tried. */
  done: boolean;
  /** Every plan was tried or ruled out. */
  complete: boolean;
}

/** A quick layout and the bounds that are to be had at once. */
function begin(material: Material, steps: Steps): Work {
  const layout = neaten(material, greedyLayout(material, steps), steps);
  const atOnce = new Steps(0);
  const bounds = boundsOf(material, layout, atOnce);
  steps.take(atOnce.used);
  const work = { material, layout, bounds, done: false, complete: false };
  settle(work);
  return work;
}

function settle(work: Work): void {
  const cost = costOf(work.material, work.layout);
  const proven = isProven(cost, work.bounds);
  work.complete = work.complete || (proven && cost.waste === 0);
  work.done = work.complete || (proven && work.material.pieces.length > fewPieces);
}

/** Better bounds; unless they prove the layout best, a layout from the relaxed problem; if few pieces, all there are. */
function finish(work: Work, steps: Steps): void {
  const { material } = work;
  const bounds = (): void => {
    work.bounds = boundsOf(material, work.layout, steps);
    settle(work);
  };
  if (!isProven(costOf(material, work.layout), work.bounds)) bounds();
  if (!isProven(costOf(material, work.layout), work.bounds)) {
    const dived = diveLayout(material, steps);
    const better =
      dived === undefined ? work.layout : cheaper(material, work.layout, neaten(material, dived, steps));
    if (better !== work.layout) {
      work.layout = better;
      bounds();
    }
  }
  if (work.done || material.pieces.length > fewPieces) return;
  const searched = searchAll(material, work.layout, steps);
  work.layout = searched.layout;
  work.complete = searched.complete;
  if (searched.complete) work.bounds = costOf(material, work.layout);
}

function report({ material, layout, bounds, complete }: Work): MaterialPlan {
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
