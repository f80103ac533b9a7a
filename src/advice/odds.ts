/** The chance that a tied cinch clears the elbow and leaves the right latigo. */
import type { Candidate } from '../cinch/candidate.ts';
import { clearanceOf } from '../cinch/clearance.ts';
import { sideOf } from '../cinch/side.ts';
import { cordSpots, frameSpots } from '../cinch/spots.ts';
import type { Facts } from '../horse/facts.ts';
import { runFor } from '../horse/length.ts';
import { stationSd } from '../horse/ring.ts';
import { normalCdf } from '../math/normal.ts';

/** Its shape stays, whatever we learn. */
export type Tied = Pick<Candidate, 'shape' | 'buckle' | 'length'>;

export interface Odds {
  /** Keeps the least clearance. */
  readonly clears: number;
  /** Has an accepted latigo run. */
  readonly reaches: number;
  readonly both: number;
}

/** Counts clearing and reaching as independent: ring height hardly moves the clearance. */
export function oddsOf(tied: Tied, facts: Facts): Odds {
  const clears = clearing(tied, facts);
  const reaches = reaching(tied.length, facts);
  return { clears, reaches, both: clears * reaches };
}

/** Capped at what we claim. */
export function oddsTold(tied: Tied, facts: Facts): Odds {
  const { clears, reaches } = oddsOf(tied, facts);
  const told = Math.min(facts.model['chance-most'], clears);
  return { clears: told, reaches, both: told * reaches };
}

function clearing({ shape, buckle }: Tied, facts: Facts): number {
  const side = sideOf(facts);
  return clearanceOf([...cordSpots(shape, side), ...frameSpots(buckle, shape.top, side)], side).likely;
}

/** A girth not taped moves the rings too. */
function reaching(length: number, { lengthNeed, ring, girth, model }: Facts): number {
  const sd = Math.hypot(stationSd(ring, girth), lengthNeed.stretch / 4);
  const run = runFor(length, lengthNeed);
  if (sd === 0) return run >= model['run-low'] && run <= model['run-high'] ? 1 : 0;
  return normalCdf((model['run-high'] - run) / sd) - normalCdf((model['run-low'] - run) / sd);
}
