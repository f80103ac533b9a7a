/** The chance that a cinch already tied does: clears the least at the elbow, and leaves a latigo run that is accepted. */
import type { Candidate } from '../cinch/candidate.ts';
import { clearanceOf } from '../cinch/clearance.ts';
import { sideOf } from '../cinch/side.ts';
import { cordSpots, frameSpots } from '../cinch/spots.ts';
import type { Facts } from '../horse/facts.ts';
import { runFor } from '../horse/length.ts';
import { stationSd } from '../horse/ring.ts';
import { normalCdf } from '../math/normal.ts';

/** What is known of the cinch that would be tied: its shape stays, whatever is found out about the horse. */
export type Tied = Pick<Candidate, 'shape' | 'buckle' | 'length'>;

export interface Odds {
  /** Chance of at least the least clearance. */
  readonly clears: number;
  /** Chance of a latigo run within what is accepted. */
  readonly reaches: number;
  /** Chance of both. */
  readonly both: number;
}

/**
 * In closed form, by first order, as sizing has it. Clearing and reaching are taken as independent: what they share is the height of
 * the ring, which moves the clearance by a few thousandths of an inch an inch.
 */
export function oddsOf(tied: Tied, facts: Facts): Odds {
  const clears = clearing(tied, facts);
  const reaches = reaching(tied.length, facts);
  return { clears, reaches, both: clears * reaches };
}

/** The same as told: no chance of clearing is told as more than the model is known to be good for. */
export function oddsTold(tied: Tied, facts: Facts): Odds {
  const { clears, reaches } = oddsOf(tied, facts);
  const told = Math.min(facts.model['chance-most'], clears);
  return { clears: told, reaches, both: told * reaches };
}

function clearing({ shape, buckle }: Tied, facts: Facts): number {
  const side = sideOf(facts);
  return clearanceOf([...cordSpots(shape, side), ...frameSpots(buckle, shape.top, side)], side).likely;
}

/** A girth nobody taped moves the rings as well, so its spread counts here, too. */
function reaching(length: number, { lengthNeed, ring, girth, model }: Facts): number {
  const sd = Math.hypot(stationSd(ring, girth), lengthNeed.stretch / 4);
  const run = runFor(length, lengthNeed);
  if (sd === 0) return run >= model['run-low'] && run <= model['run-high'] ? 1 : 0;
  return normalCdf((model['run-high'] - run) / sd) - normalCdf((model['run-low'] - run) / sd);
}
