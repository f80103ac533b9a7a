/** The projective map of four points to four others. */

export type Point = readonly [number, number];

type Triple = readonly [number, number, number];

/** Rows; only ratios matter. */
export type Homography = readonly [Triple, Triple, Triple];

/**
 * By Heckbert 1989. Points far from the origin lose digits.
 * @returns undefined when three points are in line, or a number is not finite
 */
export function homographyOf(from: readonly Point[], to: readonly Point[]): Homography | undefined {
  const source = columnsOf(from);
  const target = columnsOf(to);
  if (source === undefined || target === undefined) return undefined;
  const [a, b, c] = source;
  const back = [cross(b, c), cross(c, a), cross(a, b)] as const; // rows of the inverse, up to a factor
  const row = (i: 0 | 1 | 2): Triple => {
    const entry = (j: 0 | 1 | 2): number => target.reduce((sum, t, k) => sum + t[i] * (back[k]?.[j] ?? 0), 0);
    return [entry(0), entry(1), entry(2)];
  };
  return [row(0), row(1), row(2)];
}

/** Three points weighted to add up to the fourth; undefined when nearly in line. */
function columnsOf(points: readonly Point[]): readonly [Triple, Triple, Triple] | undefined {
  const [a, b, c, d] = points;
  if (!a || !b || !c || !d) return undefined;
  const size = Math.max(...points.map(([x, y]) => Math.hypot(x - a[0], y - a[1])));
  const areas = [areaOf(d, b, c), areaOf(a, d, c), areaOf(a, b, d)] as const;
  if (![...areas, areaOf(a, b, c)].every((area) => Math.abs(area) > 1e-12 * size * size)) return undefined;
  const weighed = ([x, y]: Point, weight: number): Triple => [weight * x, weight * y, weight];
  return [weighed(a, areas[0]), weighed(b, areas[1]), weighed(c, areas[2])]; // Cramer's rule
}

const areaOf = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
