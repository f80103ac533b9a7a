/** The column that says what the lines of a picture mean, and how far they can be trusted. */
import type { Advice } from '../advice/advice.ts';
import { whoseText } from '../report/about-order.ts';
import { roughLength, spreadNumber, type Units } from '../report/text.ts';
import { formatLength } from '../units/print.ts';
import { hatched } from './hatch.ts';
import { linesAt, textLines } from './letters.ts';
import { hands, leading, type StrokeName } from './look.ts';
import { box, segment, type Point, type Shape } from './scene.ts';

export interface Entry {
  /** Swatch in a field of that size, its top left corner at a point. */
  readonly swatch: (at: Point, size: readonly [number, number]) => readonly Shape[];
  readonly text: string;
}

const SWATCH: readonly [number, number] = [24, 10];
const TEXT = 31;
const BETWEEN = 3.5;

/** Entries under each other from a point down; returns them with the height they take. */
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

/** A line across the middle of the swatch. */
const across =
  (stroke: StrokeName): Entry['swatch'] =>
  ([x, y], [width, height]) => [segment([x, y + height / 2], [x + width, y + height / 2], stroke)];

const corner = ([x, y]: Point, [width, height]: readonly [number, number]): Point => [x + width, y + height];

const cords: Entry['swatch'] = (at, size) => {
  const [x, y] = at;
  const [, bottom] = corner(at, size);
  return [
    box(at, corner(at, size), { fill: 'cord', stroke: 'edge' }),
    ...[1, 2, 3, 4, 5].map((i) => segment([x + i * 4, y], [x + i * 4, bottom], 'strand')),
  ];
};

const woven: Entry['swatch'] = (at, size) => {
  const [right] = corner(at, size);
  const [x, y] = at;
  return [
    box(at, corner(at, size), { fill: 'woven', stroke: 'weave' }),
    ...[1, 2, 3].map((i) => segment([x, y + i * 2.5], [right, y + i * 2.5], 'weave')),
  ];
};

const buckle: Entry['swatch'] = ([x, y], [width, height]) => [
  box([x + 3, y], [x + width - 3, y + height], { fill: 'paper', stroke: 'buckle' }),
  segment([x + 3, y + height * 0.6], [x + width - 3, y + height * 0.6], 'buckle'),
  segment([x + width / 2, y + height * 0.6], [x + width / 2, y], 'buckle'),
];

const latigo: Entry['swatch'] = ([x, y], [, height]) => [
  box([x + 2, y], [x + 10, y + height], { fill: 'strap', stroke: 'strap' }),
  { kind: 'circle', at: [x + 18, y + height / 2], radius: 4.5, stroke: 'ring' },
];

const limb: Entry['swatch'] = (at, size) => {
  const [x, y] = at;
  const [right, bottom] = corner(at, size);
  const outline: Point[] = [at, [right, y], [right, bottom], [x, bottom]];
  return [...hatched(outline, 'limb'), segment([right, y], [right, bottom], 'elbow')];
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

/** What the lines on the side of the horse mean, in the order in which they are looked for. */
export function sideLegend(facts: Advice['facts'], units: Units): Entry[] {
  const { room, floor, required } = facts;
  const by = (inches: number): string => formatLength(inches, units, 'computed');
  const whence = room.kind === 'measured' ? 'taped' : room.kind;
  return [
    { swatch: measured, text: 'nearest place to the elbow: its clearance, with its give or take' },
    {
      swatch: across('elbow'),
      text: `back of the elbow, ${roughLength(room.value, units)} ahead of the girth groove (${whence})`,
    },
    { swatch: band, text: `give or take of that line, ${spreadNumber(room.sd, units)} ${units}` },
    { swatch: limb, text: 'the elbow and its muscle: no cinch belongs there' },
    {
      swatch: across('wanted'),
      text: `wanted clearance, ${by(required)}${whoseText(facts, 'required-clearance')}`,
    },
    {
      swatch: across('least'),
      text: `least clearance, ${by(floor)}${whoseText(facts, 'floor-clearance')}: nearer is refused`,
    },
    { swatch: cords, text: 'cinch, front edge to the left' },
    { swatch: woven, text: 'woven bars' },
    { swatch: buckle, text: 'buckle' },
    { swatch: latigo, text: 'latigo and ring; their own size is only usual' },
    { swatch: across('middle'), text: 'chest midline' },
    { swatch: across('horse'), text: 'foreleg, hinted at: not this horse' },
  ];
}
