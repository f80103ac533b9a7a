/** Reads an order's side photo, given the barrel. */
import type { Photo } from '../order/photo-types.ts';
import type { Order } from '../order/types.ts';
import { readLandmarks, type PhotoReading } from '../photo/read/reading.ts';
import type { Guess } from '../photo/read/scene.ts';
import { solveEllipse } from '../math/ellipse.ts';
import type { Model } from '../numbers/numbers.ts';
import { photoNumbers } from '../numbers/photo-numbers.ts';
import { barrelOf } from './barrel.ts';
import type { Estimate } from './estimate.ts';
import { sizeFactor } from './girth.ts';

/** Undefined when there is no photo. */
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
    // Width grows with girth.
    halfWidthSd: Math.hypot(wider, (ellipse.halfWidth * girth.sd) / girth.value),
    elbowStation: model['elbow-station'] * sizeFactor(girth.value, model),
  };
  return readOnce(photo, guess, model);
}

const numbers = Object.keys(photoNumbers) as (keyof typeof photoNumbers)[];
const last = new WeakMap<Photo, { readonly key: string; readonly reading: PhotoReading }>();

/** `ask` reads one photo hundreds of times, so we keep the last reading. */
function readOnce(photo: Photo, guess: Guess, model: Model): PhotoReading {
  const { ellipse, halfWidthSd, elbowStation } = guess;
  const own = [ellipse.halfWidth, ellipse.halfDepth, halfWidthSd, elbowStation];
  const key = [...own, ...numbers.map((name) => model[name])].join(' ');
  const kept = last.get(photo);
  if (kept?.key === key) return kept.reading;
  const reading = readLandmarks(photo, guess, model);
  last.set(photo, { key, reading });
  return reading;
}
