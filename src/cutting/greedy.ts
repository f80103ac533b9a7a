/** A first layout: the best of a few quick ways. */
import { upTo } from '../units/pick.ts';
import { isProven } from './bounds.ts';
import { coverBounds, fillsOf } from './cover.ts';
import { fillUp } from './fill-up.ts';
import { insert } from './insert.ts';
import { cheaper, compareCosts, costOf, type Cost, type Layout, type Spool } from './layout.ts';
import { totalOf, type Material } from './material.ts';
import { kindsOfLot, packBestFit } from './pack.ts';
import type { Steps } from './steps.ts';

const nothing: Layout = { spools: [], short: [] };

/** The best layout of a few quick tries. Work: pieces times put-ups, a few times over. */
export function greedyLayout(material: Material, steps: Steps): Layout {
  const fills = fillsOf(material, steps);
  const total = upTo(material.batches.length).map((batch) => totalOf(material, batch));
  const longestFirst = upTo(total.length).sort((a, b) => (total[b] ?? 0) - (total[a] ?? 0) || a - b);
  let best = repack(material, insert(material, nothing, longestFirst));
  for (const lean of [0, 0.2]) {
    const found = costOf(material, best);
    if (isProven(found, coverBounds(material, fills, found))) break;
    best = cheaper(material, best, fillUp({ material, lean }, steps));
  }
  return best;
}

/** Packs every lot again, longest piece into the best fit, and keeps that where it is cheaper. */
function repack(material: Material, layout: Layout): Layout {
  const spools = upTo(material.lots).flatMap((lot) => {
    const kinds = kindsOfLot(material, lot);
    const now = layout.spools.filter(({ kind }) => kinds.includes(kind));
    const pieces = now.flatMap((spool) => spool.pieces).sort((a, b) => a - b);
    const again = packBestFit({ material, kinds, pieces });
    const cost = (tried: Spool[]): Cost => costOf(material, { spools: tried, short: [] });
    return again !== undefined && compareCosts(cost(again), cost(now)) < 0 ? again : now;
  });
  return { spools, short: layout.short };
}
