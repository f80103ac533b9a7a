/** The clearance as it is drawn: a line between the two points it was measured between, and its number. */
import type { Facts } from '../horse/facts.ts';
import type { Clearance } from '../cinch/candidate.ts';
import type { Units } from '../units/text.ts';
import { clearanceNumber, endBars, numberHeight } from './clearance-number.ts';
import { segment, type Layer, type Place, type Point, type Shape } from './scene.ts';

/** From the elbow line to the number. */
const ASIDE = 9;

export interface ClearanceOn {
  readonly place: Place;
  readonly units: Units;
  /** Left edge of the panel, points. */
  readonly left: number;
}

/** The line on the paper, its number beside it on the side of the elbow. */
export function clearanceLayer(
  clearance: Clearance,
  facts: Facts,
  { place, units, left }: ClearanceOn,
): Layer {
  const from = place(clearance.from);
  const to = place(clearance.to);
  const sides = from[0] < to[0] ? ([from, to] as const) : ([to, from] as const);
  return {
    name: 'clearance',
    shapes: [
      { kind: 'line', points: [from, to], stroke: 'clearance' },
      ...endBars(from, to),
      ...numberShapes(clearance, sides, { units, left, below: clearance.to[1] > middleOf(facts) }),
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
  clearance: Clearance,
  [foremost, hindmost]: readonly [Point, Point],
  { units, left, below }: { units: Units; left: number; below: boolean },
): Shape[] {
  const { width, shapes } = clearanceNumber(clearance, units);
  const fits = foremost[0] - ASIDE - width > left;
  const [x, y] = fits ? foremost : hindmost;
  const near = fits ? x - ASIDE : x + ASIDE;
  const top = below ? y - 4 : y + 4 - numberHeight;
  return [segment([x, y], [near, y], 'leader'), ...shapes([fits ? near - width : near, top])];
}
