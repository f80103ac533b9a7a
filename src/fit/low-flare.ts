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
  const flareLength = facts.model['flare-length'];
  const highest = girth.value / 4;
  const flared = (start: number) => ({
    full,
    pinched,
    fullUpTo: start - flareLength,
    pinchedFrom: start,
    top: highest,
  });
  const gapAt = (start: number): Gap => elbowGap(flareEdge(flared(start), slope), elbowLine);
  const least = elbowGap(pinchedEdge(flared(flareLength), slope), elbowLine).distance;
  if (least < floor) return flareLength; // refused whatever the flare does
  const wanted = Math.min(target, gapAt(flareLength).distance);
  const narrowing = (full - pinched) / 2 / flareLength;
  return highestKeeping({ wanted, highest, rise: { slope, narrowing, flareLength } }, gapAt);
}

/** How a flare's edge runs: its centre line, its own slant, and how far it reaches. */
interface Rise {
  readonly slope: number;
  readonly narrowing: number;
  readonly flareLength: number;
}

interface Search {
  readonly wanted: number;
  readonly highest: number;
  readonly rise: Rise;
}

/** Far below what anybody ties to, far above what rounding does. */
const NEAR = 1e-10;
const MOST_STEPS = 60;

/**
 * The highest start whose gap is not less than wanted, by Newton's steps inside a bracket. As long as the same two corners or
 * edges are nearest the gap is all but linear in the start, so two or three do; halving is for where it does not change.
 */
function highestKeeping({ wanted, highest, rise }: Search, gapAt: (start: number) => Gap): number {
  const lowest = rise.flareLength;
  let low = lowest;
  let high = highest;
  let start = highest;
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
