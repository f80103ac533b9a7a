/** The chance of two correlated normal values against an exact formula, bounds and a brute integration. */
import { describe, expect, it } from 'vitest';
import { normalCdf } from '../../src/math/normal.ts';
import { bothBelow } from '../../src/math/normal-pair.ts';
import { within } from '../support/within.ts';

const correlations = [-0.99, -0.9, -0.5, 0, 0.3, 0.6, 0.8, 0.9, 0.95, 0.98, 0.99];

/** P(X <= h, Y <= k) by Simpson's rule over the density of X and the chance of Y given X: no shared code but normalCdf. */
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
