/** The elbow line, its give or take and the least clearance, inches. */
import type { Facts } from '../horse/facts.ts';
import { within } from './clip.ts';
import { pointsOf } from './side.ts';
import type { Layer, Point, Shape } from './scene.ts';

/** Part of the side drawn, inches. */
export interface Extent {
  readonly back: number;
  readonly forward: number;
  readonly low: number;
  readonly high: number;
}

/** Lies under the cinch. */
export function giveLayer(facts: Facts, extent: Extent): Layer {
  const line = pointsOf(facts.elbowLine);
  const [ahead = [], behind = []] = [facts.room.sd, -facts.room.sd].map((by) =>
    seenOf(
      line.map(([x, s]): Point => [x + by, s]),
      facts,
      extent,
    ),
  );
  return {
    name: 'give-or-take',
    shapes: [
      { kind: 'area', points: [...ahead, ...behind.toReversed()], fill: 'band' },
      ...[ahead, behind].map((points): Shape => ({ kind: 'line', points, stroke: 'spread' })),
    ],
  };
}

/** Lies over the cinch. */
export function elbowLayers(facts: Facts, extent: Extent): Layer[] {
  const line = pointsOf(facts.elbowLine);
  const drawn = (points: readonly Point[], stroke: 'least' | 'elbow'): Shape[] => [
    { kind: 'line', points: seenOf(points, facts, extent), stroke },
  ];
  return [
    { name: 'keep-clear', shapes: drawn(behindBy(line, facts.floor), 'least') },
    { name: 'elbow-line', shapes: drawn(line, 'elbow') },
  ];
}

/** Up to the ring: no cinch reaches higher. */
const seenOf = (line: readonly Point[], { ring }: Facts, { back, forward }: Extent): Point[] =>
  within(line, { from: [back, 0], to: [forward, ring.station.value] })[0] ?? [];

/** Arc steps per corner. */
const ARC = 8;

/** A line at a true distance behind another: an arc at each corner. */
export function behindBy(line: readonly Point[], distance: number): Point[] {
  const found: Point[] = [];
  let before: number | undefined;
  for (let i = 0; i + 1 < line.length; i++) {
    const [x, s] = line[i] ?? [0, 0];
    const [nextX, nextS] = line[i + 1] ?? [0, 0];
    const angle = Math.atan2(nextX - x, -(nextS - s)); // backward
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
