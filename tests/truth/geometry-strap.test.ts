/** Hoops against numbers from outside. */
import { describe, expect, it } from 'vitest';
import { hoopPressure } from '../../src/math/strap.ts';
import { within } from '../support/within.ts';

describe('hoop pressure', () => {
  it('13 kgf, 0.15 m, 0.28 m: 3.035 kPa (derived, thin-wall hoop; 1 kgf = 9.80665 N exactly)', () => {
    within(hoopPressure(13 * 9.80665, 0.15, 0.28) / 1000, 3.035, 0.0005);
  });

  it('13 kgf is 127.5 N, as the paper on girth tension has it (seen second-hand)', () => {
    within(hoopPressure(13 * 9.80665, 1, 1), 127.5, 0.05);
  });

  it('P[mmHg] = 4620 T[kgf] / (C[cm] W[cm]) for a limb of circumference C: bandage formula (seen), constant rounded', () => {
    const circumference = 0.9;
    const pascals = hoopPressure(2 * 9.80665, 0.1, circumference / (2 * Math.PI));
    within(pascals / 133.322387415, (2 * 4620) / (90 * 10), 0.0005 * ((2 * 4620) / 900));
  });

  it('nothing on a flat place; no width or radius is refused', () => {
    expect(hoopPressure(10, 1, Infinity)).toBe(0);
    for (const [width, radius] of [
      [0, 1],
      [1, 0],
      [-1, 1],
      [NaN, 1],
      [1, NaN],
    ] as const) {
      expect(() => hoopPressure(1, width, radius)).toThrow(RangeError);
    }
  });
});
