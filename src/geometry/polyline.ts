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

/** A pair of segments has one number: the index on A above these bits, the index on B in them. */
const PAIR_BITS = 15;
const PAIR_MASK = (1 << PAIR_BITS) - 1;

/** A coordinate; the callers stay within the line. */
const at = (line: Polyline, index: number): number => line[index] as number;

/** Faster than Math.min, which minds NaN and the sign of zero. */
const lesser = (p: number, q: number): number => (p < q ? p : q);

/** Squared distance to the line through a segment where its foot lies within the segment, else Infinity. */
function footSquared(dot: number, cross: number, lengthSquared: number): number {
  return dot > 0 && dot < lengthSquared ? (cross * cross) / lengthSquared : Infinity;
}

/**
 * Squared distance of two segments: zero when they cross, else the least of the distances that involve an end.
 * That never divides by the sine of their angle, so parallel, collinear and pointlike segments need no special case.
 */
function pairSquared(A: Polyline, B: Polyline, pair: number): number {
  const i = 2 * (pair >> PAIR_BITS);
  const j = 2 * (pair & PAIR_MASK);
  const ux = at(A, i + 2) - at(A, i);
  const uy = at(A, i + 3) - at(A, i + 1);
  const vx = at(B, j + 2) - at(B, j);
  const vy = at(B, j + 3) - at(B, j + 1);
  // From an end of B to an end of A; first digit A, second digit B; 0 is the start of a segment, 1 its end.
  const x00 = at(A, i) - at(B, j);
  const y00 = at(A, i + 1) - at(B, j + 1);
  const x10 = at(A, i + 2) - at(B, j);
  const y10 = at(A, i + 3) - at(B, j + 1);
  const x01 = at(A, i) - at(B, j + 2);
  const y01 = at(A, i + 1) - at(B, j + 3);
  const x11 = at(A, i + 2) - at(B, j + 2);
  const y11 = at(A, i + 3) - at(B, j + 3);
  // Twice the signed areas that each end spans with the other segment: their signs say on which side it lies.
  const a0 = x00 * vy - y00 * vx;
  const a1 = x10 * vy - y10 * vx;
  const b0 = x00 * uy - y00 * ux;
  const b1 = x01 * uy - y01 * ux;
  if (a0 * a1 < 0 && b0 * b1 < 0) return 0;
  const uu = ux * ux + uy * uy;
  const vv = vx * vx + vy * vy;
  const starts = lesser(x00 * x00 + y00 * y00, x01 * x01 + y01 * y01);
  const ends = lesser(x10 * x10 + y10 * y10, x11 * x11 + y11 * y11);
  const feetOnB = lesser(footSquared(x00 * vx + y00 * vy, a0, vv), footSquared(x10 * vx + y10 * vy, a1, vv));
  const feetOnA = lesser(
    footSquared(-x00 * ux - y00 * uy, b0, uu),
    footSquared(-x01 * ux - y01 * uy, b1, uu),
  );
  return lesser(lesser(starts, ends), lesser(feetOnB, feetOnA));
}

/** Squared distance between the spans of one coordinate of two segments: cheap, and never above that of the segments. */
function spanGapSquared(A: Polyline, B: Polyline, pair: number): number {
  const i = 2 * (pair >> PAIR_BITS) + 1;
  const j = 2 * (pair & PAIR_MASK) + 1;
  const p = at(A, i);
  const q = at(A, i + 2);
  const r = at(B, j);
  const s = at(B, j + 2);
  const above = (p < q ? p : q) - (r < s ? s : r);
  if (above > 0) return above * above;
  const below = (r < s ? r : s) - (p < q ? q : p);
  return below > 0 ? below * below : 0;
}

/** Number of segments of a line. */
function segmentsOf(line: Polyline): number {
  const count = line.length / 2 - 1;
  if (!(Number.isInteger(count) && count >= 1 && count <= PAIR_MASK)) {
    throw new RangeError(
      `a broken line of ${line.length} numbers: 2 to ${PAIR_MASK + 1} points of two are needed`,
    );
  }
  return count;
}

/**
 * Finds the nearest pair of segments and its distance, and writes only these into the result. Of equally near pairs
 * the first, counting along A and then along B.
 */
function findPair(result: Nearest, A: Polyline, B: Polyline): void {
  const countA = segmentsOf(A);
  const countB = segmentsOf(B);
  let best = Infinity;
  let bestPair = 0;
  for (let i = 0; i < countA && best > 0; i += 1) {
    for (let j = 0; j < countB; j += 1) {
      const pair = (i << PAIR_BITS) | j;
      if (spanGapSquared(A, B, pair) >= best) continue;
      const squared = pairSquared(A, B, pair);
      if (squared < best) {
        best = squared;
        bestPair = pair;
      }
    }
  }
  result.segmentA = bestPair >> PAIR_BITS;
  result.segmentB = bestPair & PAIR_MASK;
  // Where nothing compares (coordinates that are no numbers) the lines must not pass for far apart.
  result.distance = best < Infinity ? Math.sqrt(best) : NaN;
}

const scratch = newNearest();

/**
 * Least Euclidean distance of two broken lines, without saying where: the cheapest call.
 * @throws RangeError when a line has fewer than two points or more than 32768
 */
export function distanceBetween(A: Polyline, B: Polyline): number {
  findPair(scratch, A, B);
  return scratch.distance;
}

/** The fraction along a segment of the foot of a point, kept within the segment. */
function footFraction(dot: number, lengthSquared: number): number {
  if (!(dot > 0)) return 0;
  return dot < lengthSquared ? dot / lengthSquared : 1;
}

/** One coordinate the fraction t along a segment, exact at both ends; `index` is that of the start's coordinate. */
function along(line: Polyline, index: number, t: number): number {
  const p = at(line, index);
  const q = at(line, index + 2);
  return t === 1 ? q : p + t * (q - p);
}

/** Sets u to the point of B's segment nearest to the point at t. */
function footOnB(result: Nearest, A: Polyline, B: Polyline): void {
  const i = 2 * result.segmentA;
  const j = 2 * result.segmentB;
  const vx = at(B, j + 2) - at(B, j);
  const vy = at(B, j + 3) - at(B, j + 1);
  const dot = (along(A, i, result.t) - at(B, j)) * vx + (along(A, i + 1, result.t) - at(B, j + 1)) * vy;
  result.u = footFraction(dot, vx * vx + vy * vy);
}

/** Sets t to the point of A's segment nearest to the point at u. */
function footOnA(result: Nearest, A: Polyline, B: Polyline): void {
  const i = 2 * result.segmentA;
  const j = 2 * result.segmentB;
  const ux = at(A, i + 2) - at(A, i);
  const uy = at(A, i + 3) - at(A, i + 1);
  const dot = (along(B, j, result.u) - at(A, i)) * ux + (along(B, j + 1, result.u) - at(A, i + 1)) * uy;
  result.t = footFraction(dot, ux * ux + uy * uy);
}

/** Sets the two points from t and u, and tells their squared distance. */
function place(result: Nearest, A: Polyline, B: Polyline): number {
  const i = 2 * result.segmentA;
  const j = 2 * result.segmentB;
  result.ax = along(A, i, result.t);
  result.ay = along(A, i + 1, result.t);
  result.bx = along(B, j, result.u);
  result.by = along(B, j + 1, result.u);
  return (result.ax - result.bx) ** 2 + (result.ay - result.by) ** 2;
}

/** Places the nearest points of two segments that do not cross: one of them is an end of its segment. */
function locateApart(result: Nearest, A: Polyline, B: Polyline): void {
  let best = Infinity;
  let t = 0;
  let u = 0;
  for (let trial = 0; trial < 4; trial += 1) {
    if (trial < 2) {
      result.t = trial;
      footOnB(result, A, B);
    } else {
      result.u = trial - 2;
      footOnA(result, A, B);
    }
    const squared = place(result, A, B);
    if (squared < best) {
      best = squared;
      t = result.t;
      u = result.u;
    }
  }
  result.t = t;
  result.u = u;
  place(result, A, B);
}

/** Places the crossing of two segments, or returns false when they do not cross. */
function locateCrossing(result: Nearest, A: Polyline, B: Polyline): boolean {
  const i = 2 * result.segmentA;
  const j = 2 * result.segmentB;
  const ux = at(A, i + 2) - at(A, i);
  const uy = at(A, i + 3) - at(A, i + 1);
  const vx = at(B, j + 2) - at(B, j);
  const vy = at(B, j + 3) - at(B, j + 1);
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
  return true;
}

/**
 * Least Euclidean distance of two broken lines and where it is, written into `result` (nothing is allocated).
 * Of equally near places the first counts: along A, then along B, and within a pair of segments A's ends before B's.
 * @returns the distance; zero when the lines cross or touch
 * @throws RangeError when a line has fewer than two points or more than 32768
 */
export function nearestInto(result: Nearest, A: Polyline, B: Polyline): number {
  findPair(result, A, B);
  if (!locateCrossing(result, A, B)) locateApart(result, A, B);
  return result.distance;
}

/** As `nearestInto`, with a fresh result. */
export function nearestBetween(A: Polyline, B: Polyline): Nearest {
  const result = newNearest();
  nearestInto(result, A, B);
  return result;
}
