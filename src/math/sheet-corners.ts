/** Whether four corners on a photo can be those of a flat sheet. */
import type { Point } from './homography.ts';

export type Corners = readonly [Point, Point, Point, Point];

export interface CornerBounds {
  /** Pixels. */
  readonly leastEdge: number;
  /** Farthest over nearest corner. */
  readonly mostDepth: number;
}

/** Worded for order files and the page for marks. */
export interface CornerFault {
  readonly expected: string;
  readonly hint: string;
}

/** Expects corners clockwise from the top left. */
export function cornerFault(
  corners: Corners,
  { leastEdge, mostDepth }: CornerBounds,
): CornerFault | undefined {
  const [a, b, c, d] = corners;
  const shortest = Math.min(apart(a, b), apart(b, c), apart(c, d), apart(d, a));
  if (shortest < leastEdge)
    return {
      expected: `a sheet whose edges are at least ${String(leastEdge)} pixels long`,
      hint: `the shortest is ${String(Math.round(shortest))} pixels long: too short for a scale`,
    };
  const turns = turnsOf(corners);
  if (turns.every((sense) => sense < 0))
    return { expected: 'corners clockwise as seen, from the top left', hint: 'they run counterclockwise' };
  const least = Math.min(...turns);
  const ratio = depthRatio(corners);
  // A shallow dent is a corner clicked slightly off.
  if (turns.filter((sense) => sense > 0).length >= 3 && ratio > mostDepth && -least < Math.max(...turns) / 10)
    return {
      expected: 'a flat sheet seen from the front, no three corners in line',
      hint:
        ratio > 10
          ? 'three of its corners are nearly in line'
          : `one corner would be ${ratio.toFixed(1)} times as far from the camera as another`,
    };
  if (least <= 0)
    return {
      expected: 'corners in order around the sheet, none inside the others',
      hint: 'the edges cross, or a corner is dented in',
    };
  // The top edge comes first: it runs right, more level than upright.
  return Math.abs(b[1] - a[1]) <= b[0] - a[0]
    ? undefined
    : { expected: 'the top left corner of the sheet first', hint: 'the first two are its top edge' };
}

/**
 * Infinite when three are in line. A corner's distance goes with the area of the other three, because a
 * rectangle's diagonals share a middle.
 */
export function depthRatio(corners: Corners): number {
  const areas = turnsOf(corners);
  return Math.max(...areas) / Math.max(0, Math.min(...areas));
}

/** Distance of two points. */
export const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Twice the area of each three corners; positive when clockwise, since pixels count down. */
const turnsOf = ([a, b, c, d]: Corners): number[] => [
  turn(a, b, c),
  turn(b, c, d),
  turn(c, d, a),
  turn(d, a, b),
];

const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
