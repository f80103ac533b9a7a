/** An upright ellipse: size from its girth, positions and heights along its skin. */

/**
 * A point is (a sin t, -b cos t). Both the eccentric angle t (radians) and the station, the length along the
 * skin, count from the bottom; both may be negative or pass the top.
 */

/** In one unit; either may be longer. */
export interface Ellipse {
  readonly halfWidth: number;
  readonly halfDepth: number;
}

/** Each step squares the difference, so below this the half-axes are equal. */
const NEARLY_EQUAL = 1e-8;
/** A barrel needs at most eight; this stops degenerate input. */
const MOST_STEPS = 100;

/** Station at angle t: a E(t, 1 - (b/a)^2), by Landen's transformation and the arithmetic-geometric mean. */
export function angleToStation({ halfWidth, halfDepth }: Ellipse, t: number): number {
  let [a, b, angle, times] = [halfWidth, halfDepth, t, 1];
  let square = (a * a + b * b) / 2;
  let sineSum = 0;
  let c: number;
  do {
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    // tan(next - angle) = (b / a) tan(angle), A&S 17.6.8, keeping half turns
    angle = 2 * angle + Math.atan(((b - a) * sine * cosine) / (a * cosine * cosine + b * sine * sine));
    c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)]; // A&S 17.6.1
    square -= times * c * c; // A&S 17.6.4
    times *= 2;
    sineSum += c * Math.sin(angle); // A&S 17.6.10
  } while (Math.abs(c) > NEARLY_EQUAL * a);
  return (square * angle) / (times * a) + sineSum; // A&S 17.6.9
}

/**
 * In the unit of the half-axes.
 * @throws RangeError unless both are finite and not negative
 */
export function ellipsePerimeter(a: number, b: number): number {
  if (!(a >= 0 && b >= 0 && a < Infinity && b < Infinity)) {
    throw new RangeError(`half-axes ${a} and ${b} must be finite and not negative`);
  }
  if (a === 0 || b === 0) return 4 * (a + b); // flat
  return angleToStation({ halfWidth: a, halfDepth: b }, 2 * Math.PI);
}

/**
 * From perimeter and width over depth.
 * @throws RangeError unless both are finite and above zero
 */
export function solveEllipse(perimeter: number, ratio: number): Ellipse {
  if (!(perimeter > 0 && ratio > 0 && perimeter < Infinity && ratio < Infinity)) {
    throw new RangeError(`perimeter ${perimeter} and ratio ${ratio} must be finite and above zero`);
  }
  // The perimeter at half-depth 1 gives the scale.
  const halfDepth = perimeter / ellipsePerimeter(ratio, 1);
  return { halfWidth: ratio * halfDepth, halfDepth };
}

/** Width over depth from the whole depth; undefined unless the perimeter is over twice that. */
export function solveRatioFromDepth(perimeter: number, depth: number): number | undefined {
  if (!(depth > 0 && perimeter > 2 * depth && perimeter < Infinity)) return undefined;
  const over = (ratio: number): number => ellipsePerimeter(ratio, 1) - (2 * perimeter) / depth;
  // Starts low, as no perimeter is under pi (a + b); it is convex, so secants never pass the root.
  let ratio = (2 * perimeter) / (Math.PI * depth) - 1;
  let [before, overBefore] = [ratio + 1, over(ratio + 1)];
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const here = over(ratio);
    const next = ratio - (here * (ratio - before)) / (here - overBefore);
    if (!(next < ratio)) break;
    [before, overBefore, ratio] = [ratio, here, next];
  }
  return ratio;
}

const speedAt = ({ halfWidth, halfDepth }: Ellipse, t: number): number =>
  Math.hypot(halfWidth * Math.cos(t), halfDepth * Math.sin(t));

/** Eccentric angle at any finite station. */
export function stationToAngle(ellipse: Ellipse, s: number): number {
  const quarter = angleToStation(ellipse, Math.PI / 2);
  const halves = Math.round(s / (2 * quarter));
  const rest = s - halves * 2 * quarter;
  return halves * Math.PI + Math.sign(rest) * angleInFirstQuarter(ellipse, Math.abs(rest), quarter);
}

/** Newton's method closes in from one side: a quarter is convex or concave. */
function angleInFirstQuarter(ellipse: Ellipse, station: number, quarter: number): number {
  let t = (station / quarter) * (Math.PI / 2);
  for (let steps = 0; steps < MOST_STEPS; steps += 1) {
    const step = (angleToStation(ellipse, t) - station) / speedAt(ellipse, t);
    const next = Math.min(Math.PI / 2, Math.max(0, t - step));
    if (!(Math.abs(next - t) > NEARLY_EQUAL * t)) return next;
    t = next;
  }
  return t;
}

/** Height above the bottom at station s. */
export function heightAt(ellipse: Ellipse, s: number): number {
  const half = Math.sin(stationToAngle(ellipse, s) / 2);
  return 2 * ellipse.halfDepth * half * half; // b (1 - cos t), exact near the bottom
}

/** Station at a height above the bottom, kept within the ellipse. */
export function stationAtHeight(ellipse: Ellipse, height: number): number {
  const half = Math.sqrt(Math.min(1, Math.max(0, height / (2 * ellipse.halfDepth))));
  return angleToStation(ellipse, 2 * Math.asin(half)); // sin^2 (t / 2) = height / 2b
}

/** Radius of curvature at station s. */
export function curvatureRadiusAt(ellipse: Ellipse, s: number): number {
  const speed = speedAt(ellipse, stationToAngle(ellipse, s));
  return (speed * speed * speed) / (ellipse.halfWidth * ellipse.halfDepth); // (a^2 cos^2 t + b^2 sin^2 t)^(3/2) / (a b)
}
