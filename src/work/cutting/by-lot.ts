/** Searches lot by lot for the orders cut from it: exact for few orders, some of several pieces. */
import { pick, upTo } from '../../units/pick.ts';
import type { Cost, Layout, Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';
import { Search, type Found } from './search.ts';

/** More orders have too many sets. */
const fewOrders = 16;

/** Fewest whole spools of a lot that hold some orders, and how to cut them. */
interface Packing {
  readonly count: number;
  readonly spools: readonly Spool[];
}

/** Orders are bits of a number: `open` ones come from this lot or those below it. */
interface Choice {
  readonly lot: number;
  readonly open: number;
  /** Whole spools we may still cut. */
  readonly left: { readonly shelf: number; readonly bought: number };
  readonly taken: number;
  /** Orders below this bit are taken or passed over. */
  readonly at: number;
}

export class ByLot {
  private readonly material: Material;
  private readonly fills: readonly number[];
  private readonly search: Search;
  /** Batches, longest piece first. */
  private readonly orders: readonly number[];
  private readonly packings = new Map<string, Packing | undefined>();
  private limits: Cost = { short: 0, bought: 0, opened: 0, waste: 0 };
  private steps = 0;
  private readonly dead = new Set<string>();
  /** Orders of each lot. */
  private readonly taken: number[] = [];

  constructor(material: Material, fills: readonly number[]) {
    this.material = material;
    this.fills = fills;
    this.search = new Search(material, fills);
    const totals = material.batches.map((_, batch) => totalOf(material, batch));
    this.orders = upTo(totals.length).sort((a, b) => pick(totals, b) - pick(totals, a) || a - b);
  }

  /** Steps left. */
  get left(): number {
    return Math.max(0, this.steps);
  }

  /** As `Search.within`. */
  within(limits: Cost, steps: number): Found {
    const { batches, pieces, lots } = this.material;
    const few = batches.length < pieces.length && batches.length <= fewOrders && limits.waste === Infinity;
    const found = this.search.within(limits, steps, few);
    this.steps = this.search.left;
    if (found !== 'spent' || !few) return found;
    this.limits = limits;
    this.dead.clear();
    const left = { shelf: limits.opened, bought: limits.bought };
    if (this.from({ lot: lots - 1, open: 2 ** batches.length - 1, left, taken: 0, at: 0 }))
      return this.layout();
    return this.steps > 0 ? 'none' : 'spent';
  }

  private from(choice: Choice): boolean {
    const { lot, open, left } = choice;
    if (lot < 0) return this.piecesOf(open).length <= this.limits.short;
    const key = `${lot} ${open} ${left.shelf}`;
    if (this.dead.has(key)) return false;
    const found = this.choose(choice);
    if (!found) this.dead.add(key);
    return found;
  }

  /** Takes or passes over each order. */
  private choose(choice: Choice): boolean {
    const { lot, open, left, taken, at } = choice;
    if ((this.steps -= 10) <= 0) return false;
    const { kinds } = this.material;
    const from = kinds.some((kind) => kind.lotNumber === lot && kind.origin === 'bought')
      ? 'bought'
      : 'shelf';
    const used = this.packed(lot, taken)?.count ?? 0;
    const rest = { ...left, [from]: left[from] - used };
    const passed = open & ~taken & (2 ** at - 1);
    if (this.need(passed) > this.room(lot, rest)) return false;
    if (at === this.orders.length) {
      if (this.dominated(choice, left[from] === Infinity ? Infinity : used)) return false;
      this.taken[lot] = taken;
      return this.from({ lot: lot - 1, open: passed, left: rest, taken: 0, at: 0 });
    }
    const more = taken | (open & (1 << at));
    return (
      (more !== taken &&
        this.fits(lot, more, left[from]) &&
        this.choose({ ...choice, taken: more, at: at + 1 })) ||
      this.choose({ ...choice, at: at + 1 })
    );
  }

  /** Whether no more spools hold another order, or a longer one for a shorter: then that is never worse. */
  private dominated({ lot, open, taken }: Choice, most: number): boolean {
    return this.bits(open & ~taken).some(
      (more) =>
        this.fits(lot, taken | more, most) ||
        this.bits(taken).some(
          (less) => this.longer(more, less) && this.fits(lot, (taken | more) ^ less, most),
        ),
    );
  }

  /** Whether the pieces of one order fit in place of another's. */
  private longer(more: number, less: number): boolean {
    const pieces = this.piecesOf(more);
    return this.piecesOf(less).every((piece, i) => piece > (pieces[i] ?? Infinity));
  }

  private bits(set: number): number[] {
    return this.orders.map((_, i) => set & (1 << i)).filter((bit) => bit !== 0);
  }

  /** Longest first. */
  private piecesOf(set: number): number[] {
    const { batches } = this.material;
    return this.orders
      .flatMap((batch, i) => ((set & (1 << i)) === 0 ? [] : pick(batches, batch).pieces))
      .sort((a, b) => a - b);
  }

  /** Cord that lower lots must have for some orders. */
  private need(set: number): number {
    const { pieces } = this.material;
    return this.piecesOf(set)
      .slice(this.limits.short)
      .reduce((sum, piece) => sum + pick(pieces, piece).length, 0);
  }

  /** Most cord of the lots below one. */
  private room(lot: number, left: Choice['left']): number {
    const more = { remnant: Infinity, ...left };
    return this.material.kinds.reduce((sum, { lotNumber, origin, count }, kind) => {
      if (lotNumber >= lot) return sum;
      const own = Math.min(count, more[origin], this.material.pieces.length);
      more[origin] -= own;
      return sum + own * pick(this.fills, kind);
    }, 0);
  }

  private fits(lot: number, set: number, most: number): boolean {
    return (this.packed(lot, set)?.count ?? Infinity) <= Math.min(most, this.material.pieces.length);
  }

  private packed(lot: number, set: number): Packing | undefined {
    const key = `${lot} ${set}`;
    this.steps -= 5;
    if (this.packings.has(key)) return this.packings.get(key);
    const packing = this.pack(lot, this.piecesOf(set));
    if (this.steps > 0) this.packings.set(key, packing);
    return packing;
  }

  private pack(lot: number, own: readonly number[]): Packing | undefined {
    const { kinds, pieces } = this.material;
    const there = upTo(kinds.length).filter((kind) => pick(kinds, kind).lotNumber === lot);
    const part: Material = {
      ...this.material,
      pieces: own.map((piece) => pick(pieces, piece)),
      batchOf: upTo(own.length),
      batches: upTo(own.length).map((i) => ({ order: `${i}`, pieces: [i] })),
      kinds: there.map((kind) => pick(kinds, kind)),
    };
    const search = new Search(
      part,
      there.map((kind) => pick(this.fills, kind)),
    );
    const whole = part.kinds.reduce((sum, { origin, count }) => sum + (origin === 'remnant' ? 0 : count), 0);
    for (let count = 0; count <= Math.min(whole, own.length); count++) {
      const found = search.within({ short: 0, bought: count, opened: count, waste: Infinity }, this.steps);
      this.steps = search.left - 100;
      if (typeof found === 'string') continue;
      const spools = found.spools.map((spool) => ({
        ...spool,
        kind: pick(there, spool.kind),
        pieces: spool.pieces.map((piece) => pick(own, piece)),
      }));
      return { count, spools };
    }
    return undefined;
  }

  private layout(): Layout {
    const cut = this.taken.reduce((all, set) => all | set, 0);
    return {
      spools: this.taken.flatMap((set, lot) => this.packed(lot, set)?.spools ?? []),
      short: this.orders.filter((_, i) => (cut & (1 << i)) === 0).sort((a, b) => a - b),
    };
  }
}
