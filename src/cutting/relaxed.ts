/** The cutting problem with whole put-ups allowed to be taken in parts: its cost is a lower bound. */
import { pick } from '../units/pick.ts';
import { coarse, fine, gridOf, type Grid } from './grid.ts';
import { Knapsack } from './knapsack.ts';
import type { Column } from './columns.ts';
import { Master } from './master.ts';
import type { Steps } from './steps.ts';

/** Pieces that are alike. */
export interface Class {
  readonly length: number;
  readonly demand: number;
}

/** Put-ups that are alike, or cost alike. */
export interface Source {
  readonly length: number;
  readonly cost: number;
  /** Place in `Relaxed.pools`: where it is counted how many there are. */
  readonly pool: number;
  /** Classes it must not be cut into; none when left out. */
  readonly without?: ReadonlySet<number>;
}

export interface Relaxed {
  readonly classes: readonly Class[];
  readonly sources: readonly Source[];
  /** How many put-ups of the sources of a pool there are together. */
  readonly pools: readonly number[];
  /** What a piece costs that is not cut at all, and how many such pieces there may be. */
  readonly missing: { readonly cost: number; readonly supply: number };
}

/** What a put-up of a source is cut into. */
export interface Pattern {
  readonly source: number;
  /** Pieces of each class. */
  readonly counts: readonly number[];
}

/** Whole prices, the factor they are shrunk by, and what a put-up of a source is worth at them. */
interface Priced {
  readonly whole: readonly number[];
  readonly factor: number;
  readonly worth: (source: Source) => number;
}

/** Prices are turned into whole multiples of 2^-20, so that the bound is computed without rounding. */
const scale = 1_048_576;

export class Relaxation {
  readonly patterns: Pattern[] = [];
  private readonly task: Relaxed;
  /** Where patterns are looked for; coarse until nothing more is found there, if it may be refined. */
  private grid: Grid;
  private readonly exact: Grid;
  private readonly steps: Steps;
  private readonly longest: number;
  /** Row of each pool with a limited supply, else -1. */
  private readonly poolRow: readonly number[];
  private readonly right: number[];
  private readonly master: Master;
  private firstPattern = 0;

  constructor(task: Relaxed, steps: Steps) {
    this.task = task;
    this.steps = steps;
    const { classes, sources, pools, missing } = task;
    this.longest = Math.max(1, ...sources.map(({ length, pool }) => (pools[pool] === 0 ? 0 : length)));
    const lengths = classes.map(({ length }) => length);
    this.grid = gridOf(lengths, this.longest, coarse);
    this.exact = gridOf(lengths, this.longest, fine);
    let row = classes.length;
    this.poolRow = pools.map((supply) => (supply === Infinity ? -1 : row++));
    this.right = [...classes.map(({ demand }) => demand), ...pools.filter((supply) => supply !== Infinity)];
    if (this.missingIsLimited) this.right.push(missing.supply);
    this.master = this.begin();
  }

  private get missingIsLimited(): boolean {
    const { supply } = this.task.missing;
    return supply > 0 && supply < Infinity;
  }

  /** A master that lets every piece be missing and leaves every put-up alone. */
  private begin(): Master {
    const { classes, missing, sources } = this.task;
    const single = (cost: number, count: number, row: number): Column => ({
      cost,
      rows: [row],
      counts: [count],
    });
    // Where only so many pieces may be missing, a dear stand-in lets the programme begin.
    const dear = 100 * Math.max(1, missing.cost, ...sources.map(({ cost }) => cost));
    const cost = missing.supply === Infinity ? missing.cost : dear;
    const master = new Master(
      this.right,
      this.right.map((_, row) => single(row < classes.length ? cost : 0, 1, row)),
    );
    classes.forEach((_, row) => {
      // More pieces than asked for do no harm.
      master.columns.push(single(0, -1, row));
      if (!this.missingIsLimited) return;
      master.columns.push({ cost: missing.cost, rows: [row, this.right.length - 1], counts: [1, 1] });
    });
    this.firstPattern = master.columns.length;
    return master;
  }

  /** Adds a pattern found elsewhere. */
  add(pattern: Pattern): void {
    this.patterns.push(pattern);
    this.master.columns.push(this.columnOf(pattern));
  }

  private columnOf({ source, counts }: Pattern): Column {
    const rows = counts.flatMap((count, row) => (count > 0 ? [row] : []));
    const numbers = rows.map((row) => pick(counts, row));
    const { cost, pool } = pick(this.task.sources, source);
    const poolRow = pick(this.poolRow, pool);
    if (poolRow < 0) return { cost, rows, counts: numbers };
    return { cost, rows: [...rows, poolRow], counts: [...numbers, 1] };
  }

  /** Amounts of the patterns in the present solution. */
  get amounts(): { pattern: number; amount: number }[] {
    return this.master.used
      .filter(({ column }) => column >= this.firstPattern)
      .map(({ column, amount }) => ({ pattern: column - this.firstPattern, amount }));
  }

  get value(): number {
    return this.master.value;
  }

  /** Looks for patterns on the exact grid from now on; false when it did so before. */
  refine(): boolean {
    if (this.grid.width === this.exact.width) return false;
    this.grid = this.exact;
    return true;
  }

  /** One round: solve, then look for patterns worth more than they cost. False when there are none. */
  round(): { improved: boolean; prices: Float64Array } {
    this.master.improve(this.steps);
    const prices = this.master.prices();
    const found = this.priced(prices);
    for (const pattern of found) this.add(pattern);
    return { improved: found.length > 0, prices };
  }

  private priced(prices: Float64Array): Pattern[] {
    const tables = new Map<ReadonlySet<number> | undefined, Knapsack>();
    return this.task.sources.flatMap(({ length, pool, without }, source): Pattern[] => {
      if (this.task.pools[pool] === 0) return [];
      const table = tables.get(without) ?? this.table(prices, without);
      tables.set(without, table);
      const pattern = { source, counts: table.counts(this.grid.cells(length)) };
      return this.gainOf(pattern, prices) > 1e-7 ? [pattern] : [];
    });
  }

  /** What a pattern is worth at these prices beyond what it costs. */
  private gainOf(pattern: Pattern, prices: Float64Array): number {
    const { cost, rows, counts } = this.columnOf(pattern);
    return rows.reduce((sum, row, k) => sum + pick(counts, k) * (prices[row] ?? 0), -cost);
  }

  /** The patterns that come nearest to being worth taking up, at most so many of them. */
  nearest(most: number): Pattern[] {
    const prices = this.master.prices();
    return this.patterns
      .map((pattern, i) => ({
        pattern,
        reduced: this.master.columns.reducedCost(this.firstPattern + i, prices),
        i,
      }))
      .sort((a, b) => a.reduced - b.reduced || a.i - b.i)
      .slice(0, most)
      .map(({ pattern }) => pattern);
  }

  private table(prices: Float64Array, without?: ReadonlySet<number>): Knapsack {
    const choices = this.task.classes.map(({ length, demand }, i) => ({
      size: this.grid.roomy(length),
      value: without?.has(i) === true ? 0 : (prices[i] ?? 0),
      copies: demand,
    }));
    return new Knapsack(choices, this.grid.cells(this.longest), this.steps);
  }

  /**
   * A lower bound of the cost from any prices of the classes: what the pieces are worth, less what the put-ups of
   * limited supply gain by it. Computed in whole numbers, so that no rounding can make it too high (weak duality
   * of linear programming; the prices need not be good ones).
   */
  safeBound(prices: ArrayLike<number>): number {
    const { classes, sources, pools, missing } = this.task;
    const cap = missing.supply === Infinity ? missing.cost * scale : Infinity;
    const whole = classes.map((_, i) => Math.min(cap, Math.floor(Math.max(0, prices[i] ?? 0) * scale)));
    const choices = classes.map(({ length, demand }, i) => ({
      size: this.exact.tight(length),
      value: pick(whole, i),
      copies: demand,
    }));
    const { best } = new Knapsack(choices, this.exact.cells(this.longest), this.steps);
    const worth = (source: Source): number => best[this.exact.cells(source.length)] ?? 0;
    // Where any number may be taken, no pattern may be worth more than it costs: shrink all prices until none is.
    // Where the supply is limited this may pay too.
    const shrink = (which: (source: Source) => boolean): number =>
      sources.filter(which).reduce((least, source) => {
        const cost = source.cost * scale;
        return worth(source) <= cost ? least : Math.min(least, cost / worth(source));
      }, 1);
    const bounds = [
      shrink((s) => pools[s.pool] === Infinity),
      shrink((s) => pools[s.pool] === Infinity || s.cost > 0),
    ];
    return Math.max(0, ...bounds.map((factor) => this.boundAt({ whole, factor, worth })));
  }

  private boundAt({ whole, factor, worth }: Priced): number {
    const { classes, sources, pools, missing } = this.task;
    const gain = (value: number, cost: number): number =>
      Math.max(0, (factor === 1 ? value : Math.ceil(value * factor) + 1) - cost * scale);
    // One more put-up of a pool may always be the one that gains most.
    const gains = pools.reduce((sum, supply, pool) => {
      if (supply === Infinity) return sum;
      const own = sources.filter((source) => source.pool === pool);
      return sum + supply * Math.max(0, ...own.map((source) => gain(worth(source), source.cost)));
    }, 0);
    const lost =
      missing.supply === Infinity
        ? 0
        : missing.supply * Math.max(0, ...whole.map((value) => gain(value, missing.cost)));
    const total = classes.reduce(
      (sum, { demand }, i) => sum + demand * Math.floor(pick(whole, i) * factor),
      0,
    );
    return Math.ceil((total - gains - lost) / scale);
  }
}

export interface Hints {
  /** Cost of a plan that was found. */
  readonly enough: number;
  /** Patterns of that plan. */
  readonly known: readonly Pattern[];
}

/**
 * The lower bound in whole units of cost that taking put-ups in parts can give, within the steps allowed; it stops
 * early at `enough`, since a bound that meets a value found cannot rise. Gilmore & Gomory 1961, with a bound for
 * every set of prices after Farley 1990.
 */
export function relaxedBound(task: Relaxed, { enough, known }: Hints, steps: Steps): number {
  if (task.classes.length === 0) return 0;
  const relaxation = new Relaxation(task, steps);
  for (const pattern of known) relaxation.add(pattern);
  const longest = Math.max(
    1,
    ...task.sources.filter(({ pool }) => task.pools[pool] !== 0).map(({ length }) => length),
  );
  const dearest = Math.max(task.missing.cost, ...task.sources.map(({ cost }) => cost));
  let best = relaxation.safeBound(task.classes.map(({ length }) => (dearest * length) / longest));
  for (let round = 1; best < enough && !steps.spent; round++) {
    const { improved, prices } = relaxation.round();
    if (improved && round % 10 !== 0) continue;
    best = Math.max(best, relaxation.safeBound(prices));
    if (best >= Math.ceil(relaxation.value - 1e-6)) break;
    if (!improved && !relaxation.refine()) break;
  }
  return best;
}
