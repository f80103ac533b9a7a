/** Searches lot by lot which orders it gets: proves plans of few orders. */
import { pick, upTo } from '../../units/pick.ts';
import type { Cost, Layout, Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';
import { Search, type Found } from './search.ts';

/** More orders have too many sets, more pieces too many fillings. */
const few = { orders: 14, pieces: 40 };

/** Orders on the fewest whole spools of a lot. */
interface Packing {
  readonly whole: number;
  readonly spools: readonly Spool[];
}

/** Sets of orders are numbers, one bit an order. */
interface Choice {
  readonly lot: number;
  /** Orders to take or pass over. */
  readonly open: number;
  readonly taken: number;
  readonly passed: number;
  /** Whole spools we may still cut. */
  readonly left: { readonly shelf: number; readonly bought: number };
}

/** Searches lot by lot where orders of several pieces are few. */
export class ByLot extends Search {
  /** Batches, most cord first. */
  private readonly orders: readonly number[];
  private readonly packings = new Map<string, Packing | undefined>();

  constructor(material: Material, fills: readonly number[]) {
    super(material, fills);
    const totals = material.batches.map((_, batch) => totalOf(material, batch));
    this.orders = upTo(totals.length).sort((a, b) => pick(totals, b) - pick(totals, a) || a - b);
  }

  override within(limits: Cost, steps: number): Found {
    const { batches, pieces, lots } = this.material;
    const small = batches.length <= few.orders && pieces.length <= few.pieces;
    const splits = small && batches.length < pieces.length && limits.waste === Infinity;
    const found = super.within(limits, steps, splits ? 2 : Infinity);
    if (found !== 'spent' || !splits) return found;
    const left = { shelf: limits.opened, bought: limits.bought };
    const all = 2 ** batches.length - 1;
    const layout = this.choose({ lot: lots - 1, open: all, taken: 0, passed: 0, left });
    return layout ?? (this.steps > 0 ? 'none' : 'spent');
  }

  /** Takes the next order or passes it over; passed by all it stays short. */
  private choose(choice: Choice): Layout | undefined {
    const { lot, open, taken, passed, left } = choice;
    if (lot < 0) return this.onlyShort(open);
    const packing = this.packed(lot, taken);
    if (packing === undefined || (this.steps -= 20) <= 0) return undefined;
    const rest = { ...left, [this.originOf(lot)]: left[this.originOf(lot)] - packing.whole };
    if (rest.shelf < 0 || rest.bought < 0 || this.need(passed) > this.room(lot, rest)) return undefined;
    if (open === 0) {
      const below = this.choose({ lot: lot - 1, open: passed, taken: 0, passed: 0, left: rest });
      return below && { ...below, spools: [...packing.spools, ...below.spools] };
    }
    const next = open & -open;
    const others = { ...choice, open: open ^ next };
    return (
      this.choose({ ...others, taken: taken | next }) ?? this.choose({ ...others, passed: passed | next })
    );
  }

  private onlyShort(set: number): Layout | undefined {
    if (this.piecesOf(set).length > this.limits.short) return undefined;
    return { spools: [], short: this.batchesOf(set).sort((a, b) => a - b) };
  }

  private originOf(lot: number): 'bought' | 'shelf' {
    const { kinds } = this.material;
    return kinds.some((kind) => kind.lotNumber === lot && kind.origin === 'bought') ? 'bought' : 'shelf';
  }

  private batchesOf(set: number): number[] {
    return this.orders.filter((_, i) => (set & (1 << i)) !== 0);
  }

  /** Longest first. */
  private piecesOf(set: number): number[] {
    const { batches } = this.material;
    return this.batchesOf(set)
      .flatMap((batch) => pick(batches, batch).pieces)
      .sort((a, b) => a - b);
  }

  /** Cord for orders, with the longest pieces short. */
  private need(set: number): number {
    const cut = this.piecesOf(set).slice(this.limits.short);
    return cut.reduce((sum, piece) => sum + pick(this.material.pieces, piece).length, 0);
  }

  /** Most cord of all lots below one. */
  private room(lot: number, left: Choice['left']): number {
    const { kinds, pieces } = this.material;
    const more = { remnant: Infinity, ...left };
    return kinds.reduce((sum, { lotNumber, origin, count, length }) => {
      if (lotNumber >= lot) return sum;
      const own = Math.min(count, more[origin], pieces.length);
      more[origin] -= own;
      return sum + own * length;
    }, 0);
  }

  private packed(lot: number, set: number): Packing | undefined {
    const key = `${lot} ${set}`;
    if (this.packings.has(key)) return this.packings.get(key);
    const packing = this.pack(lot, this.piecesOf(set));
    if (this.steps > 0) this.packings.set(key, packing);
    return packing;
  }

  /** In one lot every piece can be an order of its own. */
  private pack(lot: number, own: readonly number[]): Packing | undefined {
    const { kinds, pieces } = this.material;
    const there = upTo(kinds.length).filter((kind) => pick(kinds, kind).lotNumber === lot);
    const part = {
      ...this.material,
      pieces: own.map((piece) => pick(pieces, piece)),
      batchOf: upTo(own.length),
      batches: upTo(own.length).map((i) => ({ order: `${i}`, pieces: [i] })),
      kinds: there.map((kind) => pick(kinds, kind)),
    };
    const lengths = part.kinds.map(({ length }) => length);
    const search = new Search(part, lengths);
    const most = part.kinds.reduce((sum, { origin, count }) => sum + (origin === 'remnant' ? 0 : count), 0);
    for (let whole = 0; whole <= Math.min(most, own.length); whole++) {
      const found = search.within({ short: 0, bought: whole, opened: whole, waste: Infinity }, this.steps);
      this.steps = search.left - 100;
      if (typeof found === 'string') continue;
      const spools = found.spools.map((spool) => ({
        ...spool,
        kind: pick(there, spool.kind),
        pieces: spool.pieces.map((piece) => pick(own, piece)),
      }));
      return { whole, spools };
    }
    return undefined;
  }
}
