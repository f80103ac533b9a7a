/** The elbow line on the unrolled side: upright from armpit to point of elbow, opening above and below. */
import type { Model } from '../numbers/numbers.ts';
import { sizeFactor } from './girth.ts';

/** [x0, s0, x1, s1, ...] of midline, armpit, point of elbow and top of barrel. */
export type ElbowLine = Float64Array;

/** From room and girth, inches. */
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
