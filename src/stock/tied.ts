/** What a shop ties: every strand count on every buckle that takes it, numbered once for the shop. */
import type { Buckle, Shop, Style } from '../order/types.ts';
import { bySize, layersOn, type Layers } from './buckles.ts';
import { styleIds } from './styles.ts';

/** Strands in one style on a buckle that takes them: a cinch but for its length. */
export interface Make {
  readonly style: Style;
  readonly strands: number;
  readonly buckle: Buckle;
  readonly layers: Layers;
  /** Places in the lists of styles and of the shop. */
  readonly styleNo: number;
  readonly strandsNo: number;
  readonly buckleNo: number;
}

/** Fewest strands first, then the smallest buckle: it does not depend on the order of the shop's own lists. */
export interface TiedList {
  readonly makes: readonly Make[];
  /** Of each style and strand count, the places of its makes. */
  readonly groups: readonly (readonly number[])[];
  readonly strands: readonly number[];
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
  const makes: Make[] = [];
  const groups: number[][] = [];
  const first = shop.strands.min + ((shop.strands.min + 1) % 2);
  for (let count = first; count <= shop.strands.max; count += 2) {
    const before = makes.length;
    const strandsNo = strands.length;
    buckles.forEach((buckle, buckleNo) => {
      const layers = layersOn(buckle, count);
      if (layers === undefined) return;
      for (const [styleNo, style] of styleIds.entries()) {
        (groups[strandsNo * styleIds.length + styleNo] ??= []).push(makes.length);
        makes.push({ style, strands: count, buckle, layers, styleNo, strandsNo, buckleNo });
      }
    });
    if (makes.length > before) strands.push(count);
  }
  return { makes, groups, strands, buckles };
}
