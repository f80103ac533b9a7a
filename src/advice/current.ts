/** What the current cinch says about the next one. */
import type { Facts } from '../horse/facts.ts';
import { lay, seatOf } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { Shop } from '../order/types.ts';
import type { CaseFacts, Current } from '../rules/rule.ts';
import { bySize, layersOn } from '../cinch/buckles.ts';
import { shelfOf } from '../cinch/shelf.ts';
import { evenLength } from '../rules/usual-length.ts';

/** Adds the shop, its shelf and the current cinch. */
export const caseFactsOf = (facts: Facts, shop: Shop): CaseFacts => ({
  ...facts,
  shop,
  shelf: shelfOf(facts.order, shop),
  current: currentOf(facts, shop),
});

/** Assumes a straight, the smallest buckle and the nearest even length. */
function currentOf(facts: Facts, shop: Shop): Current {
  const { current: now } = facts.order;
  const sorted = [...shop.buckles].sort(bySize);
  const { strands } = now ?? {};
  const buckle =
    sorted.find(({ id }) => id === now?.buckle) ??
    sorted.find((each) => strands !== undefined && layersOn(each, strands) !== undefined);
  if (now === undefined || buckle === undefined) return { frame: undefined, cords: undefined };
  const side = sideOf(facts);
  const length = now.length ?? evenLength(facts.lengthNeed.target.value);
  const frame = { width: buckle.frameWidth, low: seatOf(buckle, length, side).low };
  if (strands === undefined) return { frame, cords: undefined };
  const layers = layersOn(buckle, strands) ?? 1;
  return { frame, cords: lay({ style: now.style ?? 'straight', strands, buckle, layers, length }, side) };
}
