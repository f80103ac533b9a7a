/** The clearance: a line between the points measured, and its number. */
import type { Facts } from '../horse/facts.ts';
import type { Clearance } from '../cinch/candidate.ts';
import type { Units } from '../units/text.ts';
import { clearanceNumber, endBars, numberHeight } from './clearance-number.ts';
import { segment, type Layer, type Place, type Point, type Shape } from './scene.ts';

/** Points from the elbow line to the number. */
const ASIDE = 9;

export interface ClearanceOn {
  readonly place: Place;
  readonly units: Units;
  /** Points. */
  readonly left: number;
}

/** Its number is on the elbow's side. */
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

/** The elbow line runs forward above and below, so the number goes beyond its leader, or behind where there is no room. */
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
