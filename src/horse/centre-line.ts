/** The cinch's centre line: straight on the unrolled side from the groove at the midline to the ring, pushed forward by round ribs. */
import type { Horse } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Estimate } from './estimate.ts';

export interface CentreLine {
  /** Inches forward per inch of station. */
  readonly slope: number;
  /** Forward push of round ribs at the station `pushStation`. */
  readonly push: Estimate;
  readonly pushStation: number;
}

/** Ribs push the centre line forward, linear in the station; only a barrel said to be round does. */
export function pushOf(horse: Horse, k: number, model: Model): Estimate {
  // A told barrel halves what we do not know of the ribs [choice].
  const sd = model['push-sd'] * (horse.barrel === undefined ? 1 : 0.5);
  if (horse.barrel === 'round') {
    return { value: model['round-push'] * k, sd, kind: 'told', basis: 'round ribs push the cinch forward' };
  }
  const kind = horse.barrel === undefined ? 'assumed' : 'told';
  return { value: 0, sd, kind, basis: 'no push from the ribs' };
}

/** `x_c(s) = slope s`; the push is given at the station where a buckle usually sits, a quarter of the girth up. */
export function centreLineOf(
  ring: { x: number; station: { value: number } },
  push: Estimate,
  girth: number,
): CentreLine {
  const pushStation = girth / 4;
  return { slope: ring.x / ring.station.value + push.value / pushStation, push, pushStation };
}
