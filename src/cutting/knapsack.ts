/** The most valuable set of pieces that goes into a put-up, for every length of put-up at once. */
import type { Steps } from './steps.ts';

/** Pieces that are alike. */
export interface Choice {
  /** Cells of the grid one piece takes; at least 1. */
  readonly size: number;
  readonly value: number;
  readonly copies: number;
}

interface Chunk {
  readonly choice: number;
  readonly copies: number;
  readonly size: number;
  readonly value: number;
}

/** Copies as powers of two and a rest, so that every number of them can be put together. */
function chunksOf(choices: readonly Choice[], cells: number): Chunk[] {
  return choices.flatMap(({ size, value, copies }, choice) => {
    if (value <= 0) return [];
    const chunks: Chunk[] = [];
    let left = Math.min(copies, Math.floor(cells / size));
    for (let part = 1; left > 0; part *= 2) {
      const taken = Math.min(part, left);
      chunks.push({ choice, copies: taken, size: taken * size, value: taken * value });
      left -= taken;
    }
    return chunks;
  });
}

/** Bounded knapsack by dynamic programming over a grid of cells. */
export class Knapsack {
  /** Best value for each number of cells. */
  readonly best: Float64Array;
  private readonly chunks: readonly Chunk[];
  private readonly chosen: Uint8Array;
  private readonly choices: number;

  constructor(choices: readonly Choice[], cells: number, steps: Steps) {
    this.choices = choices.length;
    this.chunks = chunksOf(choices, cells);
    this.best = new Float64Array(cells + 1);
    this.chosen = new Uint8Array(this.chunks.length * (cells + 1));
    this.chunks.forEach((chunk, i) => {
      this.enter(chunk, i * (cells + 1));
    });
    steps.take(this.chunks.length * cells + 1);
  }

  private enter({ size, value }: Chunk, row: number): void {
    const { best, chosen } = this;
    for (let cell = best.length - 1; cell >= size; cell--) {
      const withIt = (best[cell - size] ?? 0) + value;
      if (withIt > (best[cell] ?? 0) + 1e-12) {
        best[cell] = withIt;
        chosen[row + cell] = 1;
      }
    }
  }

  /** How many of each choice make up the best value of so many cells. */
  counts(cells: number): number[] {
    const counts = new Array<number>(this.choices).fill(0);
    let left = cells;
    for (let i = this.chunks.length - 1; i >= 0; i--) {
      const chunk = this.chunks[i];
      if (chunk === undefined || this.chosen[i * this.best.length + left] !== 1) continue;
      counts[chunk.choice] = (counts[chunk.choice] ?? 0) + chunk.copies;
      left -= chunk.size;
    }
    return counts;
  }
}

/** Greatest common divisor of whole numbers, 0 of none. */
export function commonDivisor(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => {
    let [x, y] = [a, b];
    while (y !== 0) [x, y] = [y, x % y];
    return x;
  }, 0);
}
