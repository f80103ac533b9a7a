/** Maps of planes whose points are large, small, or nearly in line. */
import { describe, expect, test } from 'vitest';
import { homographyOf, type Point } from '../../src/math/homography.ts';
import { mapPoint } from '../support/map-point.ts';
import { within } from '../support/within.ts';

const square: Point[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

describe('however large', () => {
  /** The textbook's quadrilateral about the origin. */
  const quad: Point[] = [
    [0.1, -0.2],
    [1.3, 0.1],
    [1.1, 1.2],
    [-0.2, 0.9],
  ];
  const moved = (points: readonly Point[], by: Point, scale = 1): Point[] =>
    points.map(([x, y]): Point => [scale * x + by[0], scale * y + by[1]]);
  const image = mapPoint(homographyOf(square, quad)!, [0.5, 0.5]);

  test.each([1e-9, 1e9])('at %f times the size', (scale) => {
    const found = mapPoint(homographyOf(moved(square, [0, 0], scale), quad)!, [scale / 2, scale / 2]);
    within(found[0], image[0], 1e-11);
    within(found[1], image[1], 1e-11);
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
});
