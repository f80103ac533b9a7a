/** Distance of broken lines against an independent library, against dense sampling, and by laws of distance. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestInto, newNearest, type Nearest } from '../../src/geometry/polyline.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { within } from '../support/within.ts';

function nearestBetween(a: Float64Array, b: Float64Array): Nearest {
  const result = newNearest();
  nearestInto(result, a, b);
  return result;
}

const distanceBetween = (a: Float64Array, b: Float64Array): number => nearestInto(newNearest(), a, b);

const line = (...numbers: number[]): Float64Array => Float64Array.from(numbers);

describe('by hand', () => {
  it.each([
    { name: 'parallel, side by side', a: line(0, 0, 0, 10), b: line(3, 2, 3, 8), expected: 3 },
    { name: 'parallel, past each other', a: line(0, 0, 0, 10), b: line(3, 14, 3, 20), expected: 5 },
    { name: 'collinear, apart', a: line(0, 0, 2, 2), b: line(5, 6, 5, 9), expected: 5 },
    { name: 'collinear, overlapping', a: line(0, 0, 4, 0), b: line(2, 0, 9, 0), expected: 0 },
    { name: 'one within the other', a: line(0, 0, 9, 0), b: line(2, 0, 4, 0), expected: 0 },
    { name: 'crossing', a: line(0, 0, 10, 10), b: line(0, 10, 10, 0), expected: 0 },
    { name: 'touching at ends', a: line(0, 0, 1, 1), b: line(1, 1, 5, 0), expected: 0 },
    { name: 'an end on the middle', a: line(0, 0, 4, 0), b: line(2, 0, 2, 9), expected: 0 },
    { name: 'an end above the middle', a: line(0, 0, 4, 0), b: line(1, 2, 1, 9), expected: 2 },
    { name: 'a point and a segment', a: line(1, 3, 1, 3), b: line(0, 0, 4, 0), expected: 3 },
    { name: 'a point on a segment', a: line(1, 0, 1, 0), b: line(0, 0, 4, 0), expected: 0 },
    { name: 'two points, 3-4-5', a: line(1, 1, 1, 1), b: line(4, 5, 4, 5), expected: 5 },
    {
      name: 'nearest in the last segments',
      a: line(0, 0, 1, 0, 2, 0, 3, 1),
      b: line(9, 9, 8, 5, 3, 4),
      expected: 3,
    },
  ])('$name: $expected', ({ a, b, expected }) => {
    within(nearestBetween(a, b).distance, expected, 1e-15);
    within(distanceBetween(b, a), expected, 1e-15);
  });

  it('says where', () => {
    expect(nearestBetween(line(0, 0, 0, 4, 0, 12), line(9, 0, 9, 5, 3, 6, 9, 7))).toEqual({
      distance: 3,
      segmentA: 1,
      segmentB: 1,
      t: 0.25,
      u: 1,
      ax: 0,
      ay: 6,
      bx: 3,
      by: 6,
    });
  });

  it('says where lines cross', () => {
    const found = nearestBetween(line(0, 0, 4, 4), line(0, 2, 8, 2));
    expect(found).toEqual({
      distance: 0,
      segmentA: 0,
      segmentB: 0,
      t: 0.5,
      u: 0.25,
      ax: 2,
      ay: 2,
      bx: 2,
      by: 2,
    });
  });

  it('takes the first of equally near places', () => {
    const { segmentA, segmentB, t, u } = nearestBetween(
      line(0, 0, 0, 1, 0, 2, 0, 3),
      line(1, 0, 1, 1, 1, 2, 1, 3),
    );
    expect([segmentA, segmentB, t, u]).toEqual([0, 0, 0, 0]);
  });

  it('leaves nothing of an earlier answer in a used result', () => {
    const result = newNearest();
    nearestInto(result, line(0, 0, 1, 0, 2, 0, 3, 0), line(9, 9, 8, 5, 3, 4));
    nearestInto(result, line(7, 7, 7, 9), line(8, 7, 8, 9));
    expect(result).toEqual(nearestBetween(line(7, 7, 7, 9), line(8, 7, 8, 9)));
  });

  it('is not a number when no coordinate is', () => {
    expect(distanceBetween(line(NaN, NaN, NaN, NaN), line(0, 0, 1, 1))).toBeNaN();
  });

  it.each([[line()], [line(1, 2)], [line(1, 2, 3)], [line(1, 2, 3, 4, 5)]])('refuses %o', (bad) => {
    expect(() => distanceBetween(bad, line(0, 0, 1, 1))).toThrow(RangeError);
    expect(() => nearestBetween(line(0, 0, 1, 1), bad)).toThrow(RangeError);
  });
});

/** Seeded lines: ordinary ones, and ones on a coarse grid, which touch, cross, overlap and repeat points. */
function seededLines(seed: number, grid: number | undefined): [Float64Array, Float64Array][] {
  const random = seededRandom(seed);
  const make = (): Float64Array => {
    const points = 2 + Math.floor(random.uniform() * 5);
    return Float64Array.from({ length: 2 * points }, () =>
      grid === undefined ? 20 * random.uniform() : Math.floor(random.uniform() * grid),
    );
  };
  return Array.from({ length: 300 }, () => {
    const first = make();
    const second = make();
    // Moved apart on two of three, or nearly all pairs would cross.
    const shift = Math.floor(random.uniform() * 3) * (grid ?? 20);
    return [first, second.map((value, index) => (index % 2 === 0 ? value + shift : value))];
  });
}

const segmentsOf = (points: Float64Array): [number, number, number, number][] =>
  Array.from({ length: points.length / 2 - 1 }, (_, i) => [
    points[2 * i]!,
    points[2 * i + 1]!,
    points[2 * i + 2]!,
    points[2 * i + 3]!,
  ]);

/** The least distance as the library sees it; its segments must have length, so a point goes in as a point. */
function byLibrary(a: Float64Array, b: Float64Array): number {
  const shapes = (points: Float64Array): (Flatten.Segment | Flatten.Point)[] =>
    segmentsOf(points).map(([x0, y0, x1, y1]) =>
      x0 === x1 && y0 === y1
        ? new Flatten.Point(x0, y0)
        : new Flatten.Segment(new Flatten.Point(x0, y0), new Flatten.Point(x1, y1)),
    );
  let best = Infinity;
  for (const p of shapes(a)) for (const q of shapes(b)) best = Math.min(best, p.distanceTo(q)[0]);
  return best;
}

/** The least distance between sampled points of both lines: never below the true one. */
function bySampling(a: Float64Array, b: Float64Array, steps: number): number {
  let best = Infinity;
  for (const [px, py, qx, qy] of segmentsOf(a)) {
    for (const [rx, ry, sx, sy] of segmentsOf(b)) {
      for (let i = 0; i <= steps; i += 1) {
        const x = px + (i / steps) * (qx - px);
        const y = py + (i / steps) * (qy - py);
        for (let j = 0; j <= steps; j += 1) {
          const distance = Math.hypot(x - rx - (j / steps) * (sx - rx), y - ry - (j / steps) * (sy - ry));
          best = Math.min(best, distance);
        }
      }
    }
  }
  return best;
}

/** The optimality of a place in one pair of segments: no move of either fraction within 0..1 comes nearer. */
function isLeast(a: Float64Array, b: Float64Array): boolean {
  const found = nearestBetween(a, b);
  const [px, py, qx, qy] = segmentsOf(a)[found.segmentA]!;
  const [rx, ry, sx, sy] = segmentsOf(b)[found.segmentB]!;
  const dx = found.ax - found.bx;
  const dy = found.ay - found.by;
  const slopes = [
    { at: found.t, slope: dx * (qx - px) + dy * (qy - py) },
    { at: found.u, slope: -dx * (sx - rx) - dy * (sy - ry) },
  ];
  return slopes.every(({ at, slope }) => {
    if (at === 0) return slope >= -1e-9;
    return at === 1 ? slope <= 1e-9 : Math.abs(slope) <= 1e-9;
  });
}

describe('@flatten-js/core (independent library, MIT), segment by segment, on seeded lines', () => {
  it.each([
    ['ordinary', 1, undefined],
    ['on a grid of 6', 2, 6],
    ['on a grid of 3', 3, 3],
  ])('%s', (_name, seed, grid) => {
    for (const [a, b] of seededLines(seed, grid)) within(distanceBetween(a, b), byLibrary(a, b), 1e-9);
  });
});

describe('dense sampling and the conditions of a least point', () => {
  it('never above a sampled distance, and below the best of them by no more than the sampling allows', () => {
    for (const [a, b] of seededLines(4, undefined).slice(0, 40)) {
      const sampled = bySampling(a, b, 100);
      const distance = distanceBetween(a, b);
      expect(distance).toBeLessThanOrEqual(sampled + 1e-12);
      // Half a step on the longest possible segment, on both lines.
      expect(sampled - distance).toBeLessThanOrEqual(Math.hypot(20, 20) / 100);
    }
  });

  it('the place found cannot be improved (the squared distance is convex in the two fractions)', () => {
    for (const [a, b] of [...seededLines(5, undefined), ...seededLines(6, 4)])
      expect(isLeast(a, b)).toBe(true);
  });
});

const coordinate = fc.oneof(fc.double({ min: -50, max: 50, noNaN: true }), fc.integer({ min: -4, max: 4 }));
const polyline = fc
  .array(fc.tuple(coordinate, coordinate), { minLength: 2, maxLength: 7 })
  .map((points) => Float64Array.from(points.flat()));

describe('laws of distance', () => {
  it('the same from either line, and from either end of a line', () => {
    const reversed = (points: Float64Array): Float64Array =>
      Float64Array.from(
        segmentsOf(points)
          .reverse()
          .flatMap(([x, y, u, v], i) => (i === 0 ? [u, v, x, y] : [x, y])),
      );
    fc.assert(
      fc.property(polyline, polyline, (a, b) => {
        within(distanceBetween(b, a), distanceBetween(a, b), 1e-12);
        within(distanceBetween(reversed(a), b), distanceBetween(a, b), 1e-12);
      }),
    );
  });

  it('unchanged when both are moved, turned and mirrored; scaled when both are scaled', () => {
    const number = fc.double({ min: -50, max: 50, noNaN: true });
    const angle = fc.double({ min: -4, max: 4, noNaN: true });
    const scale = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(polyline, polyline, fc.tuple(number, number, angle, scale), (a, b, [x, y, turn, size]) => {
        const move = (points: Float64Array): Float64Array =>
          points.map((_, i) => {
            const px = points[i - (i % 2)]!;
            const py = points[i - (i % 2) + 1]!;
            return i % 2 === 0
              ? x + size * (Math.cos(turn) * px - Math.sin(turn) * py)
              : y - size * (Math.sin(turn) * px + Math.cos(turn) * py);
          });
        within(distanceBetween(move(a), move(b)), size * distanceBetween(a, b), 1e-10 * (1 + size));
      }),
    );
  });

  it('scaled by a power of two it is scaled to the last bit, however small the lines', () => {
    for (const [a, b] of [...seededLines(9, undefined), ...seededLines(10, 8)]) {
      for (const size of [2 ** -20, 2 ** 10]) {
        const small = (points: Float64Array): Float64Array => points.map((value) => size * value);
        expect(distanceBetween(small(a), small(b))).toBe(size * distanceBetween(a, b));
        expect(distanceBetween(small(b), small(a))).toBe(size * distanceBetween(b, a));
      }
    }
  });

  it('moving one line by v changes the distance by at most |v|', () => {
    fc.assert(
      fc.property(polyline, polyline, fc.tuple(coordinate, coordinate), (a, b, [x, y]) => {
        const moved = b.map((value, i) => value + (i % 2 === 0 ? x : y));
        expect(Math.abs(distanceBetween(a, moved) - distanceBetween(a, b))).toBeLessThanOrEqual(
          Math.hypot(x, y) + 1e-12,
        );
      }),
    );
  });

  it('a longer line is never further', () => {
    fc.assert(
      fc.property(polyline, polyline, fc.tuple(coordinate, coordinate), (a, b, point) => {
        expect(distanceBetween(a, Float64Array.of(...b, ...point))).toBeLessThanOrEqual(
          distanceBetween(a, b),
        );
      }),
    );
  });

  it('the answer hangs together: points on their segments, distance between them', () => {
    fc.assert(
      fc.property(polyline, polyline, (a, b) => {
        const found = nearestBetween(a, b);
        within(Math.hypot(found.ax - found.bx, found.ay - found.by), found.distance, 1e-12);
        const [px, py, qx, qy] = segmentsOf(a)[found.segmentA]!;
        const [rx, ry, sx, sy] = segmentsOf(b)[found.segmentB]!;
        expect(found.t >= 0 && found.t <= 1 && found.u >= 0 && found.u <= 1).toBe(true);
        within(found.ax, px + found.t * (qx - px), 1e-13);
        within(found.ay, py + found.t * (qy - py), 1e-13);
        within(found.bx, rx + found.u * (sx - rx), 1e-12);
        within(found.by, ry + found.u * (sy - ry), 1e-12);
      }),
    );
  });
});
