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
/** The cube of less is below the last digit. */
const CUBE_VANISHES = 4e-6;

/**
 * Eccentric angle (radians from the bottom point) of the point at station s. Any finite s will do: half a perimeter
 * more is pi more, and a negative station is the other side.
 */
export function stationToAngle(ellipse: Ellipse, s: number): number {
  const quarter = ellipse.halfWidth * completeE(parameterOf(ellipse));
  const halves = Math.round(s / (2 * quarter));
  const rest = s - halves * 2 * quarter;
  const angle = angleInFirstQuarter(ellipse, Math.abs(rest), quarter);
  return halves * Math.PI + (rest < 0 ? -angle : angle);
}

/** Halley's steps kept inside a shrinking bracket: the arc is smooth and convex or concave, so three or four do. */
function angleInFirstQuarter(ellipse: Ellipse, target: number, quarter: number): number {
  const { halfWidth: a, halfDepth: b } = ellipse;
  let low = 0;
  let high = Math.PI / 2;
  if (target >= quarter) return high;
  let t = (target / quarter) * high;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const miss = angleToStation(ellipse, t) - target;
    if (miss > 0) high = t;
    else low = t;
    const speed = speedAt(ellipse, t);
    const newton = miss / speed;
    const bend = ((b - a) * (b + a) * Math.sin(2 * t)) / (4 * speed * speed); // half of s'' / s'
    let next = t - newton / (1 - newton * bend); // Halley 1694
    if (!(next >= low && next <= high)) next = (low + high) / 2;
    if (Math.abs(next - t) <= CUBE_VANISHES * t) return next; // the error left is the cube of this step
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
