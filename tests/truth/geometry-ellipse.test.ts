/** The ellipse against known perimeters and curvatures, and its laws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleToStation,
  curvatureRadiusAt,
  ellipsePerimeter,
  heightAt,
  solveEllipse,
  solveRatioFromDepth,
  stationAtHeight,
  stationToAngle,
} from '../../src/math/ellipse.ts';
import { within, withinRelative } from '../support/within.ts';

describe('perimeters', () => {
  // P = 4aE evaluated independently at high precision (derived), half-axes in any order. (34, 23) was
  // evaluated twice with 25 digits, by E and by quadrature.
  it.each([
    [5, 3, 25.5269988633981],
    [2, 1, 9.68844822054768],
    [34, 23, 180.741947408489],
    [99, 1, 396.110739426876],
    [1, 1, 6.283185307179586],
    [3, 2, 15.86543958929059],
    [10, 1, 40.63974180100896],
    [10, 9, 59.73160432524829],
  ])('half-axes %f and %f give %f', (a, b, expected) => {
    withinRelative(ellipsePerimeter(a, b), expected, 2e-15);
    withinRelative(ellipsePerimeter(b, a), expected, 2e-15);
  });

  it('half-axes sqrt 2 and 1: 4 sqrt 2 E(1/2) = 7.640395578055424, the lemniscate (derived)', () => {
    withinRelative(ellipsePerimeter(Math.SQRT2, 1), 7.640395578055424, 1e-15);
  });

  it('the quarter meridian of WGS 84 is 10 001 965.729 m (memory, published to the millimetre)', () => {
    within(ellipsePerimeter(6378137, 6356752.314245179) / 4, 10001965.729, 0.0005);
  });

  it('flat: there and back', () => {
    expect(ellipsePerimeter(3, 0)).toBe(12);
    expect(ellipsePerimeter(0, 3)).toBe(12);
    expect(ellipsePerimeter(0, 0)).toBe(0);
  });

  it.each([
    [-1, 1],
    [1, -1],
    [NaN, 1],
    [1, Infinity],
    [Infinity, 1],
  ])('half-axes %f and %f are refused', (a, b) => {
    expect(() => ellipsePerimeter(a, b)).toThrow(RangeError);
  });
});

describe('radius of curvature: b^2/a at the ends of the major axis, a^2/b at those of the minor (memory, standard)', () => {
  it.each([
    [9, 13],
    [13, 9],
    [11, 11],
  ])('half-width %f, half-depth %f', (halfWidth, halfDepth) => {
    const ellipse = { halfWidth, halfDepth };
    const perimeter = ellipsePerimeter(halfWidth, halfDepth);
    withinRelative(curvatureRadiusAt(ellipse, 0), halfWidth ** 2 / halfDepth, 1e-14);
    withinRelative(curvatureRadiusAt(ellipse, perimeter / 4), halfDepth ** 2 / halfWidth, 1e-14);
    withinRelative(curvatureRadiusAt(ellipse, perimeter / 2), halfWidth ** 2 / halfDepth, 1e-14);
  });

  it('agrees with the circle through three neighboring points of the skin', () => {
    const ellipse = { halfWidth: 9, halfDepth: 13 };
    const point = (s: number): [number, number] => {
      const t = stationToAngle(ellipse, s);
      return [9 * Math.sin(t), -13 * Math.cos(t)];
    };
    for (const s of [1, 5, 9, 15, 20, 30]) {
      const [[ax, ay], [bx, by], [cx, cy]] = [point(s - 0.01), point(s), point(s + 0.01)];
      const area = Math.abs((bx - ax) * (cy - ay) - (cx - ax) * (by - ay)) / 2;
      const sides =
        Math.hypot(bx - ax, by - ay) * Math.hypot(cx - bx, cy - by) * Math.hypot(ax - cx, ay - cy);
      withinRelative(curvatureRadiusAt(ellipse, s), sides / (4 * area), 1e-5);
    }
  });
});

describe('stations', () => {
  it('on a circle the station is radius times angle and the height is plain trigonometry', () => {
    const circle = { halfWidth: 10, halfDepth: 10 };
    for (const s of [0, 0.001, 4, 15, 31]) {
      within(stationToAngle(circle, s), s / 10, 1e-15);
      within(heightAt(circle, s), 10 - 10 * Math.cos(s / 10), 1e-14);
    }
  });

  it('agrees with the chords of a fine polygon', () => {
    const ellipse = { halfWidth: 9.3, halfDepth: 13.4 };
    const STEPS = 20000;
    for (const angle of [0.4, 1.3, 2.2, 3.1]) {
      let length = 0;
      for (let i = 0; i < STEPS; i += 1) {
        const [p, q] = [(angle * i) / STEPS, (angle * (i + 1)) / STEPS];
        length += Math.hypot(9.3 * (Math.sin(q) - Math.sin(p)), 13.4 * (Math.cos(q) - Math.cos(p)));
      }
      within(angleToStation(ellipse, angle), length, 1e-7);
    }
  });
});

/** Barrels and far beyond. */
const perimeters = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const ratios = fc.double({ min: 0.01, max: 100, noNaN: true });
const parts = fc.double({ min: 0, max: 1, noNaN: true });

describe('laws of every ellipse', () => {
  it('the solved ellipse has the perimeter and ratio asked for', () => {
    fc.assert(
      fc.property(perimeters, ratios, (perimeter, ratio) => {
        const { halfWidth, halfDepth } = solveEllipse(perimeter, ratio);
        withinRelative(ellipsePerimeter(halfWidth, halfDepth), perimeter, 1e-14);
        withinRelative(halfWidth / halfDepth, ratio, 1e-15);
      }),
    );
  });

  it('station to angle and back is the same station, below zero and past the top too', () => {
    fc.assert(
      fc.property(ratios, fc.double({ min: -3, max: 3, noNaN: true }), (ratio, turns) => {
        const ellipse = solveEllipse(72, ratio);
        within(angleToStation(ellipse, stationToAngle(ellipse, 72 * turns)), 72 * turns, 72 * 3e-15);
      }),
    );
  });

  it('near the bottom the station keeps its relative precision', () => {
    const ellipse = solveEllipse(72, 0.7);
    for (const s of [1e-3, 1e-6, 1e-9, 1e-12])
      withinRelative(stationToAngle(ellipse, s), s / ellipse.halfWidth, s * s + 1e-14);
  });

  it('height rises from nothing at the midline to the whole depth at the top', () => {
    fc.assert(
      fc.property(ratios, parts, parts, (ratio, p, q) => {
        const ellipse = solveEllipse(72, ratio);
        const [low, high] = [36 * Math.min(p, q), 36 * Math.max(p, q)];
        expect(heightAt(ellipse, low)).toBeLessThanOrEqual(heightAt(ellipse, high) + 1e-14);
        expect(heightAt(ellipse, 0)).toBe(0);
        withinRelative(heightAt(ellipse, 36), 2 * ellipse.halfDepth, 1e-15);
        within(heightAt(ellipse, 18), ellipse.halfDepth, 1e-12);
      }),
    );
  });

  it('station at a height is the way back from height at a station, and ends where the barrel ends', () => {
    fc.assert(
      fc.property(ratios, parts, (ratio, part) => {
        const ellipse = solveEllipse(72, ratio);
        within(stationAtHeight(ellipse, heightAt(ellipse, 36 * part)), 36 * part, 1e-6);
        expect(stationAtHeight(ellipse, -1)).toBe(0);
        within(stationAtHeight(ellipse, 2 * ellipse.halfDepth + 1), 36, 1e-12);
      }),
    );
    // On a unit circle a third of a turn is 2 pi / 3 long and 3 / 2 high.
    within(stationAtHeight({ halfWidth: 1, halfDepth: 1 }, 1.5), (2 * Math.PI) / 3, 1e-14);
  });

  it('twice the size is twice everything', () => {
    fc.assert(
      fc.property(ratios, parts, fc.double({ min: 0.01, max: 100, noNaN: true }), (ratio, part, scale) => {
        const one = solveEllipse(72, ratio);
        const other = solveEllipse(72 * scale, ratio);
        const s = 36 * part;
        within(heightAt(other, s * scale), scale * heightAt(one, s), 1e-12 * scale);
        withinRelative(curvatureRadiusAt(other, s * scale), scale * curvatureRadiusAt(one, s), 1e-9);
      }),
    );
  });

  it('turning an ellipse on its side counts stations from the other axis', () => {
    fc.assert(
      fc.property(ratios, parts, (ratio, part) => {
        const { halfWidth, halfDepth } = solveEllipse(72, ratio);
        const t = (Math.PI / 2) * part;
        const upright = angleToStation({ halfWidth, halfDepth }, t);
        const lying = angleToStation({ halfWidth: halfDepth, halfDepth: halfWidth }, Math.PI / 2 - t);
        within(upright + lying, 18, 1e-13);
      }),
    );
  });
});

describe('ratio from perimeter and depth', () => {
  it('gives back the ratio the ellipse was made with', () => {
    fc.assert(
      fc.property(perimeters, fc.double({ min: 0.05, max: 20, noNaN: true }), (perimeter, ratio) => {
        const { halfDepth } = solveEllipse(perimeter, ratio);
        // Another ratio gives a nearly flat ellipse the same length: the perimeter limits the answer.
        withinRelative(solveRatioFromDepth(perimeter, 2 * halfDepth)!, ratio, 1e-12);
      }),
    );
  });

  it('a circle as deep as wide', () => {
    within(solveRatioFromDepth(2 * Math.PI, 2)!, 1, 1e-14);
  });

  it.each([
    [72, 36],
    [72, 40],
    [72, 0],
    [72, -3],
    [0, 0],
    [NaN, 20],
    [72, NaN],
    [Infinity, 20],
  ])('perimeter %f with depth %f is impossible', (perimeter, depth) => {
    expect(solveRatioFromDepth(perimeter, depth)).toBeUndefined();
  });

  it('just possible is possible: nearly flat', () => {
    const ratio = solveRatioFromDepth(72, 35.9999)!;
    expect(ratio).toBeGreaterThan(0);
    expect(ratio).toBeLessThan(0.001);
  });
});

it.each([
  [0, 1],
  [72, 0],
  [-72, 1],
  [NaN, 1],
  [Infinity, 1],
  [72, Infinity],
])('an ellipse of perimeter %f and ratio %f is refused', (p, r) => {
  expect(() => solveEllipse(p, r)).toThrow(RangeError);
});
