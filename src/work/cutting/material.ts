/** The cord of one color and ply, sorted so that input order changes nothing. */
import { byText } from '../../units/by-text.ts';
import { pick } from '../../units/pick.ts';
import type { CuttingTask, Eighths, Origin, Piece } from './types.ts';

/** One order: all from one dye lot, or short. */
export interface Batch {
  readonly order: string;
  /** Indexes in `Material.pieces`. */
  readonly pieces: readonly number[];
}

/** Equal spools. */
export interface Kind {
  readonly id: string;
  readonly origin: Origin;
  readonly lot: string;
  /** From 0. */
  readonly lotNumber: number;
  readonly length: Eighths;
  /** Infinity where we can buy any number. */
  readonly count: number;
}

export interface Material {
  readonly color: string;
  readonly ply: number;
  readonly pieces: readonly Piece[];
  readonly batchOf: readonly number[];
  readonly batches: readonly Batch[];
  /** Remnants, shelf, bought; each longest first. */
  readonly kinds: readonly Kind[];
  readonly lots: number;
  readonly usable: Eighths;
}

/** Lot of all we buy. */
export const newLot = 'new';

const key = ({ color, ply }: { color: string; ply: number }): string => `${color}\n${ply}`;

/** One for each color and ply. */
export function materialsOf(task: CuttingTask): Material[] {
  const named = new Map(task.cuts.map((cut) => [key(cut), { color: cut.color, ply: cut.ply }]));
  return [...named.values()]
    .sort((a, b) => byText(a.color, b.color) || a.ply - b.ply)
    .map((material) => materialOf(task, material));
}

function materialOf(task: CuttingTask, material: { color: string; ply: number }): Material {
  const own = (entry: { color: string; ply: number }): boolean => key(entry) === key(material);
  const pieces = task.cuts
    .filter(own)
    .flatMap(({ id, order, length, quantity }) =>
      Array.from({ length: quantity }, (_, i): Piece => ({ cut: id, number: i + 1, order, length })),
    )
    .sort(
      (a, b) =>
        b.length - a.length || byText(a.order, b.order) || byText(a.cut, b.cut) || a.number - b.number,
    );
  const orders = [...new Set(pieces.map(({ order }) => order))].sort(byText);
  const place = new Map(orders.map((order, i) => [order, i]));
  const batchOf = pieces.map(({ order }) => place.get(order) ?? 0);
  const batches = orders.map((order): { order: string; pieces: number[] } => ({ order, pieces: [] }));
  batchOf.forEach((batch, piece) => batches[batch]?.pieces.push(piece));
  const kinds = kindsOf(task, own);
  const lots = new Set(kinds.map(({ lotNumber }) => lotNumber)).size;
  return { ...material, pieces, batchOf, batches, kinds, lots, usable: task.usable };
}

type Own = (entry: { color: string; ply: number }) => boolean;
const rank: Readonly<Record<Origin, number>> = { remnant: 0, shelf: 1, bought: 2 };

function kindsOf({ onHand, buyable }: CuttingTask, own: Own): Kind[] {
  const here = onHand
    .filter((putUp) => own(putUp) && putUp.count > 0)
    .map((putUp) => ({ ...putUp, origin: putUp.opened ? ('remnant' as const) : ('shelf' as const) }));
  const there = buyable
    .filter((putUp) => own(putUp) && putUp.count !== 0)
    .map((putUp) => ({ ...putUp, count: putUp.count ?? Infinity, lot: newLot, origin: 'bought' as const }));
  // A shelf lot may be called "new" too.
  const lotName = ({ origin, lot }: { origin: Origin; lot: string }): string =>
    origin === 'bought' ? 'b' : `h${lot}`;
  const all = [...here, ...there];
  const lots = [...new Set(all.map(lotName))].sort(byText);
  return all
    .map((putUp) => ({
      id: putUp.id,
      origin: putUp.origin,
      lot: putUp.lot,
      lotNumber: lots.indexOf(lotName(putUp)),
      length: putUp.length,
      count: putUp.count,
    }))
    .sort((a, b) => rank[a.origin] - rank[b.origin] || b.length - a.length || byText(a.id, b.id));
}

/** Cord of a batch. */
export function totalOf(material: Material, batch: number): number {
  return pick(material.batches, batch).pieces.reduce(
    (sum, piece) => sum + pick(material.pieces, piece).length,
    0,
  );
}
