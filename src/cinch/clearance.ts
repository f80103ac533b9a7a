/** Elbow clearance of a cinch, its spread and chance. */
import { allBelow } from '../math/all-below.ts';
import type { Clearance } from './candidate.ts';
import { followsOf, together, type Follows } from './moves.ts';
import type { Side } from './side.ts';
import type { Spot } from './spots.ts';

interface Measured {
  readonly spot: Spot;
  readonly sd: number;
  /** Spreads above its floor. */
  readonly spare: number;
  readonly follows: Follows;
}

const floorAt = ({ skin }: Spot, { skinFloor, muscleFloor }: Side): number =>
  skin ? skinFloor : muscleFloor;

function measure(spot: Spot, side: Side): Measured {
  const follows = followsOf(spot, side.moves);
  const sd = Math.sqrt(together(follows, follows, side.moves));
  return { spot, sd, spare: (spot.gap.distance - floorAt(spot, side)) / sd, follows };
}

/** First-order sd of a spot's gap. */
export const gapSd = (spot: Spot, side: Side): number => measure(spot, side).sd;

/**
 * At the spot farthest under its floor, else with fewest spreads to spare: an edge beside the elbow line has many
 * nearest spots.
 * @throws TypeError without spots
 */
export function clearanceOf(spots: readonly Spot[], side: Side): Clearance {
  const over = (spot: Spot): number => spot.gap.distance - floorAt(spot, side);
  const lowest = spots.reduce((best, spot) => (over(spot) < over(best) ? spot : best));
  const all = (): readonly Measured[] => spots.map((each) => measure(each, side));
  const least =
    over(lowest) < 0
      ? measure(lowest, side)
      : all().reduce((best, each) => (each.spare < best.spare ? each : best));
  const { spot, sd } = least;
  let reckoned: number | undefined;
  return {
    inches: spot.gap.distance,
    sd,
    floor: floorAt(spot, side),
    station: spot.s,
    where: spot.part === 'frame' ? 'buckle' : 'cinch',
    skin: spot.skin,
    from: [spot.x, spot.s],
    to: [spot.gap.elbowX, spot.gap.elbowS],
    get likely() {
      return (reckoned ??= chanceOfAll(all(), side));
    },
    get chance() {
      return Math.min(side.mostSure, this.likely);
    },
  };
}

function chanceOfAll(measured: readonly Measured[], { moves }: Side): number {
  const bounds = measured.map(({ spare }) => spare);
  return allBelow(bounds, (i, j) => {
    const [a, b] = [measured[i] as Measured, measured[j] as Measured];
    return together(a.follows, b.follows, moves) / (a.sd * b.sd);
  });
}
