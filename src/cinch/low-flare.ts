/** Where a low flare starts: as high as the elbow allows, to weave less. */
import { normalInverse } from '../math/normal.ts';
import type { Made } from './candidate.ts';
import { fullWidth, roperShape } from './outline.ts';
import { gapSd } from './clearance.ts';
import type { Side } from './side.ts';
import { cordSpots, type Spot } from './spots.ts';

/** Station; never too low to reach full width at the midline. */
export function lowFlareStart(made: Pick<Made, 'strands' | 'layers'>, side: Side): number {
  const key = `${String(made.strands)} ${String(made.layers)}`;
  let start = side.lowFlares.get(key);
  if (start === undefined) side.lowFlares.set(key, (start = solve(made, side)));
  return start;
}

/** Within 0.002 in. */
const HALVINGS = 12;

function solve({ strands, layers }: Pick<Made, 'strands' | 'layers'>, side: Side): number {
  const { girth, model } = side.facts;
  // Starting lower never comes nearer the elbow.
  const keeps = (start: number): boolean =>
    cordSpots(roperShape({ strands, layers, start, top: start }, model), side).every(
      (spot) => !spot.skin || spot.gap.distance >= wanted(spot, side),
    );
  // Higher, the flare is at full width in all thin skin.
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
 * The required clearance, or more for a large spread, to take at most half a good spec's risk. Uses the widest
 * cinch's spread, so more strands never get more clearance.
 */
function wanted(spot: Spot, side: Side): number {
  const { model, required } = side.facts;
  const sd = gapSd({ ...spot, width: fullWidth(WIDEST, model) }, side);
  return Math.max(required, side.skinFloor + normalInverse((1 + model['chance-good']) / 2) * sd);
}

/** About the most strands tied. */
const WIDEST = 31;
