/** The clearance as it is drawn: a line between the two points it was measured between, and its number. */
import type { Facts } from '../facts/facts.ts';
import type { Candidate } from '../fit/candidate.ts';
import { nearestGap } from '../fit/nearest.ts';
import { spreadNumber, type Units } from '../report/text.ts';
import { formatLength } from '../units/print.ts';
import { arrow } from './look.ts';
import { textWidth } from './letters.ts';
import { box, segment, type Layer, type Place, type Point, type Shape } from './scene.ts';

/** White round the number, points. */
const PAD = 3;
/** From the elbow line to the number. */
const ASIDE = 9;
const LINE = 11;
/** Between points nearer than this an arrow would be longer than its line. */
const SHORT = 3 * arrow.length;

export interface ClearanceOn {
  readonly place: Place;
  readonly units: Units;
  /** Left edge of the panel, points. */
  readonly left: number;
}

/** The line on the paper, its number beside it on the side of the elbow. */
export function clearanceLayer(
  candidate: Candidate,
  facts: Facts,
  { place, units, left }: ClearanceOn,
): Layer {
  const { px, ps, qx, qs } = nearestGap(candidate, facts);
  const from = place([px, ps]);
  const to = place([qx, qs]);
  const ends = from[0] < to[0] ? ([from, to] as const) : ([to, from] as const);
  return {
    name: 'clearance',
    shapes: [
      { kind: 'line', points: [from, to], stroke: 'clearance' },
      ...heads(from, to),
      ...numberShapes(candidate, ends, { units, left, below: qs > middleOf(facts) }),
    ],
  };
}

/** Between armpit and point of elbow. */
const middleOf = ({ model, k, elbowStation }: Facts): number =>
  (model['armpit-station'] * k + elbowStation) / 2;

/** Arrow heads inside of the line, or, where it is short, a bar across each end. */
function heads(from: Point, to: Point): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 1e-6) return [];
  const along: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = ([x, y]: Point, far: number, aside: number): Point => [
    x + along[0] * far - along[1] * aside,
    y + along[1] * far + along[0] * aside,
  ];
  const bars = [from, to].map((end): Shape => ({
    kind: 'line',
    points: [at(end, 0, 2 * arrow.half), at(end, 0, -2 * arrow.half)],
    stroke: 'clearance',
  }));
  if (length < SHORT) return bars;
  const head = (end: Point, inward: number): Shape => ({
    kind: 'area',
    points: [end, at(end, inward * arrow.length, arrow.half), at(end, inward * arrow.length, -arrow.half)],
    fill: 'ink',
  });
  return [head(from, 1), head(to, -1)];
}

/**
 * The elbow line draws away forward above the elbow and below the armpit: the number keeps to the other side of its leader. Where there is
 * no room for it forward, to the left of the line, it stands behind.
 */
function numberShapes(
  { clearance: { inches, sd } }: Candidate,
  [foremost, hindmost]: readonly [Point, Point],
  { units, left, below }: { units: Units; left: number; below: boolean },
): Shape[] {
  const number = formatLength(Math.abs(inches), units, 'computed');
  const texts = [
    { text: inches < 0 ? `${number} over` : number, hand: 'number' },
    { text: `± ${spreadNumber(sd, units)}`, hand: 'fine' },
  ] as const;
  const width = Math.max(...texts.map(({ text, hand }) => textWidth(text, hand))) + 2 * PAD;
  const fits = foremost[0] - ASIDE - width > left + PAD;
  const [x, y] = fits ? foremost : hindmost;
  const near = fits ? x - ASIDE : x + ASIDE;
  const start = fits ? near - width : near;
  const top = below ? y - 4 : y + 4.5 - 2 * LINE;
  return [
    segment([x, y], [near, y], 'leader'),
    box([start, top], [start + width, top + 2 * LINE - 0.5], { fill: 'paper', stroke: 'leader' }),
    ...texts.map(({ text, hand }, i): Shape => ({
      kind: 'label',
      at: [start + width / 2, top + LINE * (i + 1) - (i === 0 ? 2 : 4)],
      text,
      hand,
      anchor: 'middle',
    })),
  ];
}
