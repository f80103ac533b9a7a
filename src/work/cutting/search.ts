/** Finds a layout within limits, spool by spool, or proves there is none. */
import { pick, upTo } from '../../units/pick.ts';
import { groupsOf, stocksOf, type Filling, type Group, type Stock } from './alike.ts';
import { wasteOf, type Cost, type Layout } from './layout.ts';
import type { Material } from './material.ts';

/** Fillings tried per spool in the first round. */
const fewFillings = 200;

export type Found = Layout | 'none' | 'spent';

export class Search {
  protected readonly material: Material;
  private readonly groups: readonly Group[];
  private readonly stocks: readonly Stock[];
  protected limits: Cost = { short: 0, bought: 0, opened: 0, waste: 0 };
  protected steps = 0;
  /** Pieces per group to cut. */
  private open: number[] = [];
  /** Unused spools per stock. */
  private stockLeft: number[] = [];
  /** -1 for none yet. */
  private lotOf: number[] = [];
  private cut: Filling[] = [];
  private now = { short: 0, bought: 0, opened: 0, waste: 0 };
  /** Whether nothing was skipped: only then failure is proof. */
  private whole = true;
  /** Turns left: the second fullest filling costs one, the third two. */
  private turns = 0;
  private many = 0;
  /** Least waste of states that led nowhere. */
  private readonly dead = new Map<string, number>();

  constructor(material: Material, fills: readonly number[]) {
    this.material = material;
    this.groups = groupsOf(material);
    this.stocks = stocksOf(material, fills);
  }

  /** Whether cord lacks for any layout. */
  hopeless(limits: Cost): boolean {
    this.limits = limits;
    this.begin();
    return this.lack() === 'hopeless';
  }

  /** A layout within `limits`; `spent` when the steps run out. */
  within(limits: Cost, steps: number, most = Infinity): Found {
    this.limits = limits;
    this.steps = steps;
    // From the fullest fillings only to all of them: this leaves a bad start early.
    for (const turns of [0, 1, 2, 4, 8, 16, Infinity].filter((each) => each <= most)) {
      this.begin();
      this.turns = turns;
      this.many = fewFillings * (turns + 1);
      if (this.next()) return this.layout();
      if (this.whole) return 'none';
    }
    return 'spent';
  }

  private begin(): void {
    this.open = this.groups.map(({ pieces }) => pieces.length);
    this.stockLeft = this.stocks.map(({ kinds }) => kinds.length);
    this.lotOf = this.material.batches.map(() => -1);
    this.cut = [];
    this.now = { short: 0, bought: 0, opened: 0, waste: 0 };
    this.whole = true;
    this.dead.clear();
  }

  get left(): number {
    return Math.max(0, this.steps);
  }

  /** Whether waste matters; if not, fuller is never worse. */
  private get counts(): boolean {
    return this.limits.waste < Infinity;
  }

  /** Goes on with the longest open piece. */
  private next(): boolean {
    if ((this.steps -= 20 + this.groups.length) <= 0) {
      this.whole = false;
      return false;
    }
    const leader = this.open.findIndex((count) => count > 0);
    if (leader < 0) return true;
    const lack = this.lack();
    if (lack === 'hopeless') return false;
    const { now, turns } = this;
    const key = [this.open, this.stockLeft, this.lotOf, now.short, turns].join(' ');
    const before = this.dead.get(key);
    if (before !== undefined && before <= now.waste) return false;
    const found =
      lack === 'some' ? this.leave(leader) || this.place(leader) : this.place(leader) || this.leave(leader);
    if (!found && this.steps > 0) this.dead.set(key, now.waste);
    return found;
  }

  /** Spools we may still open. */
  private more(): Record<Stock['origin'], number> {
    const { limits, now } = this;
    return { remnant: Infinity, shelf: limits.opened - now.opened, bought: limits.bought - now.bought };
  }

  /** How many open pieces lack cord; hopeless if more than may. */
  private lack(): 'none' | 'some' | 'hopeless' {
    const { limits, now } = this;
    const more = this.more();
    let need = 0;
    this.open.forEach((count, g) => (need += count * pick(this.groups, g).length));
    this.stocks.forEach(({ origin, fill }, s) => {
      const count = Math.min(more[origin], pick(this.stockLeft, s));
      more[origin] -= count;
      need -= count * fill;
    });
    if (need <= 0) return 'none';
    let may = limits.short - now.short;
    for (let g = 0; g < this.open.length && may > 0 && need > 0; g++) {
      const count = Math.min(may, pick(this.open, g));
      may -= count;
      need -= count * pick(this.groups, g).length;
    }
    return need <= 0 ? 'some' : 'hopeless';
  }

  /** Leaves the piece's order uncut. */
  private leave(leader: number): boolean {
    const { batch } = pick(this.groups, leader);
    if (batch >= 0 && pick(this.lotOf, batch) >= 0) return false;
    const gone =
      batch < 0
        ? [[leader, 1] as const]
        : this.groups.flatMap((group, g) =>
            group.batch === batch ? [[g, group.pieces.length] as const] : [],
          );
    const count = gone.reduce((sum, [, each]) => sum + each, 0);
    if (this.now.short + count > this.limits.short) return false;
    for (const [g, each] of gone) this.open[g] = pick(this.open, g) - each;
    this.now.short += count;
    if (this.next()) return true;
    this.now.short -= count;
    for (const [g, each] of gone) this.open[g] = pick(this.open, g) + each;
    return false;
  }

  /** Tries each spool for the piece, fullest filling first. */
  private place(leader: number): boolean {
    const fillings = upTo(this.stocks.length).flatMap((stock) => this.fillings(leader, stock));
    fillings.sort((a, b) => this.waste(a) - this.waste(b) || this.lost(a) - this.lost(b));
    if (fillings.length > this.turns + 1) this.whole = false;
    return fillings.slice(0, this.turns + 1).some((filling, i) => {
      const { turns } = this;
      this.turns -= i;
      const done = this.cutFrom(filling);
      this.turns = turns;
      return done;
    });
  }

  /** Less than the best filling, by length. */
  private lost({ stock, free }: Filling): number {
    const { length, fill } = pick(this.stocks, stock);
    return free - length + fill;
  }

  private waste({ free }: Filling): number {
    return this.counts ? wasteOf(free, this.material.usable) : 0;
  }

  private cutFrom(filling: Filling): boolean {
    const { stock, counts } = filling;
    const { origin, lot } = pick(this.stocks, stock);
    const waste = this.waste(filling);
    if (this.now.waste + waste > this.limits.waste) return false;
    const bound: number[] = [];
    for (const [g, count] of counts) {
      this.open[g] = pick(this.open, g) - count;
      const { batch } = pick(this.groups, g);
      if (batch < 0 || pick(this.lotOf, batch) >= 0) continue;
      this.lotOf[batch] = lot;
      bound.push(batch);
    }
    this.stockLeft[stock] = pick(this.stockLeft, stock) - 1;
    const before = this.now;
    const bought = before.bought + Number(origin === 'bought');
    const opened = before.opened + Number(origin === 'shelf');
    this.now = { ...before, bought, opened, waste: before.waste + waste };
    this.cut.push(filling);
    if (this.next()) return true;
    this.cut.pop();
    this.now = before;
    this.stockLeft[stock] = pick(this.stockLeft, stock) + 1;
    for (const [g, count] of counts) this.open[g] = pick(this.open, g) + count;
    for (const batch of bound) this.lotOf[batch] = -1;
    return false;
  }

  /** Ways to cut a spool, with a leader's piece. */
  private fillings(leader: number, stock: number): Filling[] {
    const { origin, length, lot, fill } = pick(this.stocks, stock);
    const none = pick(this.stockLeft, stock) === 0 || this.more()[origin] <= 0;
    const fits = this.groups.map(({ batch }, g) => {
      const bound = batch < 0 ? -1 : pick(this.lotOf, batch);
      return pick(this.open, g) > 0 && (bound < 0 || bound === lot);
    });
    if (none || !pick(fits, leader) || pick(this.groups, leader).length > length) return [];
    const found: Filling[] = [];
    let perfect = 0;
    const chosen = this.groups.map(() => 0);
    const from = (g: number, free: number): void => {
      if (this.steps-- <= 0 || found.length >= this.many || perfect > this.turns) {
        this.whole = false;
        return;
      }
      const group = this.groups[g];
      if (group === undefined) {
        if (free === length - fill) perfect++;
        this.steps -= this.groups.length;
        if (this.counts || !this.dominated(chosen, free, { fits, leader }))
          found.push({
            stock,
            free,
            counts: chosen.flatMap((count, i) => (count > 0 ? [[i, count] as const] : [])),
          });
        return;
      }
      if (free < pick(this.groups, this.groups.length - 1).length) {
        from(this.groups.length, free);
        return;
      }
      const most = fits[g] === true ? Math.min(pick(this.open, g), Math.floor(free / group.length)) : 0;
      for (let count = most; count >= (g === leader ? 1 : 0); count--) {
        chosen[g] = count;
        from(g + 1, free - count * group.length);
      }
      chosen[g] = 0;
    };
    from(leader, length);
    return found;
  }

  /** Whether one more single-piece order fits, or a longer one for a shorter. */
  private dominated(
    chosen: readonly number[],
    free: number,
    { fits, leader }: { fits: readonly boolean[]; leader: number },
  ): boolean {
    let longer = Infinity;
    for (let g = leader; g < this.groups.length; g++) {
      const { length, batch } = pick(this.groups, g);
      if (batch >= 0 || fits[g] !== true) continue;
      const count = pick(chosen, g);
      if (count > 0 && longer - length <= free && g !== leader) return true;
      if (count === pick(this.open, g)) continue;
      if (length <= free) return true;
      longer = length;
    }
    return false;
  }

  private layout(): Layout {
    const rest = this.groups.map(({ pieces }) => [...pieces]);
    const kinds = this.stocks.map((stock) => [...stock.kinds]);
    const spools = this.cut.map(({ stock, counts, free }) => ({
      kind: pick(kinds, stock).shift() ?? 0,
      pieces: counts.flatMap(([g, count]) => pick(rest, g).splice(0, count)),
      free,
    }));
    const short = [...new Set(rest.flat().map((piece) => pick(this.material.batchOf, piece)))];
    return { spools, short: short.sort((a, b) => a - b) };
  }
}
