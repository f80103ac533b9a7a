/** A layout read off the relaxed problem: take what it uses whole, fix the pattern it uses most, solve the rest again. */
import { pick, upTo } from '../units/pick.ts';
import { refilled } from './insert.ts';
import type { Layout, Spool } from './layout.ts';
import type { Material } from './material.ts';
import { lay } from './pack.ts';
import { Relaxation, type Pattern, type Source } from './relaxed.ts';
import type { Steps } from './steps.ts';
import type { Origin } from './types.ts';

/** Pieces of one length; of one batch, where the batch could be torn between dye lots. */
interface Stack {
  readonly length: number;
  /** -1 where pieces of several batches may be mixed. */
  readonly batch: number;
  left: number[];
}

interface Dive {
  readonly material: Material;
  readonly stacks: readonly Stack[];
  readonly shelves: readonly Shelf[];
  readonly lotOf: Map<number, number>;
  readonly spools: Spool[];
}

/** Put-ups that may stand for each other: of one length and origin, and of one lot where that matters. */
interface Shelf {
  readonly origin: Origin;
  readonly length: number;
  /** -1 where lots do not matter. */
  readonly lot: number;
  /** Kinds with the number that is left of each. */
  readonly left: { readonly kind: number; count: number }[];
}

const countOf = ({ left }: Shelf): number => left.reduce((sum, { count }) => sum + count, 0);

function shelvesOf({ kinds }: Material, lotsMatter: boolean): Shelf[] {
  const shelves = new Map<string, Shelf>();
  kinds.forEach(({ origin, length, lotNumber, count }, kind) => {
    const lot = lotsMatter ? lotNumber : -1;
    const key = `${origin} ${length} ${lot}`;
    const shelf = shelves.get(key) ?? { origin, length, lot, left: [] };
    shelf.left.push({ kind, count });
    shelves.set(key, shelf);
  });
  return [...shelves.values()];
}

/** Stacks of pieces that are alike, longest first. */
function stacksOf({ pieces, batchOf, batches, lots }: Material): Stack[] {
  const stacks = new Map<string, Stack>();
  pieces.forEach(({ length }, piece) => {
    const own = batchOf[piece] ?? 0;
    const batch = lots > 1 && pick(batches, own).pieces.length > 1 ? own : -1;
    const key = `${length} ${batch}`;
    const stack = stacks.get(key) ?? { length, batch, left: [] };
    stack.left.push(piece);
    stacks.set(key, stack);
  });
  return [...stacks.values()];
}

/** Layout by diving; undefined when the steps do not reach. */
export function diveLayout(material: Material, steps: Steps): Layout | undefined {
  const stacks = stacksOf(material);
  const dive: Dive = {
    material,
    stacks,
    shelves: shelvesOf(
      material,
      stacks.some(({ batch }) => batch >= 0),
    ),
    lotOf: new Map(),
    spools: [],
  };
  let known: Pattern[] = [];
  while (dive.stacks.some(({ left }) => left.length > 0)) {
    if (steps.spent) return undefined;
    const relaxation = relax(dive, known, steps);
    const fixed = chosen(relaxation);
    if (fixed.length === 0) break;
    if (!fixed.reduce((any, entry) => fix(dive, entry) || any, false)) break;
    known = relaxation.nearest(3 * dive.stacks.length).map((pattern) => trimmed(dive, pattern));
  }
  return finish(dive);
}

/** For each lot the stacks that belong to another one; the same empty set where there are none, so that work is shared. */
function strangersOf({ material, stacks, lotOf }: Dive): (lot: number) => ReadonlySet<number> {
  const none = new Set<number>();
  const sets = upTo(material.lots).map((lot) => {
    const strangers = upTo(stacks.length).filter((i) => {
      const { batch, left } = pick(stacks, i);
      return left.length > 0 && (lotOf.get(batch) ?? lot) !== lot;
    });
    return strangers.length === 0 ? none : new Set(strangers);
  });
  return (lot) => (lot < 0 ? none : pick(sets, lot));
}

/** Solves what is left with whole put-ups taken in parts. */
function relax(dive: Dive, known: readonly Pattern[], steps: Steps): Relaxation {
  const { material, stacks, shelves } = dive;
  const whole = material.kinds.filter(({ origin }) => origin === 'shelf');
  const bought =
    1 +
    Math.min(
      material.pieces.length,
      whole.reduce((sum, { count }) => sum + count, 0),
    );
  const costs = { remnant: 0, shelf: 1, bought };
  const strangers = strangersOf(dive);
  const sources = shelves.map((shelf, pool): Source => ({
    length: shelf.length,
    cost: costs[shelf.origin],
    pool,
    without: strangers(shelf.lot),
  }));
  const classes = stacks.map(({ length, left }) => ({ length, demand: left.length }));
  const missing = { cost: bought * (material.pieces.length + 1), supply: Infinity };
  const relaxation = new Relaxation({ classes, sources, pools: shelves.map(countOf), missing }, steps);
  for (const pattern of known) {
    const { without } = pick(sources, pattern.source);
    const torn = pattern.counts.some((count, i) => count > 0 && without?.has(i) === true);
    if (!torn && pattern.counts.some((count) => count > 0)) relaxation.add(pattern);
  }
  let stalled = 0;
  for (let before = Infinity; stalled < 4 && !steps.spent; before = relaxation.value) {
    if (!relaxation.round().improved) break;
    stalled = before - relaxation.value < 1e-4 ? stalled + 1 : 0;
  }
  return relaxation;
}

interface Fixed {
  readonly pattern: Pattern;
  readonly times: number;
}

/** Every pattern that is used (nearly) whole, or the few used most. */
function chosen(relaxation: Relaxation): Fixed[] {
  const used = relaxation.amounts.map(({ pattern, amount }) => ({
    pattern: pick(relaxation.patterns, pattern),
    amount,
  }));
  const whole = used.filter(({ amount }) => amount > 0.7);
  if (whole.length > 0) {
    return whole.map(({ pattern, amount }) => ({ pattern, times: Math.max(1, Math.floor(amount + 0.3)) }));
  }
  const many = Math.ceil(used.length / 12);
  return used
    .map(({ pattern, amount }, i) => ({ pattern, amount, i }))
    .sort((a, b) => b.amount - a.amount || a.i - b.i)
    .slice(0, many)
    .map(({ pattern }) => ({ pattern, times: 1 }));
}

const trimmed = ({ stacks }: Dive, { source, counts }: Pattern): Pattern => ({
  source,
  counts: counts.map((count, i) => Math.min(count, pick(stacks, i).left.length)),
});

/** Cuts put-ups after a pattern, as far as pieces and put-ups last; false when nothing was cut. */
function fix(dive: Dive, { pattern, times }: Fixed): boolean {
  const { material, stacks, shelves, lotOf } = dive;
  const shelf = pick(shelves, pattern.source);
  for (let i = 0; i < times; i++) {
    const next = shelf.left.find(({ count }) => count > 0);
    if (next === undefined) return i > 0;
    const spool: Spool = { kind: next.kind, pieces: [], free: shelf.length };
    trimmed(dive, pattern).counts.forEach((count, k) => {
      const stack = pick(stacks, k);
      const torn = stack.batch >= 0 && (lotOf.get(stack.batch) ?? shelf.lot) !== shelf.lot;
      if (count === 0 || torn) return;
      if (stack.batch >= 0) lotOf.set(stack.batch, shelf.lot);
      for (const piece of stack.left.splice(0, count)) lay(material, spool, piece);
    });
    if (spool.pieces.length === 0) return i > 0;
    next.count--;
    dive.spools.push(spool);
  }
  return true;
}

/** The layout as it stands, batches that are not complete laid in again where they still fit. */
function finish({ material, stacks, spools }: Dive): Layout {
  const open = new Set(stacks.flatMap(({ left }) => left.map((piece) => material.batchOf[piece] ?? 0)));
  return refilled(material, { spools, short: [...open] });
}
