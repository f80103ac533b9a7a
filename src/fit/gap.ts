/** The gap between a leading edge and the elbow line: the true least distance, negative where one lies over the other. */
import { nearestApart, newNearest } from '../geometry/polyline.ts';

/** Nearest pair of points: p on the leading edge, q on the elbow line; `distance` is negative where the cinch lies over it. */
export interface Gap {
  distance: number;
  px: number;
  ps: number;
  qx: number;
  qs: number;
}

// Hundreds of gaps are measured for one order and none is kept.
const gap: Gap = { distance: 0.5, px: 0.5, ps: 0.5, qx: 0.5, qs: 0.5 };
const nearest = newNearest();

/**
 * Signed gap between a leading edge and an elbow line, both flat [x, s, ...] with rising stations (frame corners share
 * one); valid until the next call. Where they overlap: minus the greatest overlap along x, so that the gap passes
 * smoothly through zero.
 */
export function gapBetween(edge: Float64Array, elbow: Float64Array): Gap {
  if (mostForward(edge) >= leastForward(elbow) && overlaps(edge, elbow)) return gap;
  gap.distance = nearestApart(nearest, edge, elbow);
  gap.px = nearest.ax;
  gap.ps = nearest.ay;
  gap.qx = nearest.bx;
  gap.qs = nearest.by;
  return gap;
}

function mostForward(line: Float64Array): number {
  let most = line[0] as number;
  for (let i = 2; i < line.length; i += 2) if ((line[i] as number) > most) most = line[i] as number;
  return most;
}

function leastForward(line: Float64Array): number {
  let least = line[0] as number;
  for (let i = 2; i < line.length; i += 2) if ((line[i] as number) < least) least = line[i] as number;
  return least;
}

/** Whether there is an overlap along x; if so, the greatest, at a corner of either line: between corners both are straight. */
function overlaps(edge: Float64Array, elbow: Float64Array): boolean {
  gap.distance = 0;
  for (let i = 1; i < edge.length; i += 2) {
    const s = edge[i] as number;
    keep(edge[i - 1] as number, forwardAt(elbow, s), s);
  }
  for (let i = 1; i < elbow.length; i += 2) {
    const s = elbow[i] as number;
    if (s < (edge[1] as number) || s > (edge[edge.length - 1] as number)) continue;
    keep(forwardAt(edge, s), elbow[i - 1] as number, s);
  }
  return gap.distance < 0;
}

function keep(x: number, elbowX: number, s: number): void {
  if (elbowX - x >= gap.distance) return;
  gap.distance = elbowX - x;
  gap.px = x;
  gap.qx = elbowX;
  gap.ps = s;
  gap.qs = s;
}

/** x of a line with rising stations at station s, held level beyond its ends; of corners that share a station the last. */
function forwardAt(line: Float64Array, s: number): number {
  const last = line.length - 1;
  let i = 1;
  while (i < last && (line[i] as number) <= s) i += 2;
  const high = line[i] as number;
  if (i === 1 || s >= high) return line[i - 1] as number;
  const low = line[i - 2] as number;
  const from = line[i - 3] as number;
  return from + (((line[i - 1] as number) - from) * (s - low)) / (high - low);
}
