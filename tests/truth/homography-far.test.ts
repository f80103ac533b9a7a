/** Maps of planes whose points lie far off, are large or small, or nearly in line. */
import { describe, expect, test } from 'vitest';
import { homographyOf, mapPoint, type Point } from '../../src/geometry/homography.ts';
import { within } from '../support/within.ts';

const square: Point[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

describe('wherever the points lie, and however large', () => {
  /** The textbook's quadrilateral about the origin, then moved and scaled. */
  const quad: Point[] = [
    [0.1, -0.2],
    [1.3, 0.1],
    [1.1, 1.2],
    [-0.2, 0.9],
  ];
  const moved = (points: readonly Point[], by: Point, scale = 1): Point[] =>
    points.map(([x, y]): Point => [scale * x + by[0], scale * y + by[1]]);
  const middle: Point = [0.5, 0.5];
  const image = mapPoint(homographyOf(square, quad)!, middle)!;

  // Hartley 1997, In defense of the eight-point algorithm: without moving and scaling, points far off lose their digits.
  test.each([
    [[1e5, 0], 1],
    [[0, -1e5], 1],
    [[1e4, 2e4], 0.01],
    [[0, 0], 1e-9],
    [[0, 0], 1e9],
    [[3e7, 1e7], 1e3],
  ] as [Point, number][])('at %j, times %f', (by, scale) => {
    const h = homographyOf(moved(square, by, scale), quad)!;
    const found = mapPoint(h, moved([middle], by, scale)[0]!)!;
    // What the doubles themselves have lost at that distance, and some.
    const lost = 1e-11 + (1e-14 * Math.hypot(...by)) / scale;
    within(found[0], image[0], lost);
    within(found[1], image[1], lost);
    const back = homographyOf(square, moved(quad, by, scale))!;
    const there = mapPoint(back, middle)!;
    within((there[0] - by[0]) / scale, image[0], lost);
    within((there[1] - by[1]) / scale, image[1], lost);
  });

  const line: Point[] = [
    [0, 0],
    [1, 1],
    [2, 2],
  ];
  const off: Point = [0, 5];
  test.each([
    ['first', [off, ...line]],
    ['second', [line[0]!, off, line[1]!, line[2]!]],
    ['third', [line[0]!, line[1]!, off, line[2]!]],
    ['last', [...line, off]],
  ] as [string, Point[]][])('three in line beside the %s, near and far and at any size', (_, points) => {
    for (const [by, scale] of [
      [[0, 0], 1],
      [[8, -3], 1],
      [[0, 0], 1e-9],
      [[0, 0], 1e9],
    ] as [Point, number][]) {
      expect(homographyOf(moved(points, by, scale), square)).toBeUndefined();
      expect(homographyOf(square, moved(points, by, scale))).toBeUndefined();
      // A hair off the line is still on it; a thousandth is not.
      const bent = (more: number) => points.map(([x, y]): Point => (x === 1 ? [x, y + more] : [x, y]));
      expect(homographyOf(moved(bent(1e-13), by, scale), square)).toBeUndefined();
      expect(homographyOf(moved(bent(1e-3), by, scale), square)).toBeDefined();
    }
  });

  test('numbers that no double holds are no map', () => {
    expect(homographyOf(moved(quad, [0, 0], 1e-158), moved(quad, [0, 0], 1e152))).toBeUndefined();
  });

  test('the greatest entry is 1 in size, and a point may go to infinity', () => {
    const h = homographyOf(square, quad)!;
    within(Math.max(...h.flat().map(Math.abs)), 1, 1e-15);
    expect(
      mapPoint(
        [
          [1, 0, 0],
          [0, 1, 0],
          [1, 0, -2],
        ],
        [2, 5],
      ),
    ).toBeUndefined();
  });
});
