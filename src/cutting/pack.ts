/** The quickest way of laying pieces on put-ups of one dye lot: the longest piece first, into the best fit. */
import { pick, upTo } from '../units/pick.ts';
import type { Spool } from './layout.ts';
import type { Material } from './material.ts';

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

  isEndless(kind: number): boolean {
    return this.left.get(kind) === Infinity;
  }

  /** No more of a kind from now on. */
  drop(kind: number): void {
    this.left.delete(kind);
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

/** The put-up to fill next, remnants first and the shortest of them first. */
export function nextSpool(material: Material, shelf: Shelf): Spool | undefined {
  const remnant = shelf.kinds.filter((kind) => pick(material.kinds, kind).origin === 'remnant').at(-1);
  const chosen = remnant ?? shelf.kinds[0];
  return chosen === undefined ? undefined : shelf.take(chosen);
}

/** Places of the kinds of a lot. */
export function kindsOfLot(material: Material, lot: number): number[] {
  return upTo(material.kinds.length).filter((kind) => pick(material.kinds, kind).lotNumber === lot);
}
