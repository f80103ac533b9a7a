/** The lines on a photo: cinch, buckle, strap, back of the elbow, least clearance. */
import type { Candidate } from '../../cinch/candidate.ts';
import { widthAt } from '../../cinch/outline.ts';
import { clearanceNumber, endBars, numberHeight } from '../../draw/clearance-number.ts';
import { within } from '../../draw/clip.ts';
import { behindBy } from '../../draw/elbow.ts';
import { textWidth } from '../../draw/letters.ts';
import { box, segment, type Layer, type Place, type Point, type Shape } from '../../draw/scene.ts';
import { cinchLayers, pointsOf } from '../../draw/side.ts';
import type { Facts } from '../../horse/facts.ts';
import type { Units } from '../../units/text.ts';
import { nearest } from '../../words/counter-words.ts';
import { bent } from './place.ts';

/** Outlines only: strands and weaves would hide the photo. */
const outlined = ['latigo', 'cords', 'buckle'];

/** From the bottom up. */
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

/** The edges of another cinch, to compare. */
export function otherOnPhoto(candidate: Candidate, { facts, place }: OnPhoto, name: string): Layer {
  const cords = cinchLayers(candidate, facts).find((layer) => layer.name === 'cords')?.shapes ?? [];
  const shapes = cords.map((shape): Shape => {
    const { points } = bent(shape, place) as Shape & { kind: 'area' };
    return { kind: 'line', points: points[0] === undefined ? [] : [...points, points[0]], stroke: 'other' };
  });
  return { name, shapes: haloed(shapes) };
}

/** Points. */
const OFF = 16;
/** Shares of each cinch's height, so that names do not overlap. */
const places = [0.75, 0.55, 0.38, 0.25];

/** A cinch's name, at its back edge. */
export function tagOnPhoto(
  { candidate, tag }: { candidate: Candidate; tag: string },
  { facts, place, facing, size }: OnPhoto,
  nth: number,
): Layer {
  const { shape } = candidate;
  const s = shape.top * (places[nth] ?? 0.2);
  const { slope } = facts.centreLine;
  const edge = place([slope * s - widthAt(shape, s) / 2, s]);
  const width = textWidth(tag, 'strong') + 8;
  const wanted = facing < 0 ? edge[0] + OFF : edge[0] - OFF - width;
  const left = Math.min(size[0] - width - 2, Math.max(2, wanted));
  const y = Math.min(size[1] - 9, Math.max(9, edge[1]));
  const near: Point = [facing < 0 ? left : left + width, y];
  return {
    name: 'tag',
    shapes: [
      ...haloed([segment(edge, near, 'leader')]),
      box([left, y - 7], [left + width, y + 7], { fill: 'paper', stroke: 'leader' }),
      { kind: 'label', at: [left + width / 2, y + 3], text: tag, hand: 'strong', anchor: 'middle' },
    ],
  };
}

function open(shape: Shape): Shape {
  if (shape.kind !== 'area') return shape;
  const { kind, points, stroke } = shape;
  return { kind, points, ...(stroke === undefined ? {} : { stroke }) };
}

/** Ends just above the elbow: higher up it means little on a photo. */
function elbowOnPhoto({ facts, place }: OnPhoto): Layer {
  const { elbowLine, elbowStation, k, floor } = facts;
  const top = elbowStation + 4 * k;
  const upTo = (points: readonly Point[]): Point[] =>
    within(points, { from: [-Infinity, 0], to: [Infinity, top] })[0] ?? [];
  const line = pointsOf(elbowLine);
  const shapes: Shape[] = [
    { kind: 'line', points: upTo(behindBy(line, floor)), stroke: 'least' },
    { kind: 'line', points: upTo(line), stroke: 'elbow' },
  ];
  return { name: 'elbow', shapes: haloed(shapes.map((shape) => bent(shape, place))) };
}

const ASIDE = 26;

function clearanceOnPhoto(candidate: Candidate, { place, units, facing, size }: OnPhoto): Layer {
  const clearance = nearest(candidate);
  const [from, to] = [place(clearance.from), place(clearance.to)];
  const { width, shapes } = clearanceNumber(clearance, units);
  const wanted = facing < 0 ? to[0] - ASIDE - width : to[0] + ASIDE;
  const left = Math.min(size[0] - width - 2, Math.max(2, wanted));
  const half = numberHeight / 2;
  const middle = Math.min(size[1] - half - 2, Math.max(half + 2, to[1]));
  return {
    name: 'clearance',
    shapes: [
      ...haloed([{ kind: 'line', points: [from, to], stroke: 'clearance' }, ...endBars(from, to)]),
      segment(to, [facing < 0 ? left + width : left, middle], 'leader'),
      ...shapes([left, middle - half]),
    ],
  };
}

export interface OnPhoto {
  readonly facts: Facts;
  readonly place: Place;
  readonly units: Units;
  /** 1 when the horse faces right, -1 left. */
  readonly facing: 1 | -1;
  /** Points. */
  readonly size: readonly [number, number];
}

/** White under each line, so it shows on any horse. */
export function haloed(shapes: readonly Shape[]): Shape[] {
  const halos = shapes.flatMap((shape): Shape[] =>
    shape.kind === 'label' || shape.stroke === undefined ? [] : [{ ...shape, stroke: 'halo' }],
  );
  return [...halos, ...shapes];
}
