/** The bell curve and the random generator against published values and an independent implementation. */
import cephes from 'cephes';
import { beforeAll, describe, expect, it } from 'vitest';
import { normalCdf, normalInverse } from '../../src/math/normal.ts';
import { seededRandom } from '../../src/math/random.ts';
import { within, withinRelative } from '../support/within.ts';

describe('normal distribution', () => {
  // Tables in every textbook: to the last printed place (memory).
  it.each([
    [0, 0.5, 0],
    [1, 0.841344746068543, 1e-15],
    [1.959963984540054, 0.975, 1e-15],
    [2, 0.977249868051821, 1e-15],
    [3, 0.99865010196837, 1e-15],
    [-1.2815515655446, 0.1, 1e-15],
  ])('P(Z <= %f) = %f (memory)', (x, chance, tolerance) => {
    within(normalCdf(x), chance, tolerance);
    within(normalInverse(chance), x, 3e-13);
  });

  // cephes gives 0 from about -36, and loses digits where x^2 is rounded; these are exact.
  it.each([
    [-10, 7.619853024160526e-24],
    [-12.3, 4.5287069561587847e-35],
    [-23.7, 1.8028440824724965e-124],
    [-33.3, 1.93050550592784e-243],
    [-20, 2.753624118606234e-89],
    [-37, 5.725571222524577e-300],
  ])('far below: P(Z <= %f) = %f (derived, mpmath with 30 digits)', (x, chance) => {
    withinRelative(normalCdf(x), chance, 1e-12);
  });

  describe('cephes (S. L. Moshier), independent', () => {
    beforeAll(async () => {
      await cephes.compiled;
    });

    it('cdf on a grid from -26 to 9, relative in the lower tail', () => {
      for (let i = -2600; i <= 900; i += 7) {
        const x = i / 100;
        withinRelative(normalCdf(x), cephes.ndtr(x), 1e-12);
      }
    });

    it('inverse on a grid of chances from 1e-300 up', () => {
      for (let power = -300; power < -1; power += 3)
        withinRelative(normalInverse(10 ** power), cephes.ndtri(10 ** power), 1e-12);
      for (let i = 1; i < 1000; i += 1) within(normalInverse(i / 1000), cephes.ndtri(i / 1000), 1e-13);
    });
  });

  it('inverse and cdf undo each other; both are symmetric', () => {
    for (let i = 1; i < 200; i += 1) {
      withinRelative(normalCdf(normalInverse(i / 200)), i / 200, 1e-12);
      within(normalCdf(i / 30) + normalCdf(-i / 30), 1, 1e-15);
      within(normalInverse(i / 200), -normalInverse(1 - i / 200), 1e-13);
    }
  });

  it('ends: 0 and 1 are infinitely far; what is no chance is refused', () => {
    expect([normalInverse(0), normalInverse(1)]).toEqual([-Infinity, Infinity]);
    expect([normalCdf(-Infinity), normalCdf(Infinity), normalCdf(-40), normalCdf(40)]).toEqual([0, 1, 0, 1]);
    for (const p of [-0.001, 1.001, NaN]) expect(() => normalInverse(p)).toThrow(RangeError);
    expect(normalCdf(NaN)).toBeNaN();
  });
});

describe('PCG32', () => {
  it('a uniform value is 52 bits of two draws and a half, in whole numbers of any size', () => {
    const [draws, values] = [seededRandom(9), seededRandom(9)];
    for (let i = 0; i < 200; i++) {
      const bits = (BigInt(draws.next() >>> 6) << 26n) + BigInt(draws.next() >>> 6);
      // Twice the value times 2^52 is odd, so never 0 or 1.
      expect(BigInt(values.uniform() * 2 ** 53)).toBe(2n * bits + 1n);
    }
  });

  it("seed 42, stream 54: the published sequence of its author's demonstration program (memory)", () => {
    const random = seededRandom(42, 54);
    expect(Array.from({ length: 6 }, () => random.next())).toEqual([
      0xa15c02b7, 0x7b47f409, 0xba1d3330, 0x83d2f293, 0xbfa4784b, 0xcbed606e,
    ]);
  });

  it('uniform values fill 0 to 1 evenly: chi-square of 100 cells within its 1e-6 band', () => {
    const random = seededRandom(7);
    const DRAWS = 100_000;
    const cells = new Array<number>(100).fill(0);
    for (let i = 0; i < DRAWS; i += 1) {
      const value = random.uniform();
      expect(value > 0 && value < 1).toBe(true);
      cells[Math.floor(value * 100)]! += 1;
    }
    const chiSquare = cells.reduce((sum, count) => sum + (count - DRAWS / 100) ** 2 / (DRAWS / 100), 0);
    within(chiSquare, 99, 4.9 * Math.sqrt(2 * 99));
  });

  it('normal values have mean 0, sd 1 and the right share beyond 1.96, within five standard errors', () => {
    const random = seededRandom(8);
    const DRAWS = 100_000;
    let [sum, squares, beyond] = [0, 0, 0];
    for (let i = 0; i < DRAWS; i += 1) {
      const value = random.normal();
      sum += value;
      squares += value * value;
      if (Math.abs(value) > 1.959964) beyond += 1;
    }
    within(sum / DRAWS, 0, 5 / Math.sqrt(DRAWS));
    within(squares / DRAWS, 1, 5 * Math.sqrt(2 / DRAWS));
    within(beyond / DRAWS, 0.05, 5 * Math.sqrt((0.05 * 0.95) / DRAWS));
  });

  it.each([-1, 0.5, NaN, 2 ** 53])('seed %f is refused', (seed) => {
    expect(() => seededRandom(seed)).toThrow(RangeError);
    expect(() => seededRandom(1, seed)).toThrow(RangeError);
  });
});
