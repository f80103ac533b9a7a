/** The legend: what lines mean, and how sure they are. */
import type { Advice } from '../advice/advice.ts';
import { quantityText, type Units } from '../units/text.ts';
import { dist } from '../units/phrase.ts';
import { hatched } from './hatch.ts';
import { linesAt, textLines } from './letters.ts';
import { hands, leading, type StrokeName } from './look.ts';
import { box, segment, type Point, type Shape } from './scene.ts';

export interface Entry {
  readonly swatch: (at: Point, size: readonly [number, number]) => readonly Shape[];
  readonly text: string;
}

const SWATCH: readonly [number, number] = [24, 10];
const TEXT = 31;
const BETWEEN = 3.5;

/** Returns shapes and their height. */
export function legendShapes(
  entries: readonly Entry[],
  [x, y]: Point,
  width: number,
): { shapes: Shape[]; height: number } {
  const shapes: Shape[] = [];
  let down = 0;
  for (const { swatch, text } of entries) {
    const lines = textLines(text, 'text', { width: width - TEXT });
    shapes.push(...swatch([x, y + down], SWATCH), ...linesAt(lines, 'text', [x + TEXT, y + down]));
    down += Math.max(SWATCH[1], lines.length * hands.text.size * leading) + BETWEEN;
  }
  return { shapes, height: down };
}

const across =
  (stroke: StrokeName): Entry['swatch'] =>
  ([x, y], [width, height]) => [segment([x, y + height / 2], [x + width, y + height / 2], stroke)];

const corner = ([x, y]: Point, [width, height]: readonly [number, number]): Point => [x + width, y + height];

const latigo: Entry['swatch'] = ([x, y], [, height]) => [
  box([x + 2, y], [x + 10, y + height], { fill: 'strap', stroke: 'strap' }),
  { kind: 'circle', at: [x + 18, y + height / 2], radius: 4.5, stroke: 'ring' },
];

const limb: Entry['swatch'] = (at, size) => {
  const [x, y] = at;
  const [right, bottom] = corner(at, size);
  const outline: Point[] = [at, [right, y], [right, bottom], [x, bottom]];
  return [...hatched(outline), segment([right, y], [right, bottom], 'elbow')];
};

const band: Entry['swatch'] = (at, size) => {
  const [x, y] = at;
  const [right, bottom] = corner(at, size);
  return [
    box(at, [right, bottom], { fill: 'band' }),
    segment([x, y], [right, y], 'spread'),
    segment([x, bottom], [right, bottom], 'spread'),
  ];
};

const measured: Entry['swatch'] = ([x, y], [width, height]) => [
  segment([x + 3, y + height / 2], [x + width - 3, y + height / 2], 'clearance'),
  segment([x + 3, y + 1], [x + 3, y + height - 1], 'clearance'),
  segment([x + width - 3, y + 1], [x + width - 3, y + height - 1], 'clearance'),
];

/** In reading order. */
export function sideLegend(facts: Advice['facts'], units: Units): Entry[] {
  const { room, floor } = facts;
  const known = room.kind === 'measured' ? 'taped' : room.kind === 'photo' ? 'by photo' : room.kind;
  return [
    { swatch: across('elbow'), text: `back of the elbow (${known})` },
    { swatch: band, text: `give or take ${quantityText(dist(room.sd), units)}` },
    { swatch: limb, text: 'no cinch belongs here' },
    {
      swatch: across('least'),
      text: `least it needs, ${quantityText(dist(floor), units)}`,
    },
    { swatch: measured, text: 'nearest to the elbow' },
    { swatch: latigo, text: 'latigo and rigging ring' },
  ];
}
