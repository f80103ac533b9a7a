/** An upright ellipse measured along its skin: sizes from the girth, places and heights from a station. */
import { completeE, completeEOfAxes, incompleteE } from './elliptic.ts';
import { findRoot } from './root.ts';

/*
 * A point of the ellipse is (a sin t, -b cos t): t is the ECCENTRIC angle from the bottom point (0, -b), growing up
 * one side, pi at the top; it is not the angle seen from the center, whose tangent is (a / b) tan t there.
 * A station is the length along the skin from the bottom point. Both go on past the top and below zero.
 */

/** Half-axes, any one unit; either may be the longer. */
export interface Ellipse {
  readonly halfWidth: number;
  readonly halfDepth: number;
}

/**
 * Perimeter of an ellipse with half-axes a and b, in either order, in their unit.
 * @throws RangeError unless both are finite and not negative
 */
export function ellipsePerimeter(a: number, b: number): number {
  if (!(a >= 0 && b >= 0 && a < Infinity && b < Infinity)) {
    throw new RangeError(`half-axes ${a} and ${b} must be finite and not negative`);
  }
  const long = Math.max(a, b);
  const short = Math.min(a, b);
  return long === 0 ? 0 : 4 * long * completeEOfAxes(short / long); // DLMF 19.30.5
}

/**
 * The ellipse with this perimeter whose width is `ratio` times its depth.
 * @throws RangeError unless both are finite and above zero
 */
export function solveEllipse(perimeter: number, ratio: number): Ellipse {
  if (!(perimeter > 0 && ratio > 0 && perimeter < Infinity && ratio < Infinity)) {
    throw new RangeError(`perimeter ${perimeter} and ratio ${ratio} must be finite and above zero`);
  }
  // An ellipse keeps its shape when scaled, so the perimeter of one with depth 2 gives the scale at once.
  const halfDepth = perimeter / ellipsePerimeter(ratio, 1);
  return { halfWidth: ratio * halfDepth, halfDepth };
}

/**
 * Width over depth of the ellipse with this perimeter and this full depth, or undefined when none exists:
 * a closed curve is longer than twice its depth.
 * @param depth the whole depth (twice the half-axis), same unit as the perimeter
 */
export function solveRatioFromDepth(perimeter: number, depth: number): number | undefined {
  if (!(depth > 0 && depth < Infinity && perimeter > 2 * depth && perimeter < Infinity)) return undefined;
  const target = (2 * perimeter) / depth;
  const mean = target / (2 * Math.PI);
  // pi (a + b) <= P <= 2 pi sqrt((a^2 + b^2) / 2) (DLMF 19.24, Muir's bounds loosened); the slack is for rounding.
  const low = Math.sqrt(Math.max(0, 2 * mean * mean - 1)) * (1 - 1e-9) - 1e-12;
  const high = (2 * mean - 1) * (1 + 1e-9) + 1e-12;
  return findRoot((ratio) => ellipsePerimeter(ratio, 1) - target, [Math.max(0, low), high]);
}

/** The parameter of E for arcs from the bottom: negative when the depth is the larger. */
function parameterOf(ellipse: Ellipse): number {
  const { halfWidth: a, halfDepth: b } = ellipse;
  return ((a - b) / a) * ((a + b) / a); // 1 - (b / a)^2 without cancellation near the circle
}

/**
 * Station of the point at eccentric angle t (radians from the bottom point), in the unit of the half-axes.
 * The integral takes a negative parameter when the depth is the larger; `incompleteE` is exact for it.
 */
export function angleToStation(ellipse: Ellipse, t: number): number {
  return ellipse.halfWidth * incompleteE(t, parameterOf(ellipse)); // ds = sqrt(a^2 cos^2 t + b^2 sin^2 t) dt
}

/** Length of skin passed per radian of eccentric angle. */
function speedAt({ halfWidth: a, halfDepth: b }: Ellipse, t: number): number {
  const across = a * Math.cos(t);
  const up = b * Math.sin(t);
  return Math.sqrt(across * across + up * up);
}

const MOST_STEPS = 60;
/** The fourth power of less is below the last digit. */
const FOURTH_POWER_VANISHES = 1.5e-4;

// A quarter of the perimeter, and the terms below, of the ellipse asked last: one barrel is asked for many stations.
let known: Ellipse | undefined;
let quarter = 0.5;
const terms = [0.5, 0.5, 0.5, 0.5, 0.5, 0.5];

/**
 * Terms of the series for the eccentric angle at a share of the quarter, in powers of (b - a) / (b + a): C. F. F. Karney,
 * "Algorithms for geodesics", J. Geodesy 87 (2013) 43, equation 21. Right to the sixth power, which is where to begin.
 */
function know(ellipse: Ellipse): void {
  const { halfWidth: a, halfDepth: b } = ellipse;
  quarter = a * completeE(parameterOf(ellipse));
  const e = (b - a) / (b + a);
  const e2 = e * e;
  terms[0] = e * (1 / 2 + e2 * (-9 / 32 + (e2 * 205) / 1536));
  terms[1] = e2 * (5 / 16 + e2 * (-37 / 96 + (e2 * 1335) / 4096));
  terms[2] = e2 * e * (29 / 96 - (e2 * 75) / 128);
  terms[3] = e2 * e2 * (539 / 1536 - (e2 * 2391) / 2560);
  terms[4] = (e2 * e2 * e * 3467) / 7680;
  terms[5] = (e2 * e2 * e2 * 38081) / 61440;
  known = ellipse;
}

/** Sum of the terms times the sines of 2, 4, 6 ... times an angle (Clenshaw 1955). */
function series(angle: number): number {
  const twice = 2 * Math.cos(2 * angle);
  let sum = 0;
  let before = 0;
  for (let i = terms.length - 1; i >= 0; i -= 1) {
    const next = (terms[i] as number) + twice * sum - before;
    before = sum;
    sum = next;
  }
  return sum * Math.sin(2 * angle);
}

/**
 * Eccentric angle (radians from the bottom point) of the point at station s. Any finite s will do: half a perimeter
 * more is pi more, and a negative station is the other side.
 */
export function stationToAngle(ellipse: Ellipse, s: number): number {
  if (ellipse !== known) know(ellipse);
  const halves = Math.round(s / (2 * quarter));
  const rest = s - halves * 2 * quarter;
  const angle = angleInFirstQuarter(ellipse, Math.abs(rest));
  return halves * Math.PI + (rest < 0 ? -angle : angle);
}

/**
 * Steps by the reversed Taylor series to the third power, kept inside a shrinking bracket: the arc is smooth and convex or
 * concave. From where the series above begins, a barrel needs one.
 */
function angleInFirstQuarter(ellipse: Ellipse, target: number): number {
  const { halfWidth: a, halfDepth: b } = ellipse;
  let low = 0;
  let high = Math.PI / 2;
  if (target >= quarter) return high;
  const mean = (target / quarter) * high;
  let t = Math.min(high, Math.max(low, mean + series(mean)));
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const miss = angleToStation(ellipse, t) - target;
    if (miss > 0) high = t;
    else low = t;
    const sine = Math.sin(t);
    const cosine = Math.cos(t);
    const square = a * a * cosine * cosine + b * b * sine * sine; // of s'
    const newton = miss / Math.sqrt(square);
    const flat = ((b - a) * (b + a)) / square;
    const second = (flat * sine * cosine) / 2; // half of s'' / s'
    // Twice the square of that, less a sixth of s''' / s'.
    const third = (8 / 3) * second * second - (flat * (cosine - sine) * (cosine + sine)) / 6;
    let next = t - newton * (1 + newton * (second + newton * third)); // A&S 3.6.25
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    if (Math.abs(next - t) <= FOURTH_POWER_VANISHES * t) return next;
    t = next;
  }
  return t;
}

/** Height above the bottom point of the skin at station s. */
export function heightAt(ellipse: Ellipse, s: number): number {
  const half = Math.sin(stationToAngle(ellipse, s) / 2);
  return 2 * ellipse.halfDepth * half * half; // b (1 - cos t) without cancellation near the bottom
}

/** Station of the skin at a height above the bottom point; heights below it or above the top give those ends. */
export function stationAtHeight(ellipse: Ellipse, height: number): number {
  const half = Math.sqrt(Math.min(1, Math.max(0, height / (2 * ellipse.halfDepth))));
  return angleToStation(ellipse, 2 * Math.asin(half)); // sin^2 (t / 2) = height / 2b
}

/** Radius of curvature of the skin at station s. */
export function curvatureRadiusAt(ellipse: Ellipse, s: number): number {
  const speed = speedAt(ellipse, stationToAngle(ellipse, s));
  return (speed * speed * speed) / (ellipse.halfWidth * ellipse.halfDepth); // (a^2 cos^2 t + b^2 sin^2 t)^(3/2) / (a b)
}
