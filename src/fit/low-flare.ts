/** Where the low flare begins: solved for, as high as the elbow allows, since every further weave is work. */
import { normalInverse } from '../geometry/normal.ts';
import type { Made } from './candidate.ts';
import { fullWidth, roperShape } from '../stock/outline.ts';
import { gapSd } from './clearance.ts';
import type { Side } from './side.ts';
import { cordSpots } from './spots.ts';

/** Highest station at which the flare may begin; never so low that it would not be whole at the midline. Solved once an order. */
export function lowFlareStart(made: Pick<Made, 'strands' | 'layers'>, side: Side): number {
  const key = `${String(made.strands)} ${String(made.layers)}`;
  let start = side.lowFlares.get(key);
  if (start === undefined) side.lowFlares.set(key, (start = solve(made, side)));
  return start;
}

/** Halvings: less than two thousandths of an inch are left. */
const HALVINGS = 12;

function solve(made: Pick<Made, 'strands' | 'layers'>, side: Side): number {
  const { girth, model } = side.facts;
  const wanted = target(side);
  // Further down a flare is never nearer: what is narrow takes the place of what is wide.
  const keeps = (start: number): boolean => {
    const flare = roperShape({ strands: made.strands, layers: made.layers, start, top: start }, model);
    return cordSpots(flare, side).every(({ skin, gap }) => !skin || gap.distance >= wanted);
  };
  // One that begins higher is whole wherever the skin is thin.
  let [low, high] = [model['flare-length'], side.elbow + model['flare-length']];
  if (keeps(high)) return girth.value / 4;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (keeps(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Clearance that a flare is tied for: the required one, or more where the spread asks for more. Flare and pinched part must both
 * clear, so the flare takes at most half of the risk that a good spec may carry. The same for all strand counts, so that more
 * strands never give more clearance: the spread is that of the widest.
 */
function target(side: Side): number {
  const { facts, armpit: s, skinFloor } = side;
  const { model, room, required } = facts;
  const gap = { distance: 1, elbowX: room.value, elbowS: s };
  const width = fullWidth(WIDEST, model);
  const sd = gapSd({ part: 'cords', skin: true, x: room.value - 1, s, width, gap }, side);
  return Math.max(required, skinFloor + normalInverse((1 + model['chance-good']) / 2) * sd);
}

/** Cinches are tied up to about this many strands. */
const WIDEST = 31;
