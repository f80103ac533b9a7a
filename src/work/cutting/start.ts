/** A first layout, order by order or spool by spool. */
import { pick, upTo } from '../../units/pick.ts';
import { fullest, sumsOf } from './cover.ts';
import { compareCosts, costOf, type Cost, type Layout, type Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';

/** Order by order, which uses up short ends first; spool by spool where that is better. */
export function firstLayout(material: Material, short: number): Layout {
  const plain = inserted(material, { spools: [], short: [] }, () => true);
  const full = filled(material, short);
  return compareCosts(costOf(material, full), costOf(material, plain)) < 0 ? full : plain;
}

const isSingle = ({ batches }: Material, batch: number): boolean => pick(batches, batch).pieces.length === 1;

/** Adds missing orders, most cord first, each where it costs least. */
function inserted(material: Material, { spools }: Layout, which: (batch: number) => boolean): Layout {
  const there = new Set(spools.flatMap(({ pieces }) => pieces));
  const order = upTo(material.batches.length)
    .filter((batch) => which(batch) && !there.has(pick(pick(material.batches, batch).pieces, 0)))
    .sort((a, b) => totalOf(material, b) - totalOf(material, a) || a - b);
  return order.reduce<Layout>(
    (layout, batch) => {
      const offers = upTo(material.lots).flatMap((lot) => withBatch(material, layout, { batch, lot }) ?? []);
      offers.sort((a, b) => compareCosts(a.cost, b.cost));
      return offers[0]?.layout ?? { ...layout, short: [...layout.short, batch] };
    },
    { spools, short: [] },
  );
}

/** Orders of several pieces, then others but `short` pieces, spool by spool, then what is left. */
function filled(material: Material, short: number): Layout {
  const several = inserted(material, { spools: [], short: [] }, (batch) => !isSingle(material, batch));
  const spools = [...several.spools];
  const rest = upTo(material.pieces.length)
    .filter((piece) => isSingle(material, pick(material.batchOf, piece)))
    .slice(short);
  for (const spool of spools) fill(material, spool, rest);
  material.kinds.forEach(({ count, length }, kind) => {
    for (let n = spools.filter((spool) => spool.kind === kind).length; n < count; n++) {
      const spool = { kind, pieces: [], free: length };
      if (!fill(material, spool, rest)) break;
      spools.push(spool);
    }
  });
  return inserted(material, { spools, short: [] }, () => true);
}

/** Takes the fullest set of pieces off the list, if any fits. */
function fill({ pieces }: Material, spool: Spool, rest: number[]): boolean {
  const lengths = rest.map((piece) => pick(pieces, piece).length);
  const last = sumsOf(lengths, spool.free);
  const most = fullest(last, spool.free);
  for (let sum = most; sum > 0;) {
    const i = last[sum] ?? 0;
    spool.pieces.push(...rest.splice(i, 1));
    sum -= pick(lengths, i);
  }
  spool.free -= most;
  return most > 0;
}

interface Offer {
  readonly layout: Layout;
  readonly cost: Cost;
}

/** The layout with a batch from one lot, if it fits. */
function withBatch(
  material: Material,
  layout: Layout,
  { batch, lot }: { batch: number; lot: number },
): Offer | undefined {
  const spools = layout.spools.map((spool) => ({ ...spool, pieces: [...spool.pieces] }));
  const touched: Spool[] = [];
  for (const piece of pick(material.batches, batch).pieces) {
    const { length } = pick(material.pieces, piece);
    const fitting = spools.filter(
      ({ kind, free }) => free >= length && pick(material.kinds, kind).lotNumber === lot,
    );
    const spool = fitting.sort((a, b) => a.free - b.free)[0] ?? begin(material, spools, { lot, length });
    if (spool === undefined) return undefined;
    if (!spools.includes(spool)) spools.push(spool);
    spool.pieces.push(piece);
    spool.free -= length;
    touched.push(spool);
  }
  const room = Math.min(...touched.map(({ free }) => free));
  // Fill begun spools, keep much of new ones.
  const waste = spools.length > layout.spools.length ? -room : room;
  return { layout: { ...layout, spools }, cost: { ...costOf(material, { ...layout, spools }), waste } };
}

/** The tightest remnant, else the longest on the shelf, else to buy. */
function begin(
  { kinds }: Material,
  spools: readonly Spool[],
  { lot, length }: { lot: number; length: number },
): Spool | undefined {
  const fitting = upTo(kinds.length).filter((kind) => {
    const { lotNumber, length: whole, count } = pick(kinds, kind);
    return (
      lotNumber === lot && whole >= length && spools.filter((spool) => spool.kind === kind).length < count
    );
  });
  const kind = fitting.filter((each) => pick(kinds, each).origin === 'remnant').at(-1) ?? fitting[0];
  return kind === undefined ? undefined : { kind, pieces: [], free: pick(kinds, kind).length };
}
