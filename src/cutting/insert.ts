/** Lays orders into a layout one by one, each into the dye lot where it costs least then. */
import { pick, upTo } from '../units/pick.ts';
import { compareCosts, costOf, withoutBatches, type Cost, type Layout, type Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';
import { begin, kindsOfLot, lay, Shelf } from './pack.ts';

interface Lot {
  shelf: Shelf;
  spools: Spool[];
}

/** What laying a batch into a lot would do. */
interface Offer {
  readonly lot: number;
  readonly cost: Cost;
  readonly targets: readonly { piece: number; spool: Spool }[];
  readonly begun: readonly Spool[];
}

/** Lays the named batches into a layout, each into the lot where it costs least then; what fits nowhere is short. */
export function insert(material: Material, layout: Layout, order: readonly number[]): Layout {
  const lots = lotsOf(material, layout);
  const short = layout.short.filter((batch) => !order.includes(batch));
  for (const batch of order) {
    const offers = lots.flatMap((_, lot) => offerOf(material, lots, { lot, batch }) ?? []);
    const best = offers.reduce<Offer | undefined>(
      (a, b) => (a !== undefined && compareCosts(a.cost, b.cost) <= 0 ? a : b),
      undefined,
    );
    if (best === undefined) short.push(batch);
    else accept(material, pick(lots, best.lot), best);
  }
  return { spools: lots.flatMap(({ spools }) => spools), short };
}

/** Takes batches that are short out of a layout altogether and lays in what still fits, the least first. */
export function refilled(material: Material, { spools, short }: Layout): Layout {
  const order = [...short].sort((a, b) => totalOf(material, a) - totalOf(material, b) || a - b);
  return insert(material, withoutBatches(material, { spools, short }), order);
}

function lotsOf(material: Material, layout: Layout): Lot[] {
  return upTo(material.lots).map((lot): Lot => {
    const kinds = kindsOfLot(material, lot);
    const shelf = new Shelf(material, kinds);
    const now = layout.spools.filter(({ kind }) => kinds.includes(kind));
    const spools = now.map(({ kind, pieces, free }) => ({ ...shelf.take(kind), pieces: [...pieces], free }));
    return { shelf, spools };
  });
}

function accept(material: Material, lot: Lot, { targets, begun }: Offer): void {
  for (const spool of begun) lot.spools.push(lot.shelf.take(spool.kind));
  const all = [...lot.spools];
  const news = all.slice(all.length - begun.length);
  for (const { piece, spool } of targets) {
    const i = begun.indexOf(spool);
    lay(material, i < 0 ? spool : pick(news, i), piece);
  }
}

/** Best fit of a batch into a lot as it stands, without touching it; undefined when it does not fit. */
function offerOf(
  material: Material,
  lots: readonly Lot[],
  { lot, batch }: { lot: number; batch: number },
): Offer | undefined {
  const { shelf, spools } = pick(lots, lot);
  const free = new Map(spools.map((spool) => [spool, spool.free]));
  const trial = shelf.copy();
  const begun: Spool[] = [];
  const targets: { piece: number; spool: Spool }[] = [];
  for (const piece of pick(material.batches, batch).pieces) {
    const { length } = pick(material.pieces, piece);
    let best: Spool | undefined;
    for (const [spool, room] of free) {
      if (room >= length && (best === undefined || room < (free.get(best) ?? 0))) best = spool;
    }
    if (best === undefined) {
      best = begin(material, trial, length);
      if (best === undefined) return undefined;
      begun.push(best);
      free.set(best, best.free);
    }
    free.set(best, (free.get(best) ?? 0) - length);
    targets.push({ piece, spool: best });
  }
  const cost = { ...costOf(material, { spools: begun.map(touched), short: [] }), waste: 0 };
  // Where a new put-up has to be begun, the one that holds most for the next orders; else the best fit.
  const left = Math.min(...targets.map(({ spool }) => free.get(spool) ?? 0));
  const news = cost.bought + cost.opened > 0;
  return { lot, cost: { ...cost, waste: news ? -left : left }, targets, begun };
}

const touched = (spool: Spool): Spool => ({ ...spool, pieces: [0] });
