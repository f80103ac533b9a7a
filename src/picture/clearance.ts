/** The clearance as it is drawn: a line between the two points it was measured between, and its number. */
import type { Facts } from '../facts/facts.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { Units } from '../report/text.ts';
import { clearanceNumber, endBars } from './clearance-number.ts';
import { box, segment, type Layer, type Place, type Point, type Shape } from './scene.ts';

/** White round the number, points. */
const PAD = 3;
/** From the elbow line to the number. */
const ASIDE = 9;
const LINE = 11;

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
  const { clearance } = candidate;
  const from = place(clearance.from);
  const to = place(clearance.to);
  const sides = from[0] < to[0] ? ([from, to] as const) : ([to, from] as const);
  return {
    name: 'clearance',
    shapes: [
      { kind: 'line', points: [from, to], stroke: 'clearance' },
      ...endBars(from, to),
      ...numberShapes(candidate, sides, { units, left, below: clearance.to[1] > middleOf(facts) }),
    ],
  };
}

/** Between armpit and point of elbow. */
const middleOf = ({ model, k, elbowStation }: Facts): number =>
  (model['armpit-station'] * k + elbowStation) / 2;

/**
 * The elbow line draws away forward above the elbow and below the armpit: the number keeps to the other side of its leader. Where there is
 * no room for it forward, to the left of the line, it stands behind.
 */
function numberShapes(
  { clearance }: Candidate,
  [foremost, hindmost]: readonly [Point, Point],
  { units, left, below }: { units: Units; left: number; below: boolean },
): Shape[] {
  const { texts, width: wide } = clearanceNumber(clearance, units);
  const width = wide + 2 * PAD;
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
