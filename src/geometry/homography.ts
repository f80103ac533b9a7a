/** The projective map of one plane onto another that carries four given points to four others. */

/** x and y. */
export type Point = readonly [number, number];

/** Three rows of three; only ratios matter. */
export type Homography = readonly (readonly [number, number, number])[];

/**
 * The map that carries each of four points to its partner: the direct linear transform on points that were moved and scaled to
 * lie about the origin at a mean distance of sqrt 2 (Hartley & Zisserman 2004, algorithm 4.2), its null vector by elimination
 * with full pivoting, so no entry is taken to be other than zero. The greatest entry of the result is 1 in size.
 * @returns undefined when three of either four are in line, or a number is not finite
 */
export function homographyOf(from: readonly Point[], to: readonly Point[]): Homography | undefined {
  if (from.length !== 4 || to.length !== 4 || !spans(from) || !spans(to)) return undefined;
  const source = normalize(from);
  const target = normalize(to);
  const rows: number[][] = [];
  for (let i = 0; i < 4; i += 1) {
    const [x, y] = source.points[i] ?? [0, 0];
    const [u, v] = target.points[i] ?? [0, 0];
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y, -u], [0, 0, 0, x, y, 1, -v * x, -v * y, -v]);
  }
  const h = nullVector(rows);
  if (h === undefined) return undefined;
  const middle = [row(h, 0), row(h, 3), row(h, 6)];
  return scaled(multiply(target.back, multiply(middle, source.there)));
}

/** Where a point goes; undefined when it goes to infinity. */
export function mapPoint(h: Homography, [x, y]: Point): Point | undefined {
  const [a, b, c] = h.map((r) => r[0] * x + r[1] * y + r[2]) as [number, number, number];
  return c === 0 ? undefined : [a / c, b / c];
}

type Triple = readonly [number, number, number];
const row = (h: readonly number[], at: number): Triple => [h[at] ?? 0, h[at + 1] ?? 0, h[at + 2] ?? 0];

/** Whether no three of four points are in line, told by areas against the spread of the points. */
function spans(points: readonly Point[]): boolean {
  const [a, b, c, d] = points as [Point, Point, Point, Point];
  const size = Math.max(...points.map(([x, y]) => Math.hypot(x - a[0], y - a[1])));
  const areas = [crossOf(a, b, c), crossOf(a, b, d), crossOf(a, c, d), crossOf(b, c, d)];
  return areas.every((area) => Math.abs(area) > 1e-12 * size * size);
}

/** Twice the signed area of a triangle: above zero when a, b, c turn counterclockwise where y goes up, clockwise where it goes down. */
const crossOf = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function normalize(points: readonly Point[]): { points: Point[]; there: Homography; back: Homography } {
  const cx = points.reduce((sum, [x]) => sum + x, 0) / points.length;
  const cy = points.reduce((sum, [, y]) => sum + y, 0) / points.length;
  const mean = points.reduce((sum, [x, y]) => sum + Math.hypot(x - cx, y - cy), 0) / points.length;
  const s = Math.SQRT2 / mean;
  return {
    points: points.map(([x, y]): Point => [s * (x - cx), s * (y - cy)]),
    there: [
      [s, 0, -s * cx],
      [0, s, -s * cy],
      [0, 0, 1],
    ],
    back: [
      [1 / s, 0, cx],
      [0, 1 / s, cy],
      [0, 0, 1],
    ],
  };
}

function multiply(a: Homography, b: Homography): Homography {
  return a.map(([p, q, r]): Triple => {
    const at = (j: 0 | 1 | 2): number => p * (b[0]?.[j] ?? 0) + q * (b[1]?.[j] ?? 0) + r * (b[2]?.[j] ?? 0);
    return [at(0), at(1), at(2)];
  });
}

function scaled(h: Homography): Homography | undefined {
  const most = Math.max(...h.flat().map(Math.abs));
  if (!(most > 0 && most < Infinity)) return undefined;
  return h.map(([a, b, c]): Triple => [a / most, b / most, c / most]);
}

/** The vector that eight rows of nine send to zero; undefined when it is not the only one. */
function nullVector(rows: number[][]): number[] | undefined {
  const order = rows[0]?.map((_, j) => j) ?? [];
  for (let step = 0; step < rows.length; step += 1) {
    if (!pivot(rows, order, step)) return undefined;
    clearBelow(rows, step);
  }
  const solved = solveUpward(rows);
  const vector = solved.map(() => 0);
  order.forEach((column, at) => (vector[column] = solved[at] ?? 0));
  return vector;
}

const entry = (list: readonly number[] | undefined, at: number): number => list?.[at] ?? 0;

/** Takes the head row from those below it, so that they have nothing left in its column. */
function clearBelow(rows: number[][], step: number): void {
  const head = rows[step];
  for (const here of rows.slice(step + 1)) {
    const factor = entry(here, step) / entry(head, step);
    for (let j = step; j < here.length; j += 1) here[j] = entry(here, j) - factor * entry(head, j);
  }
}

/** From the last row to the first; the free last part is 1. */
function solveUpward(rows: readonly number[][]): number[] {
  const solved = [...rows.map(() => 0), 1];
  for (let i = rows.length - 1; i >= 0; i -= 1) {
    let sum = 0;
    for (let j = i + 1; j < solved.length; j += 1) sum += entry(rows[i], j) * entry(solved, j);
    solved[i] = -sum / entry(rows[i], i);
  }
  return solved;
}

/** Brings the greatest number left to the head of the rows and columns left; false when nothing is left. */
function pivot(rows: number[][], order: number[], step: number): boolean {
  let [bestRow, bestColumn, most] = [step, step, 0];
  for (let i = step; i < rows.length; i += 1) {
    for (let j = step; j <= rows.length; j += 1) {
      const size = Math.abs(rows[i]?.[j] ?? 0);
      if (size > most) [bestRow, bestColumn, most] = [i, j, size];
    }
  }
  if (!(most > 1e-13)) return false;
  swap(rows, step, bestRow);
  swap(order, step, bestColumn);
  for (const here of rows) swap(here, step, bestColumn);
  return true;
}

function swap(list: unknown[], i: number, j: number): void {
  [list[i], list[j]] = [list[j], list[i]];
}
