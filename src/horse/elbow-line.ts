/** The elbow line, unrolled: upright at the elbow, opening above and below. */
import type { Model } from '../numbers/numbers.ts';
import { sizeFactor } from './girth.ts';

/** [x, s, ...] of midline, armpit, point of elbow, top of barrel. */
export type ElbowLine = Float64Array;

/** All in inches. */
export function elbowLineOf(room: number, girth: number, model: Model): ElbowLine {
  const k = sizeFactor(girth, model);
  const armpit = model['armpit-station'] * k;
  const elbow = model['elbow-station'] * k;
  const top = girth / 2;
  return Float64Array.of(
    room + model['opening-below'] * armpit,
    0,
    room,
    armpit,
    room,
    elbow,
    room + model['opening-above'] * (top - elbow),
    top,
  );
}
