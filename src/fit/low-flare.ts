/** Where the low flare begins: solved for, as high as the elbow allows, since every further weave is work. */
import { normalInverse } from '../geometry/normal.ts';
import { findRoot } from '../geometry/root.ts';
import type { Facts } from '../facts/facts.ts';
import { fullWidth } from '../stock/outline.ts';
import { gapSd, type Field } from './clearance.ts';
import { flareEdge, pinchedEdge } from './edges.ts';
import { gapBetween } from './gap.ts';

/** Cinches are tied up to about this many strands; the spread asked for is that of the widest. */
const MOST_STRANDS = 31;

/**
 * Clearance that a flare is tied for: the required one, or more where the spread asks for more. Flare and pinched part
 * must both clear, so the flare takes at most half of the risk that a good spec may carry. The same for all strand
 * counts, so that more strands never give more clearance.
 */
export function lowFlareTarget({ model, room, elbowLine, floor, required }: Facts, field: Field): number {
  const station = elbowLine[3] ?? 0;
  const at = { distance: 1, px: room.value - 1, ps: station, qx: room.value, qs: station };
  const sureness = normalInverse((1 + model['chance-good']) / 2);
  return Math.max(required, floor + sureness * gapSd(at, fullWidth(MOST_STRANDS, model), field));
}

/**
 * Highest station at which a flare of these widths may begin and keep `target`, never so low that the flare would
 * not be whole at the midline. A buckle may ask for a lower start still.
 */
export function lowFlareLimit(
  { full, pinched }: { full: number; pinched: number },
  { target, facts }: { target: number; facts: Facts },
): number {
  const { centreLine, elbowLine, girth, floor } = facts;
  const { slope } = centreLine;
  const lowest = facts.model['flare-length'];
  const highest = girth.value / 4;
  const gapOf = (edge: Float64Array): number => gapBetween(edge, elbowLine).distance;
  const flared = (start: number) => ({
    full,
    pinched,
    fullUpTo: start - lowest,
    pinchedFrom: start,
    top: highest,
  });
  const gapAt = (start: number): number => gapOf(flareEdge(flared(start), slope));
  if (gapOf(pinchedEdge(flared(lowest), slope)) < floor) return lowest; // refused whatever the flare does
  const wanted = Math.min(target, gapAt(lowest));
  if (gapAt(highest) >= wanted) return highest;
  return findRoot((start) => gapAt(start) - wanted, [lowest, highest], 1e-7) ?? lowest;
}
