/** A layout read off the relaxed problem: take what it uses whole, fix the pattern it uses most, solve the rest again. */
import { pick, upTo } from '../units/pick.ts';
import { insert } from './greedy.ts';
import type { Layout, Spool } from './layout.ts';
import type { Material } from './material.ts';
import { lay } from './pack.ts';
import { Relaxation, type Pattern, type Source } from './relaxed.ts';
import type { Steps } from './steps.ts';

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
  readonly left: number[];
  readonly lotOf: Map<number, number>;
  readonly spools: Spool[];
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
  const dive: Dive = {
    material,
    stacks: stacksOf(material),
    left: material.kinds.map(({ count }) => count),
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
    known = relaxation.patterns.map((pattern) => trimmed(dive, pattern));
  }
  return finish(dive);
}

/** Solves what is left with whole put-ups taken in parts. */
function relax(dive: Dive, known: readonly Pattern[], steps: Steps): Relaxation {
  const { material, stacks, left, lotOf } = dive;
  const shelf = material.kinds.filter(({ origin }) => origin === 'shelf');
  const bought = 1 + shelf.reduce((sum, { count }) => sum + count, 0);
  const costs = { remnant: 0, shelf: 1, bought };
  const strangers = upTo(material.lots).map(
    (lot) =>
      new Set(
        upTo(stacks.length).filter((i) => {
          const of = lotOf.get(pick(stacks, i).batch);
          return of !== undefined && of !== lot;
        }),
      ),
  );
  const sources = material.kinds.map(
    ({ length, origin, lotNumber }, kind): Source => ({
      length,
      cost: costs[origin],
      supply: pick(left, kind),
      without: pick(strangers, lotNumber),
    }),
  );
  const classes = stacks.map(({ length, left }) => ({ length, demand: left.length }));
  const missing = { cost: bought * (material.pieces.length + 1), supply: Infinity };
  const relaxation = new Relaxation({ classes, sources, missing }, steps);
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

/** Every pattern that is used (nearly) whole, or the one used most. */
function chosen(relaxation: Relaxation): Fixed[] {
  const used = relaxation.amounts.map(({ pattern, amount }) => ({
    pattern: pick(relaxation.patterns, pattern),
    amount,
  }));
  const whole = used.filter(({ amount }) => amount > 0.85);
  if (whole.length > 0) {
    return whole.map(({ pattern, amount }) => ({ pattern, times: Math.max(1, Math.floor(amount + 0.15)) }));
  }
  const most = used.reduce<(typeof used)[number] | undefined>(
    (best, entry) => (entry.amount > (best?.amount ?? 0) + 1e-9 ? entry : best),
    undefined,
  );
  return most === undefined ? [] : [{ pattern: most.pattern, times: 1 }];
}

const trimmed = ({ stacks }: Dive, { source, counts }: Pattern): Pattern => ({
  source,
  counts: counts.map((count, i) => Math.min(count, pick(stacks, i).left.length)),
});

/** Cuts put-ups after a pattern, as far as pieces and put-ups last; false when nothing was cut. */
function fix(dive: Dive, { pattern, times }: Fixed): boolean {
  const { material, stacks, left, lotOf } = dive;
  const { source } = pattern;
  const { lotNumber, length } = pick(material.kinds, source);
  let any = false;
  for (let i = 0; i < times && pick(left, source) > 0; i++) {
    const { counts } = trimmed(dive, pattern);
    const spool: Spool = { kind: source, pieces: [], free: length };
    counts.forEach((count, k) => {
      const stack = pick(stacks, k);
      const torn = stack.batch >= 0 && (lotOf.get(stack.batch) ?? lotNumber) !== lotNumber;
      if (count === 0 || torn) return;
      if (stack.batch >= 0) lotOf.set(stack.batch, lotNumber);
      for (const piece of stack.left.splice(0, count)) lay(material, spool, piece);
    });
    if (spool.pieces.length === 0) break;
    left[source] = pick(left, source) - 1;
    dive.spools.push(spool);
    any = true;
  }
  return any;
}

/** Takes batches that are not complete out again and lays them in where they still fit. */
function finish({ material, stacks, spools }: Dive): Layout {
  const open = new Set(stacks.flatMap(({ left }) => left.map((piece) => material.batchOf[piece] ?? 0)));
  for (const spool of spools) {
    spool.pieces = spool.pieces.filter((piece) => !open.has(material.batchOf[piece] ?? 0));
    spool.free =
      pick(material.kinds, spool.kind).length -
      spool.pieces.reduce((sum, piece) => sum + pick(material.pieces, piece).length, 0);
  }
  const kept = spools.filter(({ pieces }) => pieces.length > 0);
  return insert(material, { spools: kept, short: [] }, [...open].sort((a, b) => a - b));
}
