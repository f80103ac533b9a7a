/** The least distance between two broken lines, and where on each of them it is. */

/** Corners of a broken line as flat [x0, y0, x1, y1, ...]: at least two points; a segment may have no length. */
export type Polyline = Float64Array;

/** Where two broken lines come nearest. */
export interface Nearest {
  distance: number;
  /** Index of the segment on the first and on the second line. */
  segmentA: number;
  segmentB: number;
  /** Fraction along that segment, 0 to 1. */
  t: number;
  u: number;
  /** The two points. */
  ax: number;
  ay: number;
  bx: number;
  by: number;
}

/** An empty result to be filled again and again by `nearestInto`. */
export const newNearest = (): Nearest => ({
  distance: Infinity,
  segmentA: 0,
  segmentB: 0,
  t: 0.5,
  u: 0.5,
  ax: 0.5,
  ay: 0.5,
  bx: 0.5,
  by: 0.5,
});

/** A coordinate; the callers stay within the line. */
const at = (line: Polyline, index: number): number => line[index] as number;

function demandLine(line: Polyline): void {
  if (line.length >= 4 && line.length % 2 === 0) return;
  throw new RangeError(`a broken line of ${line.length} numbers: at least 2 points of two are needed`);
}

/**
 * Least Euclidean distance of two broken lines and where it is, written into `result` (nothing is allocated).
 * Of equally near places the first counts, along A and then along B.
 * @returns the distance; zero when the lines cross or touch; NaN when no coordinate is a number
 * @throws RangeError when a line has fewer than two points
 */
export function nearestInto(result: Nearest, A: Polyline, B: Polyline): number {
  return findCrossing(result, A, B) ? 0 : nearestApart(result, A, B);
}

interface Corner {
  squared: number;
  /** Index of the corner on its line, of the segment on the other, and how far along that segment. */
  corner: number;
  segment: number;
  fraction: number;
}

const cornerOfA: Corner = { squared: 0.5, corner: 0, segment: 0, fraction: 0.5 };
const cornerOfB: Corner = { squared: 0.5, corner: 0, segment: 0, fraction: 0.5 };

/**
 * As `nearestInto`, for lines known not to cross: then they are nearest at a corner of one of them. That never divides
 * by the sine of an angle, so parallel, collinear and pointlike segments need no special case.
 */
export function nearestApart(result: Nearest, A: Polyline, B: Polyline): number {
  demandLine(A);
  demandLine(B);
  nearestCorner(cornerOfA, A, B);
  nearestCorner(cornerOfB, B, A);
  if (cornerOfA.squared <= cornerOfB.squared) {
    result.segmentA = endingAt(cornerOfA.corner);
    result.t = cornerOfA.corner === 0 ? 0 : 1;
    result.segmentB = cornerOfA.segment;
    result.u = cornerOfA.fraction;
  } else {
    result.segmentA = cornerOfB.segment;
    result.t = cornerOfB.fraction;
    result.segmentB = endingAt(cornerOfB.corner);
    result.u = cornerOfB.corner === 0 ? 0 : 1;
  }
  place(result, A, B);
  const squared = Math.min(cornerOfA.squared, cornerOfB.squared);
  // Where nothing compares (coordinates that are no numbers) the lines must not pass for far apart.
  return (result.distance = squared < Infinity ? Math.sqrt(squared) : NaN);
}

/** The segment that ends at a corner; the first corner only begins one. */
const endingAt = (corner: number): number => (corner === 0 ? 0 : corner - 1);

/** The corner of P that comes nearest to Q. */
function nearestCorner(found: Corner, P: Polyline, Q: Polyline): void {
  let best = Infinity;
  for (let i = 0; i < P.length; i += 2) {
    const x = at(P, i);
    const y = at(P, i + 1);
    for (let j = 0; j + 3 < Q.length; j += 2) {
      const qx = at(Q, j);
      const qy = at(Q, j + 1);
      const ux = at(Q, j + 2) - qx;
      const uy = at(Q, j + 3) - qy;
      const dot = (x - qx) * ux + (y - qy) * uy;
      const length = ux * ux + uy * uy;
      const fraction = dot > 0 ? (dot < length ? dot / length : 1) : 0;
      const dx = x - qx - fraction * ux;
      const dy = y - qy - fraction * uy;
      const squared = dx * dx + dy * dy;
      if (squared >= best || Number.isNaN(squared)) continue;
      best = squared;
      found.corner = i / 2;
      found.segment = j / 2;
      found.fraction = fraction;
    }
  }
  found.squared = best;
}

/** One coordinate the fraction t along a segment, exact at both ends; `index` is that of the start's coordinate. */
function along(line: Polyline, index: number, t: number): number {
  const p = at(line, index);
  const q = at(line, index + 2);
  return t === 1 ? q : p + t * (q - p);
}

/** Sets the two points from t and u. */
function place(result: Nearest, A: Polyline, B: Polyline): void {
  const i = 2 * result.segmentA;
  const j = 2 * result.segmentB;
  result.ax = along(A, i, result.t);
  result.ay = along(A, i + 1, result.t);
  result.bx = along(B, j, result.u);
  result.by = along(B, j + 1, result.u);
}

/** Finds and places the first crossing of two lines, or returns false when they do not cross. */
function findCrossing(result: Nearest, A: Polyline, B: Polyline): boolean {
  demandLine(A);
  demandLine(B);
  for (let i = 0; i + 3 < A.length; i += 2) {
    for (let j = 0; j + 3 < B.length; j += 2) {
      result.segmentA = i / 2;
      result.segmentB = j / 2;
      if (crosses(result, A, B)) return true;
    }
  }
  return false;
}

/** Whether the two segments of the result cross; if so, where. */
function crosses(result: Nearest, A: Polyline, B: Polyline): boolean {
  const i = 2 * result.segmentA;
  const j = 2 * result.segmentB;
  const ux = at(A, i + 2) - at(A, i);
  const uy = at(A, i + 3) - at(A, i + 1);
  const vx = at(B, j + 2) - at(B, j);
  const vy = at(B, j + 3) - at(B, j + 1);
  // Twice the signed areas that each end spans with the other segment: their signs say on which side it lies.
  const a0 = (at(A, i) - at(B, j)) * vy - (at(A, i + 1) - at(B, j + 1)) * vx;
  const a1 = (at(A, i + 2) - at(B, j)) * vy - (at(A, i + 3) - at(B, j + 1)) * vx;
  const b0 = (at(A, i) - at(B, j)) * uy - (at(A, i + 1) - at(B, j + 1)) * ux;
  const b1 = (at(A, i) - at(B, j + 2)) * uy - (at(A, i + 1) - at(B, j + 3)) * ux;
  if (!(a0 * a1 < 0 && b0 * b1 < 0)) return false;
  result.t = a0 / (a0 - a1);
  result.u = b0 / (b0 - b1);
  place(result, A, B);
  result.bx = result.ax;
  result.by = result.ay;
  result.distance = 0;
  return true;
}
