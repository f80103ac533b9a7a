/** The grid on which lengths are laid: exact where that is affordable, else rounded to the safe side. */
import { commonDivisor } from './knapsack.ts';

/** Cells of a grid for exact work, and for quick work. */
export const fine = 12_000;
export const coarse = 1_500;

export interface Grid {
  /** In units of length. */
  readonly width: number;
  /** Cells a put-up of this length holds. */
  cells(length: number): number;
  /** Cells a piece takes at most: what fits on the grid fits in cord. */
  roomy(length: number): number;
  /** Cells a piece takes at least: what fits in cord fits on the grid. */
  tight(length: number): number;
}

/**
 * A grid for pieces of these lengths and put-ups up to `longest`. Sums of pieces are multiples of their greatest
 * common divisor, so a grid of that width loses nothing; a coarser one is taken when it would have more than `mostCells`.
 */
export function gridOf(lengths: readonly number[], longest: number, mostCells: number): Grid {
  const width = Math.max(commonDivisor(lengths), Math.ceil(longest / mostCells), 1);
  return {
    width,
    cells: (length) => Math.floor(length / width),
    roomy: (length) => Math.max(1, Math.ceil(length / width)),
    tight: (length) => Math.max(1, Math.floor(length / width)),
  };
}
