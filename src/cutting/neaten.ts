/** Less waste at the same number of put-ups: pieces move or change places within a dye lot, leftovers go to a better fitting put-up. */
import { pick, upTo } from '../units/pick.ts';
import { compareCosts, costOf, wasteOf, type Layout, type Spool } from './layout.ts';
import type { Material } from './material.ts';
import type { Steps } from './steps.ts';

/** A layout that costs the same or less, improved until nothing more helps or the steps are spent. */
export function neaten(material: Material, layout: Layout, steps: Steps): Layout {
  const spools = layout.spools.map((spool) => ({ ...spool, pieces: [...spool.pieces] }));
  for (let better = true; better && !steps.spent;) {
    better = anotherPutUp(material, spools);
    for (const a of spools) {
      for (const b of spools) {
        if (a !== b && lotOf(material, a) === lotOf(material, b)) {
          better = shift(material, a, b) || better;
          steps.take(1 + a.pieces.length * (b.pieces.length + 1));
        }
      }
    }
  }
  return { spools: spools.filter(({ pieces }) => pieces.length > 0), short: layout.short };
}

const lotOf = (material: Material, { kind }: Spool): number => pick(material.kinds, kind).lotNumber;

/** Waste of a put-up; one that nothing is cut from wastes nothing. */
function waste(material: Material, { kind }: Spool, free: number): number {
  return free === pick(material.kinds, kind).length ? 0 : wasteOf(free, material.usable);
}

/** Moves one piece from `a` to `b`, or lets it change places with one there, where that saves most. */
function shift(material: Material, a: Spool, b: Spool): boolean {
  const before = waste(material, a, a.free) + waste(material, b, b.free);
  if (before === 0 || a.pieces.length === 0 || b.pieces.length === 0) return false;
  let least = before;
  let best: [number, number] | undefined;
  a.pieces.forEach((own, i) => {
    for (let k = -1; k < b.pieces.length; k++) {
      const length = pick(material.pieces, own).length;
      const other = k < 0 ? 0 : pick(material.pieces, pick(b.pieces, k)).length;
      const [freeA, freeB] = [a.free + length - other, b.free - length + other];
      if (freeA < 0 || freeB < 0) continue;
      const after = waste(material, a, freeA) + waste(material, b, freeB);
      if (after < least) [least, best] = [after, [i, k]];
    }
  });
  if (best === undefined) return false;
  const [i, k] = best;
  const [own] = a.pieces.splice(i, 1);
  const [other] = k < 0 ? [] : b.pieces.splice(k, 1);
  if (own !== undefined) b.pieces.push(own);
  if (other !== undefined) a.pieces.push(other);
  for (const spool of [a, b]) {
    const cut = spool.pieces.reduce((sum, piece) => sum + pick(material.pieces, piece).length, 0);
    spool.free = pick(material.kinds, spool.kind).length - cut;
  }
  return true;
}

/** Cuts all pieces of a put-up from an untouched one of the lot instead, where that costs less. */
function anotherPutUp(material: Material, spools: Spool[]): boolean {
  let any = false;
  spools.forEach((spool, i) => {
    if (spool.pieces.length === 0) return;
    const cut = pick(material.kinds, spool.kind).length - spool.free;
    const cost = (it: Spool) => costOf(material, { spools: [it], short: [] });
    const offers = upTo(material.kinds.length)
      .filter((kind) => {
        const { lotNumber, length, count } = pick(material.kinds, kind);
        const used = spools.filter((other) => other.kind === kind && other.pieces.length > 0).length;
        return lotNumber === lotOf(material, spool) && length >= cut && used < count;
      })
      .map((kind) => ({ kind, pieces: spool.pieces, free: pick(material.kinds, kind).length - cut }));
    const best = offers.reduce((a, b) => (compareCosts(cost(b), cost(a)) < 0 ? b : a), spool);
    if (best === spool) return;
    spools[i] = best;
    any = true;
  });
  return any;
}
