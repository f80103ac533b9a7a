/** How pictures mark a clearance: end bars, number, give or take. */
import type { Clearance } from '../cinch/candidate.ts';
import { quantityText, type Units } from '../units/text.ts';
import { dist, gap, overlap } from '../units/phrase.ts';
import { textWidth } from './letters.ts';
import { box, segment, type Point, type Shape } from './scene.ts';

/** Half an end bar, points. */
const BAR = 4;

const LINE = 11;
const PAD = 4;

/** The number in a white box: its width, and shapes from a top left corner. */
export function clearanceNumber({ inches, sd }: Clearance, units: Units) {
  const number = quantityText(inches < 0 ? overlap(-inches) : gap(inches), units);
  const texts = [
    { text: inches < 0 ? `${number} over` : number, hand: 'number' },
    { text: `± ${quantityText(dist(sd), units)}`, hand: 'text' },
  ] as const;
  const width = Math.max(...texts.map(({ text, hand }) => textWidth(text, hand))) + 2 * PAD;
  const shapes = ([x, y]: Point): Shape[] => [
    box([x, y], [x + width, y + numberHeight], { fill: 'paper', stroke: 'leader' }),
    ...texts.map(({ text, hand }, i): Shape => ({
      kind: 'label',
      at: [x + width / 2, y + LINE * (i + 1) - (i === 0 ? 1.5 : 2.5)],
      text,
      hand,
      anchor: 'middle',
    })),
  ];
  return { width, shapes };
}

export const numberHeight = 2 * LINE + 1;

/** Across the line's ends. */
export function endBars(from: Point, to: Point): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-6) return [];
  const aside: Point = [(BAR * (to[1] - from[1])) / length, (BAR * (to[0] - from[0])) / length];
  return [from, to].map(([x, y]) =>
    segment([x - aside[0], y + aside[1]], [x + aside[0], y - aside[1]], 'clearance'),
  );
}
