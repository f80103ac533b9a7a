/** Center line of the cinch, from midline to ring; round ribs push it forward. */
import type { Horse } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Estimate } from './estimate.ts';

export interface CentreLine {
  /** Inches forward per inch of station. */
  readonly slope: number;
  /** At `pushStation`. */
  readonly push: Estimate;
  readonly pushStation: number;
}

/** Zero unless the barrel is round. */
export function pushOf(horse: Horse, k: number, model: Model): Estimate {
  // Knowing the barrel shape halves the spread [choice].
  const sd = model['push-sd'] * (horse.barrel === undefined ? 1 : 0.5);
  if (horse.barrel === 'round') {
    return { value: model['round-push'] * k, sd, kind: 'told', basis: 'round ribs push the cinch forward' };
  }
  const kind = horse.barrel === undefined ? 'assumed' : 'told';
  return { value: 0, sd, kind, basis: 'no push from the ribs' };
}

/** `x = slope s`; the push applies where a buckle usually sits. */
export function centreLineOf(
  ring: { x: number; station: { value: number } },
  push: Estimate,
  girth: number,
): CentreLine {
  const pushStation = girth / 4;
  return { slope: ring.x / ring.station.value + push.value / pushStation, push, pushStation };
}
