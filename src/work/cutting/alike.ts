/** Groups equal pieces and equal spools, so the search counts them. */
import { pick } from '../../units/pick.ts';
import type { Material } from './material.ts';
import type { Origin } from './types.ts';

/** Pieces of one length, and order if it has several. */
export interface Group {
  readonly length: number;
  /** -1 for orders of one piece. */
  readonly batch: number;
  readonly pieces: readonly number[];
}

/** Spools of one origin, length and, where it matters, lot. */
export interface Stock {
  readonly origin: Origin;
  readonly length: number;
  /** Most length any pieces take of it. */
  readonly fill: number;
  readonly lot: number;
  /** One per spool. */
  readonly kinds: readonly number[];
}

/** How one spool is cut. */
export interface Filling {
  readonly stock: number;
  readonly counts: readonly (readonly [group: number, count: number])[];
  readonly free: number;
}

/** Longest first. */
export function groupsOf({ pieces, batches, batchOf }: Material): Group[] {
  const groups = new Map<string, { length: number; batch: number; pieces: number[] }>();
  pieces.forEach(({ length }, piece) => {
    const own = pick(batchOf, piece);
    const batch = pick(batches, own).pieces.length > 1 ? own : -1;
    const group = groups.get(`${length} ${batch}`) ?? { length, batch, pieces: [] };
    group.pieces.push(piece);
    groups.set(`${length} ${batch}`, group);
  });
  return [...groups.values()];
}

/** Remnants, shelf, bought; each longest first. */
export function stocksOf({ kinds, batches, pieces }: Material, fills: readonly number[]): Stock[] {
  const lotsMatter = batches.some((batch) => batch.pieces.length > 1);
  const stocks = new Map<
    string,
    { origin: Origin; length: number; fill: number; lot: number; kinds: number[] }
  >();
  kinds.forEach(({ origin, length, lotNumber, count }, kind) => {
    const lot = lotsMatter ? lotNumber : 0;
    const key = `${origin} ${length} ${lot}`;
    const stock = stocks.get(key) ?? { origin, length, fill: pick(fills, kind), lot, kinds: [] };
    for (let i = 0; i < Math.min(count, pieces.length) && stock.kinds.length < pieces.length; i++)
      stock.kinds.push(kind);
    stocks.set(key, stock);
  });
  return [...stocks.values()];
}
