/** The elbow line with its give or take, what lies forward of it, and how near a cinch may come: shapes in inches on the flat side. */
import type { Facts } from '../facts/facts.ts';
import { pointsOf } from './side.ts';
import type { Layer, Point, Shape } from './scene.ts';

/** What of the side is drawn, inches. */
export interface Extent {
  readonly back: number;
  readonly forward: number;
  readonly low: number;
  readonly high: number;
}

/** Give or take of the elbow line, to lie under a cinch. */
export function giveLayer({ elbowLine, room }: Facts, extent: Extent): Layer {
  const line = pointsOf(elbowLine);
  const [ahead = [], behind = []] = [room.sd, -room.sd].map((by) => cutOff(movedForward(line, by), extent));
  // Up to the height at which the band leaves the picture, then along its edge.
  const corner: Point = [
    Math.max(ahead.at(-1)?.[0] ?? 0, behind.at(-1)?.[0] ?? 0),
    Math.max(ahead.at(-1)?.[1] ?? 0, behind.at(-1)?.[1] ?? 0),
  ];
  return {
    name: 'give-or-take',
    shapes: [
      { kind: 'area', points: [...ahead, corner, ...behind.toReversed()], fill: 'band' },
      ...[ahead, behind].map((points): Shape => ({ kind: 'line', points, stroke: 'spread' })),
    ],
  };
}

/** Least, wanted and the elbow line itself, to lie over it. */
export function elbowLayers({ elbowLine, floor, required }: Facts, extent: Extent): Layer[] {
  const line = pointsOf(elbowLine);
  return [
    {
      name: 'keep-clear',
      shapes: [
        { kind: 'line', points: cutOff(behindBy(line, floor), extent), stroke: 'least' },
        { kind: 'line', points: cutOff(behindBy(line, required), extent), stroke: 'wanted' },
      ],
    },
    { name: 'elbow-line', shapes: [{ kind: 'line', points: cutOff(line, extent), stroke: 'elbow' }] },
  ];
}

/** The side of the elbow, forward of its line. */
export function limbOutline({ elbowLine }: Facts, extent: Extent): Point[] {
  const line = cutOff(pointsOf(elbowLine), extent);
  const [, high = 0] = line.at(-1) ?? [];
  const [, low = 0] = line[0] ?? [];
  return [...line, [extent.forward, high], [extent.forward, low]];
}

const movedForward = (line: readonly Point[], by: number): Point[] =>
  line.map(([x, s]): Point => [x + by, s]);

/** A line with rising stations from the midline up to where it leaves what is drawn. */
function cutOff(line: readonly Point[], { forward, high }: Extent): Point[] {
  const kept: Point[] = [];
  for (const [i, [x, s]] of line.entries()) {
    const [fromX, fromS] = line[i - 1] ?? [x, s];
    if (s < 0) continue;
    if (fromS < 0) kept.push([x - ((x - fromX) * s) / (s - fromS), 0]);
    const outside = Math.max(part(fromX, x, forward), part(fromS, s, high));
    if (outside > 0)
      return i === 0 ? kept : [...kept, [x - (x - fromX) * outside, s - (s - fromS) * outside]];
    kept.push([x, s]);
  }
  return kept;
}

/** How much of a step lies beyond a bound: 0 to 1. */
const part = (from: number, to: number, bound: number): number =>
  to <= bound ? 0 : Math.min(1, (to - bound) / Math.max(1e-9, to - from));

/** Steps of the arc round a corner. */
const ARC = 8;

/** The points so far behind a line, truly measured: its pieces moved square to themselves, with an arc round each corner. */
export function behindBy(line: readonly Point[], distance: number): Point[] {
  const found: Point[] = [];
  let before: number | undefined;
  for (let i = 0; i + 1 < line.length; i++) {
    const [x, s] = line[i] ?? [0, 0];
    const [nextX, nextS] = line[i + 1] ?? [0, 0];
    const angle = Math.atan2(nextX - x, -(nextS - s)); // of the direction square to it, backward
    const from = before ?? angle;
    const turn = Math.atan2(Math.sin(angle - from), Math.cos(angle - from));
    const steps = before === undefined ? 0 : ARC;
    for (let step = 0; step <= steps; step++) {
      const at = steps === 0 ? angle : from + (turn * step) / steps;
      found.push([x + distance * Math.cos(at), s + distance * Math.sin(at)]);
    }
    found.push([nextX + distance * Math.cos(angle), nextS + distance * Math.sin(angle)]);
    before = angle;
  }
  return found;
}
