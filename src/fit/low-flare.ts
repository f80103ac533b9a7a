/** Where the low flare begins: solved for, as high as the elbow allows, since every further weave is work. */
import { normalInverse } from '../geometry/normal.ts';
import { findRoot } from '../geometry/root.ts';
import type { Facts } from '../facts/facts.ts';
import { fullWidth, pinchedWidth, straightShape } from '../stock/outline.ts';
import { gapBetween, gapSd } from './clearance.ts';
import { flareEdge, pinchedEdge } from './edges.ts';

/** Cinches are tied up to about this many strands; the spread asked for is that of the widest. */
const MOST_STRANDS = 31;

/**
 * Clearance that a flare is tied for: the required one, or more where the spread asks for more. Flare and pinched part
 * must both clear, so the flare takes at most half of the risk that a good spec may carry. The same for all strand
 * counts, so that more strands never give more clearance.
 */
export function lowFlareTarget(facts: Facts): number {
  const { model, elbowLine, room, floor, required } = facts;
  const station = elbowLine[3] ?? 0;
  const width = fullWidth(MOST_STRANDS, model);
  const at = { distance: 1, px: room.value - 1, ps: station, qx: room.value, qs: station };
  const sureness = normalInverse((1 + model['chance-good']) / 2);
  return Math.max(required, floor + sureness * gapSd(at, facts, width));
}

/**
 * Highest station at which a flare of that many strands may begin and keep `target`, never so low that the flare would
 * not be whole at the midline. A buckle may ask for a lower start still.
 */
export function lowFlareLimit(strands: number, target: number, facts: Facts): number {
  const { model, centreLine, elbowLine, girth } = facts;
  const lowest = model['flare-length'];
  const highest = girth.value / 4;
  const full = fullWidth(strands, model);
  const pinched = pinchedWidth(strands, model);
  const gapOf = (edge: Float64Array): number => gapBetween(edge, elbowLine).distance;
  const gapAt = (start: number): number =>
    gapOf(
      flareEdge(
        { full, pinched, fullUpTo: start - lowest, pinchedFrom: start, top: start },
        centreLine.slope,
      ),
    );
  const above = { ...straightShape(pinched, highest), pinchedFrom: lowest };
  if (gapOf(pinchedEdge(above, centreLine.slope)) < facts.floor) return lowest; // refused whatever the flare does
  const wanted = Math.min(target, gapAt(lowest));
  if (gapAt(highest) >= wanted) return highest;
  return findRoot((start) => gapAt(start) - wanted, [lowest, highest], 1e-7) ?? lowest;
}
