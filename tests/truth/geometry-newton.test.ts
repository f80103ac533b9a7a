/** The climb to a top on functions with known tops, and published inverses. */
import { describe, expect, it, test } from 'vitest';
import { climb, inverseOf, type Slope } from '../../src/math/newton.ts';
import { within } from '../support/within.ts';

/** Minus Rosenbrock's function (1960, Computer Journal 3:175): a bent ridge with its top at (1, 1). */
function rosenbrock([x = 0, y = 0]: readonly number[]): Slope {
  const off = y - x * x;
  return {
    value: -(100 * off * off + (1 - x) ** 2),
    gradient: [400 * x * off + 2 * (1 - x), -200 * off],
    bend: [
      [1200 * x * x - 400 * y + 2, -400 * x],
      [-400 * x, 200],
    ],
  };
}

/** Its top is at (3, -2, 0.5), its height there 7. */
function dome(at: readonly number[]): Slope {
  const bend = [
    [4, 1, 0.5],
    [1, 3, -0.5],
    [0.5, -0.5, 2],
  ];
  const off = [3, -2, 0.5].map((top, i) => top - (at[i] ?? 0));
  const gradient = bend.map((row) => row.reduce((sum, value, j) => sum + value * (off[j] ?? 0), 0));
  return {
    value: 7 - gradient.reduce((sum, value, i) => sum + value * (off[i] ?? 0), 0) / 2,
    gradient,
    bend,
  };
}

describe('climb', () => {
  test('a function of second order takes one step from anywhere', () => {
    const top = climb(dome, [-40, 25, 300]);
    [3, -2, 0.5].forEach((value, i) => {
      within(top.at[i]!, value, 1e-9);
    });
    expect(top.reached).toBe(true);
  });

  test('at the top already it takes none, and leaves the start alone', () => {
    const start = [3, -2, 0.5];
    expect(climb(dome, start)).toEqual({ at: start, reached: true });
    climb(dome, Object.freeze([0, 0, 0]));
  });

  // Standard start (-1.2, 1): Moré, Garbow & Hillstrom 1981, ACM TOMS 7:17, problem 1. Textbooks: about 21
  // Newton steps with halving.
  it.each([
    [-1.2, 1],
    [0, 0],
    [2, -3],
    [-3, -4],
  ])('finds the top of a bent ridge from (%f, %f)', (x, y) => {
    const top = climb(rosenbrock, [x, y]);
    within(top.at[0]!, 1, 1e-6);
    within(top.at[1]!, 1, 1e-6);
    expect(top.reached).toBe(true);
  });

  test('never goes down on its way', () => {
    let highest = -Infinity;
    const seen: number[] = [];
    climb(
      (at) => {
        const slope = rosenbrock(at);
        seen.push(slope.value);
        return slope;
      },
      [-1.2, 1],
    );
    // Tries may be lower; where a step begins never is.
    for (const value of seen) highest = Math.max(highest, value);
    within(highest, 0, 1e-12);
    expect(seen.length).toBeLessThan(80);
  });

  test('a slope without end has no top, and that is said', () => {
    const top = climb(([x = 0]) => ({ value: x, gradient: [1], bend: [[1e-3]] }), [0]);
    expect(top.reached).toBe(false);
    expect(top.at[0]!).toBeGreaterThan(0);
  });

  test('what does not bend down has none either', () => {
    expect(climb(() => ({ value: 3, gradient: [0], bend: [[0]] }), [1])).toEqual({ at: [1], reached: false });
  });

  test('a function that lies about its slope is not followed', () => {
    const top = climb(([x = 0]) => ({ value: -x, gradient: [1], bend: [[1]] }), [0]);
    expect(top).toMatchObject({ at: [0], reached: false });
  });

  test('no number is no top', () => {
    expect(climb(() => ({ value: NaN, gradient: [NaN], bend: [[1]] }), [0]).reached).toBe(false);
  });
});

describe('inverse', () => {
  // Of Hilbert's matrix: Knuth, The Art of Computer Programming 1, 1.2.3 exercise 45.
  const hilbert = (size: number): number[][] =>
    Array.from({ length: size }, (_, i) => Array.from({ length: size }, (__, j) => 1 / (i + j + 1)));
  it.each([
    [
      2,
      [
        [4, -6],
        [-6, 12],
      ],
    ],
    [
      3,
      [
        [9, -36, 30],
        [-36, 192, -180],
        [30, -180, 180],
      ],
    ],
    [
      4,
      [
        [16, -120, 240, -140],
        [-120, 1200, -2700, 1680],
        [240, -2700, 6480, -4200],
        [-140, 1680, -4200, 2800],
      ],
    ],
  ])("of Hilbert's matrix of %i rows", (size, expected) => {
    const found = inverseOf(hilbert(size))!;
    expect(found.map((row) => row.length)).toEqual(expected.map(() => size));
    expected.forEach((row, i) => {
      row.forEach((value, j) => {
        within(found[i]![j]!, value, 1e-7);
      });
    });
  });

  it.each([
    ['below zero', [[-1]]],
    ['flat', [[0]]],
    [
      'flat one way',
      [
        [1, 1],
        [1, 1],
      ],
    ],
    [
      'a saddle',
      [
        [1, 2],
        [2, 1],
      ],
    ],
    ['no number', [[NaN]]],
  ])('of a matrix that is %s there is none', (_, matrix) => {
    expect(inverseOf(matrix)).toBeUndefined();
  });
});
