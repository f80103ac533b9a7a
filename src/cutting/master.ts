/** A small linear programme to which columns are added as they are found: revised simplex with a dense inverse. */
import { pick } from '../units/pick.ts';
import type { Steps } from './steps.ts';

/** A column with few entries: at each of `rows` stands the number at the same place of `counts`. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly counts: readonly number[];
}

const tiny = 1e-9;
const pivotsBeforeFreshInverse = 80;

/** Least cost of columns in any amounts above 0 that give exactly `right` in every row. */
export class Master {
  readonly columns: Column[] = [];
  private readonly right: readonly number[];
  private readonly basis: number[];
  private readonly inBasis = new Set<number>();
  private inverse: Float64Array;
  private amounts: Float64Array;
  private pivots = 0;

  /** Begins with one column a row, each with a single 1 in its row; amounts must not be below 0. */
  constructor(right: readonly number[], first: readonly Column[]) {
    const m = right.length;
    this.right = right;
    this.columns.push(...first);
    this.basis = right.map((_, row) => row);
    for (const row of this.basis) this.inBasis.add(row);
    this.inverse = new Float64Array(m * m);
    for (let i = 0; i < m; i++) this.inverse[i * m + i] = 1;
    this.amounts = Float64Array.from(right);
  }

  /** Prices of the rows at the present basis. */
  prices(): Float64Array {
    const m = this.basis.length;
    const prices = new Float64Array(m);
    this.basis.forEach((column, row) => {
      const { cost } = pick(this.columns, column);
      if (cost === 0) return;
      const at = row * m;
      for (let i = 0; i < m; i++) prices[i] = (prices[i] ?? 0) + cost * (this.inverse[at + i] ?? 0);
    });
    return prices;
  }

  /** Cost of the present amounts. */
  get value(): number {
    return this.basis.reduce(
      (sum, column, row) => sum + pick(this.columns, column).cost * (this.amounts[row] ?? 0),
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
      const entering = this.entering(this.prices());
      if (entering === undefined || !this.pivot(entering)) return;
      steps.take(3 * m * m + 4 * this.columns.length);
    }
  }

  private entering(prices: Float64Array): number | undefined {
    let best: number | undefined;
    let least = -1e-8;
    this.columns.forEach((column, i) => {
      const reduced = reducedCost(column, prices);
      if (reduced < least && !this.inBasis.has(i)) {
        least = reduced;
        best = i;
      }
    });
    return best;
  }

  private direction({ rows, counts }: Column): Float64Array {
    const m = this.basis.length;
    const direction = new Float64Array(m);
    rows.forEach((row, k) => {
      const count = counts[k] ?? 0;
      for (let i = 0; i < m; i++) {
        direction[i] = (direction[i] ?? 0) + count * (this.inverse[i * m + row] ?? 0);
      }
    });
    return direction;
  }

  /** Takes a column up for the one that first runs out; false when none does. */
  private pivot(entering: number): boolean {
    const direction = this.direction(pick(this.columns, entering));
    let leaving = -1;
    let least = Infinity;
    direction.forEach((rate, row) => {
      if (rate <= tiny) return;
      const ratio = Math.max(0, this.amounts[row] ?? 0) / rate;
      const better = ratio < least - 1e-12 || (ratio <= least + 1e-12 && rate > (direction[leaving] ?? 0));
      if (better) [leaving, least] = [row, Math.min(ratio, least)];
    });
    if (leaving < 0) return false;
    this.inBasis.delete(pick(this.basis, leaving));
    this.inBasis.add(entering);
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
      const { rows, counts } = pick(this.columns, column);
      rows.forEach((row, k) => (matrix[row * m + at] = counts[k] ?? 0));
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

/** What one more of a column costs beyond what its entries are worth. */
export function reducedCost({ cost, rows, counts }: Column, prices: Float64Array): number {
  let worth = 0;
  for (let k = 0; k < rows.length; k++) worth += (counts[k] ?? 0) * (prices[rows[k] ?? 0] ?? 0);
  return cost - worth;
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
