/** Where the low flare begins: solved for, as high as the elbow allows, since every further weave is work. */
import { normalInverse } from '../math/normal.ts';
import type { Made } from './candidate.ts';
import { fullWidth, roperShape } from './outline.ts';
import { gapSd } from './clearance.ts';
import type { Side } from './side.ts';
import { cordSpots, type Spot } from './spots.ts';

/** Highest station at which the flare may begin; never so low that it would not be whole at the midline. Solved once an order. */
export function lowFlareStart(made: Pick<Made, 'strands' | 'layers'>, side: Side): number {
  const key = `${String(made.strands)} ${String(made.layers)}`;
  let start = side.lowFlares.get(key);
  if (start === undefined) side.lowFlares.set(key, (start = solve(made, side)));
  return start;
}

/** Halvings: less than two thousandths of an inch are left. */
const HALVINGS = 12;

function solve({ strands, layers }: Pick<Made, 'strands' | 'layers'>, side: Side): number {
  const { girth, model } = side.facts;
  // Further down a flare is never nearer: what is narrow takes the place of what is wide.
  const keeps = (start: number): boolean =>
    cordSpots(roperShape({ strands, layers, start, top: start }, model), side).every(
      (spot) => !spot.skin || spot.gap.distance >= wanted(spot, side),
    );
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
 * clear, so the flare takes at most half of the risk that a good spec may carry. The spread is that of the widest cinch, so that more
 * strands never give more clearance.
 */
function wanted(spot: Spot, side: Side): number {
  const { model, required } = side.facts;
  const sd = gapSd({ ...spot, width: fullWidth(WIDEST, model) }, side);
  return Math.max(required, side.skinFloor + normalInverse((1 + model['chance-good']) / 2) * sd);
}

/** Cinches are tied up to about this many strands. */
const WIDEST = 31;
