/** Where the low flare begins: solved for, as high as the elbow allows, since every further weave is work. */
import { normalInverse } from '../geometry/normal.ts';
import { findRoot } from '../geometry/root.ts';
import type { Facts } from '../facts/facts.ts';
import { fullWidth, pinchedWidth, straightShape, type Shape } from '../stock/outline.ts';
import { gapBetween, gapSd } from './clearance.ts';
import { bodyEdge } from './edges.ts';

/** Cinches are tied up to about this many strands; the spread asked for is that of the widest. */
const MOST_STRANDS = 31;

/**
 * Clearance that a low flare is tied for: the required one, or more where the spread asks for more to be judged good.
 * The same for all strand counts, so that more strands never give more clearance.
 */
export function lowFlareTarget(facts: Facts): number {
  const { model, elbowLine, room, floor, required } = facts;
  const station = elbowLine[3] ?? 0;
  const width = fullWidth(MOST_STRANDS, model);
  const at = { distance: 1, px: room.value - 1, ps: station, qx: room.value, qs: station, segment: 0 };
  return Math.max(required, floor + normalInverse(model['chance-good']) * gapSd(at, facts, width));
}

/**
 * Highest station at which a flare of that many strands may begin and keep `target`; where the pinched part itself
 * cannot, the highest that does no worse than the pinched part. Never so low that the flare would not be whole at the
 * midline. A buckle may ask for a lower start still.
 */
export function lowFlareLimit(strands: number, target: number, facts: Facts): number {
  const { model, centreLine, elbowLine, girth } = facts;
  const lowest = model['flare-length'];
  const highest = girth.value / 4;
  const full = fullWidth(strands, model);
  const pinched = pinchedWidth(strands, model);
  const gapOf = (shape: Shape): number => gapBetween(bodyEdge(shape, centreLine.slope), elbowLine).distance;
  const gapAt = (start: number): number =>
    gapOf({ full, pinched, fullUpTo: start - lowest, pinchedFrom: start, top: start });
  const upper = gapOf(straightShape(pinched, highest));
  if (upper < facts.floor) return lowest; // refused whatever the flare does
  const wanted = Math.min(target, upper, gapAt(lowest));
  if (gapAt(highest) >= wanted) return highest;
  return findRoot((start) => gapAt(start) - wanted, [lowest, highest], 1e-7) ?? lowest;
}
