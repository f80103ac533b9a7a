/** Where the low flare begins: solved for, as high as the elbow allows, since every further weave is work. */
import { normalInverse } from '../geometry/normal.ts';
import type { Facts } from '../facts/facts.ts';
import { fullWidth } from '../stock/outline.ts';
import { gapSd, type Field } from './clearance.ts';
import { flareEdge, pinchedEdge } from './edges.ts';
import { elbowGap } from './elbow-gap.ts';
import type { Gap } from './gap.ts';

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
  const shape = { full, pinched, fullUpTo: highest - lowest, pinchedFrom: lowest, top: highest };
  // Refused whatever the flare does.
  if (elbowGap(pinchedEdge(shape, slope), elbowLine).distance < floor) return lowest;
  const gapAt = (start: number): Gap => {
    shape.fullUpTo = start - lowest;
    shape.pinchedFrom = start;
    return elbowGap(flareEdge(shape, slope), elbowLine);
  };
  if (gapAt(highest).distance >= target) return highest;
  const rise = { slope, narrowing: (full - pinched) / 2 / lowest, flareLength: lowest };
  const least = gapAt(lowest);
  if (least.distance > target) return highestKeeping({ wanted: target, from: lowest, highest, rise }, gapAt);
  // Higher up it is never further away: so only where it is as near for a while is there anything to look for.
  if (least.ps > 0 && changeOf(least, lowest, rise) < -LEVEL) return lowest;
  return highestKeeping({ wanted: least.distance, from: highest, highest, rise }, gapAt);
}

/** How a flare's edge runs: its centre line, its own slant, and how far it reaches. */
interface Rise {
  readonly slope: number;
  readonly narrowing: number;
  readonly flareLength: number;
}

interface Search {
  readonly wanted: number;
  /** Where the search begins: at the lowest start or the highest. */
  readonly from: number;
  readonly highest: number;
  readonly rise: Rise;
}

/** Far below what anybody ties to, far above what rounding does. */
const NEAR = 1e-10;
/** Where the gap changes by less than this an inch, it is only rounding that changes it. */
const LEVEL = 1e-6;
const MOST_STEPS = 60;

/**
 * The highest start whose gap is not less than wanted, by Newton's steps inside a bracket. As long as the same two corners or
 * edges are nearest the gap is all but linear in the start, so two or three do; halving is for where it does not change.
 */
function highestKeeping({ wanted, from, highest, rise }: Search, gapAt: (start: number) => Gap): number {
  const lowest = rise.flareLength;
  let low = lowest;
  let high = highest;
  let start = from;
  for (let step = 0; step < MOST_STEPS; step++) {
    const gap = gapAt(start);
    const over = gap.distance - wanted;
    if (over >= 0) low = start;
    else high = start;
    if (low === high || (over >= 0 && over <= NEAR)) return start - lowest <= NEAR ? lowest : start;
    const newton = start - over / changeOf(gap, start, rise);
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    // A hair lower, so that no rounding takes it under what is wanted.
    if (Math.abs(next - start) <= NEAR) return Math.max(lowest, next - NEAR);
    start = next;
  }
  return low;
}

/** How the gap changes as the flare moves up: by the envelope theorem the nearest points may be held where they are on their edges. */
function changeOf(
  { distance, px, ps, qx, qs }: Gap,
  start: number,
  { slope, narrowing, flareLength }: Rise,
): number {
  if (ps < start - flareLength) return 0; // where it is whole, moving up only makes more of it
  if (distance <= 0) return -narrowing;
  return ((px - qx) * slope + (ps - qs)) / distance;
}
