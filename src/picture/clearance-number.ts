/** What stands at the line of a clearance, on every kind of picture: a bar at each end, the number and its give or take. */
import type { Clearance } from '../fit/candidate.ts';
import { quantityText, type Units } from '../report/text.ts';
import { dist, gap, overlap } from '../units/phrase.ts';
import { textWidth } from './letters.ts';
import { segment, type Point, type Shape } from './scene.ts';

/** Half of a bar across an end of the line, points. */
const BAR = 4;

/** The two lines with the hand each is written in, and the points the wider one takes. */
export function clearanceNumber({ inches, sd }: Clearance, units: Units) {
  const number = quantityText(inches < 0 ? overlap(-inches) : gap(inches), units);
  const texts = [
    { text: inches < 0 ? `${number} over` : number, hand: 'number' },
    { text: `± ${quantityText(dist(sd), units)}`, hand: 'text' },
  ] as const;
  return { texts, width: Math.max(...texts.map(({ text, hand }) => textWidth(text, hand))) };
}

/** A bar across each end, as the legend shows it. */
export function endBars(from: Point, to: Point): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-6) return [];
  const aside: Point = [(BAR * (to[1] - from[1])) / length, (BAR * (to[0] - from[0])) / length];
  return [from, to].map(([x, y]) =>
    segment([x - aside[0], y + aside[1]], [x + aside[0], y - aside[1]], 'clearance'),
  );
}
