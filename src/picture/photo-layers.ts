/** What is drawn over a photo: the edges of the cinch, its buckle and strap, the back of the elbow, the least clearance, and the clearance with its number. */
import type { Facts } from '../facts/facts.ts';
import type { Candidate } from '../fit/candidate.ts';
import { nearestGap } from '../fit/nearest.ts';
import { spreadNumber, type Units } from '../report/text.ts';
import { formatLength } from '../units/print.ts';
import { behindBy } from './elbow.ts';
import { textWidth } from './letters.ts';
import { bent } from './photo-place.ts';
import { box, segment, type Layer, type Place, type Point, type Shape } from './scene.ts';
import { cinchLayers, pointsOf } from './side.ts';

export interface OnPhoto {
  readonly facts: Facts;
  readonly place: Place;
  readonly units: Units;
  /** 1 when the horse looks to the right, -1 to the left. */
  readonly facing: 1 | -1;
  /** Of the photo on the paper, points: no number leaves it. */
  readonly size: readonly [number, number];
}

/** Layers of a side picture that are drawn as outlines; strands and woven rows would hide the photo. */
const outlined = ['latigo', 'cords', 'buckle'];

/** All layers of one cinch, from the bottom up. */
export function cinchOnPhoto(candidate: Candidate, on: OnPhoto): Layer[] {
  const { facts, place } = on;
  const layers = cinchLayers(candidate, facts)
    .filter(({ name }) => outlined.includes(name))
    .map(({ name, shapes }): Layer => ({
      name,
      shapes: haloed(shapes.map((shape) => open(bent(shape, place)))),
    }));
  return [...layers, elbowOnPhoto(on), clearanceOnPhoto(candidate, on)];
}

/** The edges of another cinch, to be held against the first. */
export function otherOnPhoto(candidate: Candidate, { facts, place }: OnPhoto, name: string): Layer {
  const cords = cinchLayers(candidate, facts).find((layer) => layer.name === 'cords')?.shapes ?? [];
  const shapes = cords.map((shape): Shape => {
    const { points } = bent(shape, place) as Shape & { kind: 'area' };
    return { kind: 'line', points: points[0] === undefined ? [] : [...points, points[0]], stroke: 'other' };
  });
  return { name, shapes: haloed(shapes) };
}

/** Without what fills it. */
function open(shape: Shape): Shape {
  if (shape.kind !== 'area') return shape;
  const { kind, points, stroke } = shape;
  return { kind, points, ...(stroke === undefined ? {} : { stroke }) };
}

/** Every line once in white and wider, under all of them: it is seen on a black horse and on a white one. */
function haloed(shapes: readonly Shape[]): Shape[] {
  const halos = shapes.flatMap((shape): Shape[] =>
    shape.kind === 'label' || shape.stroke === undefined ? [] : [{ ...shape, stroke: 'halo' }],
  );
  return [...halos, ...shapes];
}

/** From the lowest place seen up to a little above the point of the elbow: further up the line means little on a photo. */
function elbowOnPhoto({ facts, place }: OnPhoto): Layer {
  const { elbowLine, elbowStation, k, floor } = facts;
  const top = elbowStation + 4 * k;
  const upTo = (points: readonly Point[]): Point[] => {
    const kept: Point[] = [];
    for (const [i, [x, s]] of points.entries()) {
      const [fromX, fromS] = points[i - 1] ?? [x, s];
      if (s > top) {
        kept.push([fromX + ((x - fromX) * (top - fromS)) / (s - fromS), top]);
        break;
      }
      if (s >= 0) kept.push([x, s]);
    }
    return kept;
  };
  const line = pointsOf(elbowLine);
  const shapes: Shape[] = [
    { kind: 'line', points: upTo(behindBy(line, floor)), stroke: 'least' },
    { kind: 'line', points: upTo(line), stroke: 'elbow' },
  ];
  return { name: 'elbow', shapes: haloed(shapes.map((shape) => bent(shape, place))) };
}

/** White round the number, points. */
const PAD = 4;
const LINE = 12;
const ASIDE = 26;

/** The line of the clearance, and its number on the side of the elbow. */
function clearanceOnPhoto(candidate: Candidate, { facts, place, units, facing, size }: OnPhoto): Layer {
  const { px, ps, qx, qs } = nearestGap(candidate, facts);
  const [from, to] = [place([px, ps]), place([qx, qs])];
  const { inches, sd } = candidate.clearance;
  const number = formatLength(Math.abs(inches), units, 'computed');
  const texts = [
    { text: inches < 0 ? `${number} over` : number, hand: 'number' },
    { text: `± ${spreadNumber(sd, units)}`, hand: 'fine' },
  ] as const;
  const width = Math.max(...texts.map(({ text, hand }) => textWidth(text, hand))) + 2 * PAD;
  const end = to;
  const wanted = facing < 0 ? end[0] - ASIDE - width : end[0] + ASIDE;
  const left = Math.min(size[0] - width - 2, Math.max(2, wanted));
  const middle = Math.min(size[1] - LINE - 2, Math.max(LINE + 2, end[1]));
  const leader: Point = [facing < 0 ? left + width : left, middle];
  return {
    name: 'clearance',
    shapes: [
      ...haloed([{ kind: 'line', points: [from, to], stroke: 'clearance' }, ...bars(from, to)]),
      segment(end, leader, 'leader'),
      box([left, middle - LINE], [left + width, middle + LINE], { fill: 'paper', stroke: 'leader' }),
      ...texts.map(({ text, hand }, i): Shape => ({
        kind: 'label',
        at: [left + width / 2, middle + (i === 0 ? -2 : LINE - 3)],
        text,
        hand,
        anchor: 'middle',
      })),
    ],
  };
}

/** A bar across each end. */
function bars(from: Point, to: Point): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-6) return [];
  const aside: Point = [(-4 * (to[1] - from[1])) / length, (4 * (to[0] - from[0])) / length];
  return [from, to].map(([x, y]) =>
    segment([x + aside[0], y + aside[1]], [x - aside[0], y - aside[1]], 'clearance'),
  );
}
