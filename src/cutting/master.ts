/** A small linear program to which columns are added as they are found: revised simplex with a dense inverse. */
import { Columns, type Column } from './columns.ts';
import type { Steps } from './steps.ts';

const tiny = 1e-9;
const pivotsBeforeFreshInverse = 80;

/** Least cost of columns in any amounts above 0 that give exactly `right` in every row. */
export class Master {
  readonly columns = new Columns();
  private readonly right: readonly number[];
  private readonly basis: number[];
  private inverse: Float64Array;
  private amounts: Float64Array;
  private pivots = 0;

  /** Begins with one column a row, each with a single 1 in its row; amounts must not be below 0. */
  constructor(right: readonly number[], first: readonly Column[]) {
    const m = right.length;
    this.right = right;
    for (const column of first) this.columns.push(column);
    this.basis = right.map((_, row) => row);
    this.inverse = new Float64Array(m * m);
    for (let i = 0; i < m; i++) this.inverse[i * m + i] = 1;
    this.amounts = Float64Array.from(right);
  }

  /** Prices of the rows at the present basis. */
  prices(): Float64Array {
    const m = this.basis.length;
    const prices = new Float64Array(m);
    this.basis.forEach((column, row) => {
      const cost = this.columns.costOf(column);
      if (cost === 0) return;
      const at = row * m;
      for (let i = 0; i < m; i++) prices[i] = (prices[i] ?? 0) + cost * (this.inverse[at + i] ?? 0);
    });
    return prices;
  }

  /** Cost of the present amounts. */
  get value(): number {
    return this.basis.reduce(
      (sum, column, row) => sum + this.columns.costOf(column) * (this.amounts[row] ?? 0),
      0,
    );
  }

  /** Columns in use with their amounts. */
  get used(): { column: number; amount: number }[] {
    return this.basis
      .map((column, row) => ({ column, amount: this.amounts[row] ?? 0 }))
      .filter(({ amount }) => amount > 1e-7);
  }

  /** Pivots until no column is worth taking up, or the steps are spent. */
  improve(steps: Steps): void {
    const m = this.basis.length;
    for (let i = 0; i < 30 * m + 100 && !steps.spent; i++) {
      // A column of the basis has a reduced cost of 0, but for rounding.
      const entering = this.columns.cheapest(this.prices(), -1e-8);
      if (entering < 0 || !this.pivot(entering)) return;
      steps.take(3 * m * m + 10 * this.columns.length);
    }
  }

  private direction(column: number): Float64Array {
    const m = this.basis.length;
    const { inverse } = this;
    const direction = new Float64Array(m);
    this.columns.each(column, (row, count) => {
      for (let i = 0; i < m; i++) direction[i] = (direction[i] ?? 0) + count * (inverse[i * m + row] ?? 0);
    });
    return direction;
  }

  /** Takes a column up for the one that first runs out; false when none does. */
  private pivot(entering: number): boolean {
    const direction = this.direction(entering);
    let leaving = -1;
    let least = Infinity;
    direction.forEach((rate, row) => {
      if (rate <= tiny) return;
      const ratio = Math.max(0, this.amounts[row] ?? 0) / rate;
      const better = ratio < least - 1e-12 || (ratio <= least + 1e-12 && rate > (direction[leaving] ?? 0));
      if (better) [leaving, least] = [row, Math.min(ratio, least)];
    });
    if (leaving < 0) return false;
    this.basis[leaving] = entering;
    this.pivots++;
    if (this.pivots % pivotsBeforeFreshInverse === 0) this.renew();
    else this.turn(direction, leaving, least);
    return true;
  }

  private turn(direction: Float64Array, leaving: number, step: number): void {
    const m = this.basis.length;
    const { inverse, amounts } = this;
    const rate = direction[leaving] ?? 1;
    for (let i = 0; i < m; i++) inverse[leaving * m + i] = (inverse[leaving * m + i] ?? 0) / rate;
    for (let row = 0; row < m; row++) {
      const factor = direction[row] ?? 0;
      if (row === leaving || factor === 0) continue;
      amounts[row] = (amounts[row] ?? 0) - factor * step;
      for (let i = 0; i < m; i++) {
        inverse[row * m + i] = (inverse[row * m + i] ?? 0) - factor * (inverse[leaving * m + i] ?? 0);
      }
    }
    amounts[leaving] = step;
  }

  /** The inverse computed afresh, so that rounding does not pile up. */
  private renew(): void {
    const m = this.basis.length;
    const matrix = new Float64Array(m * m);
    this.basis.forEach((column, at) => {
      this.columns.each(column, (row, count) => (matrix[row * m + at] = count));
    });
    this.inverse = inverted(matrix, m);
    this.amounts = new Float64Array(m);
    for (let row = 0; row < m; row++) {
      let sum = 0;
      for (let i = 0; i < m; i++) sum += (this.inverse[row * m + i] ?? 0) * (this.right[i] ?? 0);
      this.amounts[row] = sum;
    }
  }
}

/** Inverse of an m x m matrix by Gauss-Jordan elimination, largest pivot first. */
function inverted(matrix: Float64Array, m: number): Float64Array {
  const inverse = new Float64Array(m * m);
  for (let i = 0; i < m; i++) inverse[i * m + i] = 1;
  for (let column = 0; column < m; column++) {
    let top = column;
    for (let row = column + 1; row < m; row++) {
      if (Math.abs(matrix[row * m + column] ?? 0) > Math.abs(matrix[top * m + column] ?? 0)) top = row;
    }
    swapRows([matrix, inverse], m, [top, column]);
    const pivot = matrix[column * m + column] ?? 1;
    const factors = Array.from({ length: m }, (_, row) => matrix[row * m + column] ?? 0);
    for (const table of [matrix, inverse]) clear(table, factors, { column, pivot });
  }
  return inverse;
}

/** Divides the row of the pivot, then takes it off all others. */
function clear(
  table: Float64Array,
  factors: readonly number[],
  { column, pivot }: { column: number; pivot: number },
): void {
  const m = factors.length;
  for (let i = column * m; i < column * m + m; i++) table[i] = (table[i] ?? 0) / pivot;
  factors.forEach((factor, row) => {
    if (row === column || factor === 0) return;
    for (let i = 0; i < m; i++) {
      table[row * m + i] = (table[row * m + i] ?? 0) - factor * (table[column * m + i] ?? 0);
    }
  });
}

function swapRows(tables: readonly Float64Array[], m: number, [a, b]: readonly [number, number]): void {
  if (a === b) return;
  for (const table of tables) {
    const kept = table.slice(a * m, a * m + m);
    table.copyWithin(a * m, b * m, b * m + m);
    table.set(kept, b * m);
  }
}
