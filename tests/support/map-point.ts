/** Applies a projective map. */
import type { Homography, Point } from '../../src/math/homography.ts';

export function mapPoint(h: Homography, [x, y]: Point): Point {
  const [a, b, c] = h.map((r) => r[0] * x + r[1] * y + r[2]) as [number, number, number];
  return [a / c, b / c];
}
