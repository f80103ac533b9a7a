/** The leading edge of a laid cinch: body, then the buckle's frame, as one polyline on the unrolled side. */
import type { Outline } from '../stock/outline.ts';

/** Flat [x0, s0, x1, s1, ...] from the midline up; `bodyPoints` corners belong to the cords, the rest to the buckle. */
export interface LeadingEdge {
  readonly points: Float64Array;
  readonly bodyPoints: number;
}

/** Edge of an outline alone, on a centre line `x = slope s`. */
export function bodyEdge({ stations, widths }: Outline, slope: number): Float64Array {
  const points = new Float64Array(2 * stations.length);
  fill(points, { stations, widths }, slope);
  return points;
}

/** Edge of an outline with the buckle's frame on top; the frame begins at the outline's last station. */
export function leadingEdge(
  outline: Outline,
  frame: { width: number; height: number },
  slope: number,
): LeadingEdge {
  const bodyPoints = outline.stations.length;
  const points = new Float64Array(2 * bodyPoints + 4);
  fill(points, outline, slope);
  const low = outline.stations[bodyPoints - 1] ?? 0;
  const high = low + frame.height;
  points[2 * bodyPoints] = slope * low + frame.width / 2;
  points[2 * bodyPoints + 1] = low;
  points[2 * bodyPoints + 2] = slope * high + frame.width / 2;
  points[2 * bodyPoints + 3] = high;
  return { points, bodyPoints };
}

function fill(points: Float64Array, { stations, widths }: Outline, slope: number): void {
  for (let i = 0; i < stations.length; i++) {
    const s = stations[i] ?? 0;
    points[2 * i] = slope * s + (widths[i] ?? 0) / 2;
    points[2 * i + 1] = s;
  }
}
