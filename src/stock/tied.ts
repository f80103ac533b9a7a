/** What a shop ties: every strand count on every buckle that takes it, numbered once for the shop. */
import type { Buckle, Shop } from '../order/types.ts';
import { bySize, layersOn, type Layers } from './buckles.ts';

/** Strands on a buckle that takes them. */
export interface Tied {
  readonly strands: number;
  readonly buckle: Buckle;
  readonly layers: Layers;
  /** Places in the lists of the shop. */
  readonly strandsNo: number;
  readonly buckleNo: number;
}

/** Fewest strands first, then the smallest buckle: it does not depend on the order of the shop's own lists. */
export interface TiedList {
  readonly all: readonly Tied[];
  readonly strands: readonly number[];
  /** Place in `all` of the first of each strand count, and behind the last of all. */
  readonly starts: readonly number[];
  readonly buckles: readonly Buckle[];
}

// A backlog asks the same shop again and again.
const known = new WeakMap<Shop, TiedList>();

/** Everything a shop ties; the same object for the same shop. */
export function tiedBy(shop: Shop): TiedList {
  let tied = known.get(shop);
  if (tied === undefined) known.set(shop, (tied = listTied(shop)));
  return tied;
}

function listTied(shop: Shop): TiedList {
  const buckles = [...shop.buckles].sort(bySize);
  const strands: number[] = [];
  const starts: number[] = [];
  const all: Tied[] = [];
  const first = shop.strands.min + ((shop.strands.min + 1) % 2);
  for (let count = first; count <= shop.strands.max; count += 2) {
    const start = all.length;
    buckles.forEach((buckle, buckleNo) => {
      const layers = layersOn(buckle, count);
      if (layers !== undefined)
        all.push({ strands: count, buckle, layers, strandsNo: strands.length, buckleNo });
    });
    if (all.length === start) continue;
    strands.push(count);
    starts.push(start);
  }
  return { all, strands, starts: [...starts, all.length], buckles };
}
