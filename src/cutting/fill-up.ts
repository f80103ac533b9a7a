/** Fills one put-up after the other as far as can be: remnants, then the shelf, then what is bought. */
import { pick, upTo } from '../units/pick.ts';
import { fine, gridOf, type Grid } from './grid.ts';
import { refilled } from './insert.ts';
import { Knapsack } from './knapsack.ts';
import type { Layout, Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';
import { lay, nextSpool, Shelf } from './pack.ts';
import type { Steps } from './steps.ts';

export interface FillTask {
  readonly material: Material;
  /** Above 0 where one long piece is worth more than short ones of the same total. */
  readonly lean: number;
}

/** Pieces to lay, and the lots they are bound to (-1: to none). */
interface Bound {
  readonly pieces: readonly number[];
  readonly lotOf: (piece: number) => number;
}

const free = (): number => -1;
/** What a piece that is bound to a lot counts more there, so that it is laid before pieces that may go anywhere. */
const bonus = 1.03;

/**
 * Lays everything as if every piece could come from any lot, then binds the orders of several pieces to lots in
 * proportion to what was cut from each, and lays everything again. Where cord is short, the longest stay short.
 */
export function fillUp(task: FillTask, steps: Steps): Layout {
  const { material } = task;
  const { spools, dropped } = fillDropping(task, steps);
  const short = [...new Set(dropped.map((piece) => material.batchOf[piece] ?? 0))];
  const bound = material.batches.flatMap(({ pieces }, batch) =>
    material.lots > 1 && pieces.length > 1 && !short.includes(batch) ? [batch] : [],
  );
  if (bound.length === 0) return refilled(material, { spools, short });
  const lots = shareOut(material, spools, bound);
  const pieces = upTo(material.pieces.length).filter(
    (piece) => !short.includes(material.batchOf[piece] ?? 0),
  );
  const again = fill(task, { pieces, lotOf: (piece) => lots.get(material.batchOf[piece] ?? 0) ?? -1 }, steps);
  const left = again.left.map((piece) => material.batchOf[piece] ?? 0);
  return refilled(material, { spools: again.spools, short: [...new Set([...short, ...left])] });
}

/** Leaves out the longest pieces until the rest goes in; lots do not matter. */
function fillDropping(task: FillTask, steps: Steps): { spools: Spool[]; dropped: number[] } {
  const { material } = task;
  const pieces = upTo(material.pieces.length);
  const lengths = material.pieces.map(({ length }) => length);
  let over = lengths.reduce((a, b) => a + b, 0);
  over -= material.kinds.reduce((sum, { length, count }) => sum + length * count, 0);
  let drop = 0;
  for (; over > 0 && drop < pieces.length; drop++) over -= pick(lengths, drop);
  for (let more = 0; drop + more < pieces.length && !steps.spent; more += 1 + (more >> 1)) {
    const filled = fill(task, { pieces: pieces.slice(drop + more), lotOf: free }, steps);
    if (filled.left.length === 0) return { spools: filled.spools, dropped: pieces.slice(0, drop + more) };
  }
  return { spools: [], dropped: pieces };
}

/** For each batch the lot that has most left of what was cut from it, the batch with the most cord first. */
function shareOut(
  material: Material,
  spools: readonly Spool[],
  batches: readonly number[],
): Map<number, number> {
  const left = upTo(material.lots).map(() => 0);
  for (const { kind, free: rest } of spools) {
    const { lotNumber, length } = pick(material.kinds, kind);
    left[lotNumber] = pick(left, lotNumber) + length - rest;
  }
  const order = [...batches].sort((a, b) => totalOf(material, b) - totalOf(material, a) || a - b);
  return new Map(
    order.map((batch) => {
      const lot = left.indexOf(Math.max(...left));
      left[lot] = pick(left, lot) - totalOf(material, batch);
      return [batch, lot];
    }),
  );
}

interface Stack {
  readonly length: number;
  readonly lot: number;
  readonly pieces: number[];
}

function stacksOf(material: Material, { pieces, lotOf }: Bound): Stack[] {
  const stacks = new Map<string, Stack>();
  for (const piece of pieces) {
    const { length } = pick(material.pieces, piece);
    const key = `${length} ${lotOf(piece)}`;
    const stack = stacks.get(key) ?? { length, lot: lotOf(piece), pieces: [] };
    stack.pieces.push(piece);
    stacks.set(key, stack);
  }
  return [...stacks.values()];
}

/** Put-up after put-up, each as full as can be; what does not go in is left. */
function fill({ material, lean }: FillTask, bound: Bound, steps: Steps): { spools: Spool[]; left: number[] } {
  const stacks = stacksOf(material, bound);
  const shelf = new Shelf(material, upTo(material.kinds.length));
  const longest = Math.max(1, ...material.kinds.map(({ length }) => length));
  const grid = gridOf(
    stacks.map(({ length }) => length),
    longest,
    fine,
  );
  const spools: Spool[] = [];
  let open = bound.pieces.length;
  while (open > 0 && !steps.spent) {
    const spool = nextSpool(material, shelf);
    if (spool === undefined) break;
    const { lotNumber } = pick(material.kinds, spool.kind);
    const fitting = stacks.filter(({ lot, pieces }) => pieces.length > 0 && (lot < 0 || lot === lotNumber));
    const worth = ({ length, lot }: Stack): number =>
      length * (1 + (lean * length) / longest) * (lot < 0 ? 1 : bonus);
    open -= fillOne(material, spool, { stacks: fitting, worth, grid, steps });
    if (spool.pieces.length > 0) spools.push(spool);
    else if (shelf.isEndless(spool.kind)) shelf.drop(spool.kind);
  }
  return { spools, left: stacks.flatMap(({ pieces }) => pieces) };
}

interface Choice {
  readonly stacks: readonly Stack[];
  readonly worth: (stack: Stack) => number;
  readonly grid: Grid;
  readonly steps: Steps;
}

/** Lays the most valuable set of pieces on a spool; their number. */
function fillOne(material: Material, spool: Spool, { stacks, worth, grid, steps }: Choice): number {
  const choices = stacks.map((stack) => ({
    size: grid.roomy(stack.length),
    value: worth(stack),
    copies: stack.pieces.length,
  }));
  const cells = grid.cells(spool.free);
  const counts = new Knapsack(choices, cells, steps).counts(cells);
  stacks.forEach(({ pieces }, i) => {
    for (const piece of pieces.splice(0, counts[i] ?? 0)) lay(material, spool, piece);
  });
  return spool.pieces.length;
}
