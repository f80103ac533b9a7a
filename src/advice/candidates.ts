/** Everything the shop could tie for this order: style x strands x buckle that takes it x length step. */
import { lengthSteps } from '../facts/length.ts';
import type { Candidate, Spec } from '../fit/candidate.ts';
import type { Ground } from '../fit/ground.ts';
import { lay } from '../fit/lay.ts';
import type { Buckle, Shop } from '../order/types.ts';
import { bySize, layersOn, type Layers } from '../stock/buckles.ts';
import { styleIds } from '../stock/styles.ts';

/** All candidates in a fixed order that does not depend on the order of the shop's lists. */
export function candidatesFor(ground: Ground, shop: Shop): Candidate[] {
  const lengths = lengthSteps(ground.facts.lengthNeed.target.value, shop.lengths);
  const buckles = [...shop.buckles].sort(bySize);
  const found: Candidate[] = [];
  for (const spec of specs(shop, buckles)) {
    for (const length of lengths) {
      const candidate = lay({ ...spec, length }, ground);
      if (candidate !== undefined) found.push(candidate);
    }
  }
  return found;
}

function* specs(shop: Shop, buckles: readonly Buckle[]): Generator<Omit<Spec, 'length'>> {
  const first = shop.strands.min + ((shop.strands.min + 1) % 2);
  for (let strands = first; strands <= shop.strands.max; strands += 2) {
    const taking = buckles.flatMap((buckle): { buckle: Buckle; layers: Layers }[] => {
      const layers = layersOn(buckle, strands);
      return layers === undefined ? [] : [{ buckle, layers }];
    });
    for (const style of styleIds) for (const fit of taking) yield { style, strands, ...fit };
  }
}
