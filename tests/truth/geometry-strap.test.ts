/** Straps, ropes round posts and hoops against numbers from outside. */
import { describe, expect, it } from 'vitest';
import { capstanRatio, hoopPressure, strapLength } from '../../src/geometry/strap.ts';
import { within } from '../support/within.ts';

describe('a strap on the unrolled barrel', () => {
  it('along 30, across 40: 50 (derived: geodesics of a cylinder are straight on the unrolled surface)', () => {
    expect(strapLength(30, 40)).toBe(50);
  });

  it('is no longer than any other way on the cylinder (here: by a middle point off the straight line)', () => {
    for (const off of [-3, -0.5, 0.5, 3]) {
      expect(strapLength(15 + off, 20) + strapLength(15 - off, 20)).toBeGreaterThan(strapLength(30, 40));
    }
  });
});

describe('capstan', () => {
  it('coefficient 0.3, half a turn: 2.56633 (derived, Euler-Eytelwein)', () => {
    within(capstanRatio(0.3, Math.PI), 2.56633, 0.5e-5);
  });

  it('coefficient 0.6, five turns: 153 552 935 (seen: published capstan table)', () => {
    within(capstanRatio(0.6, 10 * Math.PI), 153552935, 0.5);
  });

  it('no contact or no friction: no help', () => {
    expect(capstanRatio(0.4, 0)).toBe(1);
    expect(capstanRatio(0, 9)).toBe(1);
  });
});

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
