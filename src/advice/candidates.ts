/** Everything the shop could tie for this order: style x strands x buckle that takes it x length step. */
import { lengthSteps } from '../facts/length.ts';
import type { Ground } from '../fit/ground.ts';
import { lay, type LaidCandidate } from '../fit/lay.ts';
import type { Shop } from '../order/types.ts';
import { bySize, layersOn } from '../stock/buckles.ts';
import { styleIds } from '../stock/styles.ts';

/** All candidates in a fixed order that does not depend on the order of the shop's lists. */
export function candidatesFor(ground: Ground, shop: Shop): LaidCandidate[] {
  const lengths = lengthSteps(ground.facts.lengthNeed.target.value, shop.lengths);
  const buckles = [...shop.buckles].sort(bySize);
  const found: LaidCandidate[] = [];
  const first = shop.strands.min + ((shop.strands.min + 1) % 2);
  for (let strands = first; strands <= shop.strands.max; strands += 2) {
    for (const buckle of buckles) {
      const layers = layersOn(buckle, strands);
      if (layers === undefined) continue;
      for (const style of styleIds) {
        for (const length of lengths) {
          const candidate = lay({ style, strands, buckle, layers, length }, ground);
          if (candidate !== undefined) found.push(candidate);
        }
      }
    }
  }
  return found;
}
