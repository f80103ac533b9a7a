/** Two quick ways of laying pieces on put-ups of one dye lot: longest piece into the best fit, and put-up after put-up as full as can be. */
import { pick, upTo } from '../units/pick.ts';
import { gridOf } from './grid.ts';
import { Knapsack } from './knapsack.ts';
import type { Spool } from './layout.ts';
import type { Material } from './material.ts';
import type { Steps } from './steps.ts';

/** Pieces to lay on the put-ups of one lot. */
export interface PackTask {
  readonly material: Material;
  /** Places in `Material.kinds`, those of the lot, in their order there. */
  readonly kinds: readonly number[];
  /** Places in `Material.pieces`, longest first. */
  readonly pieces: readonly number[];
}

/** Hands out put-ups that nothing is cut from yet. */
export class Shelf {
  private readonly left: Map<number, number>;
  private readonly material: Material;

  constructor(material: Material, kinds: readonly number[]) {
    this.material = material;
    this.left = new Map(kinds.map((kind) => [kind, pick(material.kinds, kind).count]));
  }

  /** Kinds of which some are left. */
  get kinds(): number[] {
    return [...this.left].flatMap(([kind, count]) => (count > 0 ? [kind] : []));
  }

  copy(): Shelf {
    const copy = new Shelf(this.material, []);
    for (const [kind, count] of this.left) copy.left.set(kind, count);
    return copy;
  }

  take(kind: number): Spool {
    this.left.set(kind, (this.left.get(kind) ?? 0) - 1);
    return { kind, pieces: [], free: pick(this.material.kinds, kind).length };
  }
}

/** Puts a piece on a spool. */
export function lay(material: Material, spool: Spool, piece: number): void {
  spool.pieces.push(piece);
  spool.free -= pick(material.pieces, piece).length;
}

/** The put-up to begin for a piece: a remnant that fits best, else the longest of the shelf, else the longest to be bought. */
export function begin(material: Material, shelf: Shelf, length: number): Spool | undefined {
  const fitting = shelf.kinds.filter((kind) => pick(material.kinds, kind).length >= length);
  const opened = fitting.filter((kind) => pick(material.kinds, kind).origin === 'remnant');
  // Kinds are sorted: remnants before shelf before bought, each longest first.
  const kind = opened.at(-1) ?? fitting[0];
  return kind === undefined ? undefined : shelf.take(kind);
}

/** Best fit for the longest piece first; undefined when something does not fit. */
export function packBestFit({ material, kinds, pieces }: PackTask): Spool[] | undefined {
  const shelf = new Shelf(material, kinds);
  const spools: Spool[] = [];
  for (const piece of pieces) {
    const { length } = pick(material.pieces, piece);
    let best: Spool | undefined;
    for (const spool of spools) {
      if (spool.free >= length && (best === undefined || spool.free < best.free)) best = spool;
    }
    const remnant = tighterRemnant(material, shelf, { length, than: best?.free ?? Infinity });
    if (best === undefined || remnant !== undefined) {
      best = remnant === undefined ? begin(material, shelf, length) : shelf.take(remnant);
      if (best === undefined) return undefined;
      spools.push(best);
    }
    lay(material, best, piece);
  }
  return spools;
}

/** An untouched remnant costs nothing, so it competes with the put-ups already begun. */
function tighterRemnant(
  material: Material,
  shelf: Shelf,
  { length, than }: { length: number; than: number },
): number | undefined {
  return shelf.kinds
    .filter((kind) => {
      const { origin, length: whole } = pick(material.kinds, kind);
      return origin === 'remnant' && whole >= length && whole < than;
    })
    .at(-1);
}

/** Fills one put-up after the other as far as can be, remnants first; undefined when something does not fit. */
export function packFull(task: PackTask, lean: number, steps: Steps): Spool[] | undefined {
  const { material, kinds } = task;
  const shelf = new Shelf(material, kinds);
  const spools: Spool[] = [];
  const groups = new Map<number, number[]>();
  for (const piece of task.pieces) {
    const { length } = pick(material.pieces, piece);
    groups.set(length, [...(groups.get(length) ?? []), piece]);
  }
  const longest = Math.max(0, ...kinds.map((kind) => pick(material.kinds, kind).length));
  const grid = gridOf([...groups.keys()], longest);
  for (let left = task.pieces.length; left > 0; ) {
    const spool = nextSpool(material, shelf);
    if (spool === undefined) return undefined;
    const lengths = [...groups.keys()].filter((length) => (groups.get(length) ?? []).length > 0);
    const choices = lengths.map((length) => ({
      size: grid.roomy(length),
      value: length * (1 + (lean * length) / longest),
      copies: (groups.get(length) ?? []).length,
    }));
    const cells = grid.cells(spool.free);
    const counts = new Knapsack(choices, cells, steps).counts(cells);
    lengths.forEach((length, i) => {
      for (const piece of (groups.get(length) ?? []).splice(0, counts[i] ?? 0)) {
        lay(material, spool, piece);
        left--;
      }
    });
    if (spool.pieces.length > 0) spools.push(spool);
  }
  return spools;
}

function nextSpool(material: Material, shelf: Shelf): Spool | undefined {
  const kind = shelf.kinds.find((k) => pick(material.kinds, k).origin !== 'remnant');
  const remnant = shelf.kinds.filter((k) => pick(material.kinds, k).origin === 'remnant').at(-1);
  const chosen = remnant ?? kind;
  return chosen === undefined ? undefined : shelf.take(chosen);
}

/** Places of the kinds of a lot. */
export function kindsOfLot(material: Material, lot: number): number[] {
  return upTo(material.kinds.length).filter((kind) => pick(material.kinds, kind).lotNumber === lot);
}
