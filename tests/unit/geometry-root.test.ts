/** The root finder: right, frugal, and never outside its bracket. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../src/geometry/root.ts';
import { within, withinRelative } from '../support/within.ts';

interface Case {
  readonly name: string;
  readonly f: (x: number) => number;
  readonly bracket: [number, number];
  readonly root: number;
}

describe('findRoot', () => {
  it.each<Case>([
    { name: 'a line', f: (x) => 2 * x - 3, bracket: [0, 10], root: 1.5 },
    { name: 'falling', f: (x) => 3 - x, bracket: [0, 10], root: 3 },
    { name: 'ends in the other order', f: (x) => x * x - 2, bracket: [2, 0], root: Math.SQRT2 },
    {
      name: 'x^3 - 2x - 5 (Wallis 1685), 2.0945514815423265',
      f: (x) => x ** 3 - 2 * x - 5,
      bracket: [2, 3],
      root: 2.0945514815423265,
    },
    {
      name: 'cos x = x, 0.7390851332151607',
      f: (x) => Math.cos(x) - x,
      bracket: [0, 1],
      root: 0.7390851332151607,
    },
    { name: 'a kink', f: (x) => (x < 4 ? x - 3 : 10 * x - 39), bracket: [0, 100], root: 3 },
    { name: 'very flat at the root', f: (x) => (x - 1) ** 9, bracket: [0, 3], root: 1 },
    { name: 'a jump', f: (x) => (x < Math.E ? -1 : 1), bracket: [0, 10], root: Math.E },
  ])('$name', ({ f, bracket, root }) => {
    within(findRoot(f, bracket)!, root, 1e-15 * 4);
  });

  it('takes a root at an end with no more than two calls', () => {
    let calls = 0;
    const f = (x: number): number => {
      calls += 1;
      return x * (x - 1);
    };
    expect(findRoot(f, [0, 0.5])).toBe(0);
    expect(findRoot(f, [0.5, 1])).toBe(1);
    expect(calls).toBe(3);
  });

  it('has no answer without a change of sign', () => {
    expect(findRoot((x) => x * x + 1, [-1, 1])).toBeUndefined();
    expect(findRoot((x) => -x * x - 1, [-1, 1])).toBeUndefined();
    expect(findRoot(() => NaN, [-1, 1])).toBeUndefined();
    expect(findRoot((x) => (x < 0 ? NaN : 1), [-1, 1])).toBeUndefined();
  });

  it('is frugal on smooth functions and keeps the tolerance asked for', () => {
    let calls = 0;
    const f = (x: number): number => {
      calls += 1;
      return Math.exp(x) - 5;
    };
    within(findRoot(f, [0, 4])!, Math.log(5), 1e-15 * 4);
    expect(calls).toBeLessThanOrEqual(12);
    calls = 0;
    within(findRoot(f, [0, 4], 0.01)!, Math.log(5), 0.01);
    expect(calls).toBeLessThanOrEqual(8);
  });

  it('stays in the bracket and finds the root of any rising cubic', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, (root, steep, bend) => {
        const f = (x: number): number => {
          expect(x >= 0 && x <= 1).toBe(true);
          return (x - root) * (0.01 + steep + bend * (x - root) ** 2);
        };
        within(findRoot(f, [0, 1])!, root, 1e-15);
      }),
    );
  });

  it('finds roots of every size to the last digits', () => {
    for (const root of [1e-200, 1e-9, 1, 1e9, 1e200]) {
      withinRelative(
        findRoot((x) => x / root - 1, [0, root * 17])!,
        root,
        1e-15,
      );
    }
  });
});
