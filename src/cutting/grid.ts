/** The grid on which lengths are laid: exact where that is affordable, else rounded to the safe side. */
import { commonDivisor } from './knapsack.ts';

const mostCells = 12_000;

export interface Grid {
  /** Cells a put-up of this length holds. */
  cells(length: number): number;
  /** Cells a piece takes at most: what fits on the grid fits in cord. */
  roomy(length: number): number;
  /** Cells a piece takes at least: what fits in cord fits on the grid. */
  tight(length: number): number;
}

/**
 * A grid for pieces of these lengths and put-ups up to `longest`. Sums of pieces are multiples of their greatest
 * common divisor, so a grid of that width loses nothing; a coarser one is taken when it would have too many cells.
 */
export function gridOf(lengths: readonly number[], longest: number): Grid {
  const width = Math.max(commonDivisor(lengths), Math.ceil(longest / mostCells), 1);
  return {
    cells: (length) => Math.floor(length / width),
    roomy: (length) => Math.max(1, Math.ceil(length / width)),
    tight: (length) => Math.max(1, Math.floor(length / width)),
  };
}
