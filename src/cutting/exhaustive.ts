/** Every layout worth trying, one after the other: proves small cases best, waste and dye lots included. */
import { pick, upTo } from '../units/pick.ts';
import { compareCosts, costOf, type Cost, type Layout, type Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';
import type { Steps } from './steps.ts';

/** More pieces than this are not tried. */
export const fewPieces = 30;

interface Turn {
  readonly piece: number;
  readonly length: number;
  readonly batch: number;
  readonly first: boolean;
  /** Total length of this piece and all after it. */
  readonly rest: number;
}

/** Depth-first search with bounds by total length. */
class Search {
  best: Layout;
  complete = true;
  private bestCost: Cost;
  private readonly material: Material;
  private readonly steps: Steps;
  private readonly turns: readonly Turn[];
  private readonly left: number[];
  private readonly lots: number[];
  readonly spools: Spool[] = [];
  readonly short: number[] = [];

  constructor(material: Material, start: Layout, steps: Steps) {
    this.material = material;
    this.steps = steps;
    this.best = start;
    this.bestCost = costOf(material, start);
    this.left = material.kinds.map(({ count }) => Math.min(count, material.pieces.length));
    this.lots = material.batches.map(() => -1);
    this.turns = turnsOf(material);
  }

  run(): void {
    this.at(0);
  }

  private at(i: number): void {
    if (this.steps.spent) this.complete = false;
    if (!this.complete || this.hopeless(i)) return;
    this.steps.take(20 + 10 * this.spools.length);
    const turn = this.turns[i];
    if (turn === undefined) {
      this.record();
      return;
    }
    const { batch, first } = turn;
    const lots = first ? upTo(this.material.lots) : [pick(this.lots, batch)];
    for (const lot of lots) {
      this.lots[batch] = lot;
      this.into(lot, turn, i);
    }
    if (!first) return;
    this.short.push(batch);
    this.at(i + pick(this.material.batches, batch).pieces.length);
    this.short.pop();
  }

  /** Lays the piece on every put-up of the lot that makes a difference. */
  private into(lot: number, { length, piece }: Turn, i: number): void {
    const { kinds } = this.material;
    const begun = this.spools
      .filter(({ kind, free }) => pick(kinds, kind).lotNumber === lot && free >= length)
      .sort((a, b) => a.free - b.free)
      .filter(({ free }, k, all) => k === 0 || free !== all[k - 1]?.free);
    for (const spool of begun) this.on(spool, { length, piece }, i);
    const seen = new Set<string>();
    kinds.forEach((kind, k) => {
      const alike = `${kind.origin} ${kind.length}`;
      if (kind.lotNumber !== lot || kind.length < length || pick(this.left, k) === 0 || seen.has(alike))
        return;
      seen.add(alike);
      this.left[k] = pick(this.left, k) - 1;
      const spool = { kind: k, pieces: [], free: kind.length };
      this.spools.push(spool);
      this.on(spool, { length, piece }, i);
      this.spools.pop();
      this.left[k] = pick(this.left, k) + 1;
    });
  }

  private on(spool: Spool, { length, piece }: { length: number; piece: number }, i: number): void {
    spool.pieces.push(piece);
    spool.free -= length;
    this.at(i + 1);
    spool.pieces.pop();
    spool.free += length;
  }

  private record(): void {
    const layout = { spools: this.spools, short: this.short };
    const cost = costOf(this.material, layout);
    if (compareCosts(cost, this.bestCost) >= 0) return;
    this.bestCost = cost;
    this.best = {
      spools: this.spools.map((spool) => ({ ...spool, pieces: [...spool.pieces] })),
      short: [...this.short],
    };
  }

  /** Whether nothing better than the best can come of what is laid so far. */
  private hopeless(i: number): boolean {
    const target = this.bestCost;
    const now = { ...costOf(this.material, this), waste: 0 };
    if (compareCosts(now, target) >= 0) return true;
    if (now.short < target.short) return false;
    // No piece more may be left short, so what lies ahead has to go somewhere.
    const need = (this.turns[i]?.rest ?? 0) - this.room('remnant');
    const { longest } = this;
    const bought = Math.max(0, Math.ceil((need - this.room('shelf')) / longest));
    const news = Math.max(0, Math.ceil(need / longest));
    if (now.bought + bought > target.bought) return true;
    const opened = Math.max(0, news - (target.bought - now.bought));
    return (
      now.bought + bought === target.bought &&
      compareCosts({ ...now, bought: target.bought, opened: now.opened + opened }, target) >= 0
    );
  }

  /** Length free on put-ups begun, and on all that are left of an origin. */
  private room(origin: 'remnant' | 'shelf'): number {
    const begun = origin === 'remnant' ? this.spools.reduce((sum, { free }) => sum + free, 0) : 0;
    return this.material.kinds.reduce(
      (sum, kind, k) => (kind.origin === origin ? sum + kind.length * pick(this.left, k) : sum),
      begun,
    );
  }

  private get longest(): number {
    return Math.max(
      1,
      ...this.material.kinds.map(({ origin, length }) => (origin === 'remnant' ? 1 : length)),
    );
  }
}

/** Pieces batch by batch, the batch with the most cord first. */
function turnsOf(material: Material): Turn[] {
  const totals = upTo(material.batches.length).map((batch) => totalOf(material, batch));
  const order = upTo(material.batches.length).sort((a, b) => pick(totals, b) - pick(totals, a) || a - b);
  let rest = totals.reduce((a, b) => a + b, 0);
  return order.flatMap((batch) =>
    pick(material.batches, batch).pieces.map((piece, i): Turn => {
      const { length } = pick(material.pieces, piece);
      rest -= length;
      return { piece, length, batch, first: i === 0, rest: rest + length };
    }),
  );
}

/** The best layout of a small material, and whether all were tried or ruled out within the steps. */
export function searchAll(
  material: Material,
  start: Layout,
  steps: Steps,
): { layout: Layout; complete: boolean } {
  const search = new Search(material, start, steps);
  search.run();
  return { layout: search.best, complete: search.complete };
}
