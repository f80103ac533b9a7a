/** Columns of a linear program with few entries each, laid end to end so that going through all of them is quick. */

/** At each of `rows` stands the number at the same place of `counts`. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly counts: readonly number[];
}

export class Columns {
  private cost = new Float64Array(256);
  private start = new Int32Array(257);
  private row = new Int32Array(2048);
  private count = new Float64Array(2048);
  length = 0;

  /** Adds a column behind the others. */
  push({ cost, rows, counts }: Column): void {
    const from = this.start[this.length] ?? 0;
    if (this.length + 2 > this.start.length) {
      this.cost = grown(this.cost, new Float64Array(2 * this.cost.length));
      this.start = grown(this.start, new Int32Array(2 * this.start.length));
    }
    while (from + rows.length > this.row.length) {
      this.row = grown(this.row, new Int32Array(2 * this.row.length));
      this.count = grown(this.count, new Float64Array(2 * this.count.length));
    }
    this.row.set(rows, from);
    this.count.set(counts, from);
    this.cost[this.length] = cost;
    this.length++;
    this.start[this.length] = from + rows.length;
  }

  costOf(column: number): number {
    return this.cost[column] ?? 0;
  }

  /** Calls with each entry of a column. */
  each(column: number, visit: (row: number, count: number) => void): void {
    const to = this.start[column + 1] ?? 0;
    for (let k = this.start[column] ?? 0; k < to; k++) visit(this.row[k] ?? 0, this.count[k] ?? 0);
  }

  /** What one more of a column costs beyond what its entries are worth. */
  reducedCost(column: number, prices: Float64Array): number {
    const { row, count } = this;
    const to = this.start[column + 1] ?? 0;
    let reduced = this.cost[column] ?? 0;
    for (let k = this.start[column] ?? 0; k < to; k++) {
      reduced -= (count[k] ?? 0) * (prices[row[k] ?? 0] ?? 0);
    }
    return reduced;
  }

  /** The column with the least reduced cost below `limit`; -1 when there is none. */
  cheapest(prices: Float64Array, limit: number): number {
    let best = -1;
    let least = limit;
    for (let column = 0; column < this.length; column++) {
      const reduced = this.reducedCost(column, prices);
      if (reduced < least) [least, best] = [reduced, column];
    }
    return best;
  }
}

function grown<T extends Float64Array | Int32Array>(from: T, to: T): T {
  to.set(from);
  return to;
}
