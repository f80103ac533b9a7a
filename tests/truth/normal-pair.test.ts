/** Chances of normal values that move together, against formulas, bounds, integration and draws. */
import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../src/math/normal.ts';
import { allBelow } from '../../src/math/all-below.ts';
import { gainedTogether } from '../../src/math/normal-pair.ts';
import { seededRandom } from '../../src/math/random.ts';
import { within } from '../support/within.ts';

const correlations = [-0.99, -0.9, -0.5, 0, 0.3, 0.6, 0.8, 0.9, 0.95, 0.98, 0.99];

const bothBelow = (h: number, k: number, rho: number): number =>
  normalCdf(h) * normalCdf(k) + gainedTogether(h, k, rho);

/** P(X <= h, Y <= k) by Simpson's rule over the density of X and the chance of Y given X; shares only normalCdf. */
function brute(h: number, k: number, rho: number): number {
  const steps = 40_000;
  const low = -9;
  const width = (h - low) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const x = low + i * width;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4;
    const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    sum += weight * density * normalCdf((k - rho * x) / Math.sqrt(1 - rho * rho));
  }
  return (sum * width) / 3;
}

describe('two normal values', () => {
  // Sheppard 1899: P(X <= 0, Y <= 0) = 1/4 + asin(rho) / (2 pi) (memory, standard).
  it.each(correlations)('both below zero, correlation %f: the exact quarter formula', (rho) => {
    within(bothBelow(0, 0, rho), 0.25 + Math.asin(rho) / (2 * Math.PI), 1e-9);
  });

  it.each(correlations)('agree with brute integration, correlation %f', (rho) => {
    for (const [h, k] of [
      [0.5, 1],
      [1, 1],
      [-0.7, 0.4],
      [2, 0.1],
      [1.2, -1.5],
    ] as const) {
      within(bothBelow(h, k, rho), brute(h, k, rho), 3e-7);
    }
  });

  it('nearly equal ones are taken as one: never too little, and no more than 0.0023 too much', () => {
    for (const rho of [0.99991, 0.99995, 0.999999]) {
      const tooMuch = bothBelow(0, 0, rho) - (0.25 + Math.asin(rho) / (2 * Math.PI));
      expect(tooMuch).toBeGreaterThan(0);
      expect(tooMuch).toBeLessThan(0.0023);
    }
  });

  it('independent ones multiply; one that is certain leaves the other; nearly equal ones are one', () => {
    within(bothBelow(0.3, 1.1, 0), normalCdf(0.3) * normalCdf(1.1), 1e-12);
    within(bothBelow(0.3, 9, 0.7), normalCdf(0.3), 1e-9);
    within(bothBelow(0.3, 0.8, 0.99999), normalCdf(0.3), 1e-12);
    expect(bothBelow(1, 1, 0.8)).toBeLessThan(normalCdf(1));
  });
});

describe('several normal values', () => {
  const all = (bounds: readonly number[], rho: number): number => allBelow(bounds, () => rho);

  it('one alone, two, and independent ones are exact', () => {
    within(all([0.7], 0), normalCdf(0.7), 1e-12);
    within(all([1.1, 0.4], 0.6), brute(1.1, 0.4, 0.6), 3e-7);
    within(
      all([0.2, -0.3, 1, 2], 0),
      [0.2, -0.3, 1, 2].map(normalCdf).reduce((a, b) => a * b),
      1e-9,
    );
  });

  // Sheppard 1899: three below zero have 1/8 + (sum of asin rho) / (4 pi) (memory, standard).
  it.each([0, 0.3, 0.6, 0.9, 0.98])(
    'three below zero, each two of correlation %f: within 3.5 points',
    (rho) => {
      const exact = 1 / 8 + (3 * Math.asin(rho)) / (4 * Math.PI);
      const found = all([0, 0, 0], rho);
      expect(found).toBeLessThan(exact + 1e-9);
      expect(found).toBeGreaterThan(exact - 0.035);
    },
  );

  it('in a chain of correlated values hardly any chance is lost: against draws', () => {
    const random = seededRandom(5);
    const [bounds, rho] = [[1, 0.8, 1.2, 0.9], 0.8];
    let below = 0;
    for (let draw = 0; draw < 100_000; draw++) {
      let x = random.normal();
      const values = bounds.map(
        (_, i) => (x = i === 0 ? x : rho * x + Math.sqrt(1 - rho * rho) * random.normal()),
      );
      if (values.every((value, i) => value <= bounds[i]!)) below++;
    }
    // A standard deviation of 0.0015.
    within(
      allBelow(bounds, (a, b) => rho ** Math.abs(a - b)),
      below / 100_000,
      0.02,
    );
  });

  it('is the same in any order, and never surer than the least sure two', () => {
    const bounds = [1.3, 0.2, 0.9, 2];
    const table = [
      [1, 0.5, 0.9, 0.2],
      [0.5, 1, 0.3, 0.7],
      [0.9, 0.3, 1, 0.4],
      [0.2, 0.7, 0.4, 1],
    ];
    const found = allBelow(bounds, (a, b) => table[a]![b]!);
    for (const order of [
      [3, 2, 1, 0],
      [1, 3, 0, 2],
    ])
      within(
        allBelow(
          order.map((i) => bounds[i]!),
          (a, b) => table[order[a]!]![order[b]!]!,
        ),
        found,
        2e-4,
      );
    expect(found).toBeLessThan(bothBelow(0.2, 0.9, 0.3));
  });

  it('chances too small for doubles stay numbers, and a bound far up takes nothing', () => {
    expect(all([-60, -50, 0.3], 0.5)).toBeLessThan(1e-90);
    expect(all([-1, -60], 0.5)).toBeLessThan(1e-6);
    within(all([0.5, 3.2, 40], 0.1), normalCdf(0.5), 1e-12);
  });
});
