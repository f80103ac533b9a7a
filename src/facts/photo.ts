/** What a side photo shows, read with what is known of the barrel without it. */
import type { Order } from '../order/types.ts';
import { readLandmarks, type PhotoReading } from '../photo/read.ts';
import { solveEllipse } from '../geometry/ellipse.ts';
import type { Model } from '../sources/numbers.ts';
import { barrelOf } from './barrel.ts';
import type { Estimate } from './estimate.ts';
import { sizeFactor } from './girth.ts';

/** The reading of an order's photo; undefined when it has none. */
export function photoReadingOf(
  { horse, photo }: Order,
  girth: Estimate,
  model: Model,
): PhotoReading | undefined {
  if (photo === undefined) return undefined;
  const { ratio, ellipse } = barrelOf(horse, girth.value, model);
  const wider = solveEllipse(girth.value, ratio.value + ratio.sd).halfWidth - ellipse.halfWidth;
  const guess = {
    ellipse,
    // A barrel of another girth is wider in proportion.
    halfWidthSd: Math.hypot(wider, (ellipse.halfWidth * girth.sd) / girth.value),
    elbowStation: model['elbow-station'] * sizeFactor(girth.value, model),
  };
  return readLandmarks(photo, guess, model);
}
