/** Elliptic integrals against printed tables, two libraries' test values and an independent implementation. */
import { readFileSync } from 'node:fs';
import cephes from 'cephes';
import { beforeAll, describe, expect, it } from 'vitest';
import { completeE, completeF, incompleteE, incompleteF } from '../../src/geometry/elliptic.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { within, withinRelative } from '../support/within.ts';

const DEGREE = Math.PI / 180;
/** Six units in the last place: what an exact method loses to rounding, that of k^2 near 1 included. */
const LAST_DIGITS = 6 * Number.EPSILON;

describe('Abramowitz & Stegun 1964, table 17.1 (seen as transcribed; nine decimals, so half a unit of the ninth)', () => {
  it.each([
    [0, 1.570796327],
    [0.01, 1.566861942],
    [0.1, 1.530757637],
    [0.2, 1.489035058],
    [0.5, 1.350643881],
    [0.9, 1.104774733],
    [0.99, 1.015993546],
  ])('E(m = %f) = %f', (m, expected) => {
    // The last row prints ...546 where the value is 1.0159935450: one unit of the ninth decimal is allowed.
    within(completeE(m), expected, m === 0.99 ? 1e-9 : 0.5e-9);
  });
});

describe('tables of K and E to 15 decimals (memory, recomputed at high precision)', () => {
  it.each([
    [0, 1.570796326794897, 1.570796326794897],
    [0.1, 1.612441348720219, 1.530757636897763],
    [0.25, 1.685750354812596, 1.467462209339427],
    [0.5, 1.854074677301372, 1.350643881047676],
    [0.75, 2.156515647499643, 1.21105602756846],
    [0.9, 2.578092113348173, 1.104774732704073],
    [0.99, 3.695637362989875, 1.015993545025224],
  ])('m = %f: K = %f, E = %f', (m, k, e) => {
    within(completeF(m), k, 2e-15);
    within(completeE(m), e, 1e-15);
  });
});

describe('incomplete E', () => {
  it('E(20 deg \\ 20 deg) = 0.34825492: A&S table 17.6 (seen as transcribed; 8 decimals), modular angle, m = sin^2', () => {
    within(incompleteE(20 * DEGREE, Math.sin(20 * DEGREE) ** 2), 0.34825492, 0.5e-8);
  });

  it.each([
    [15, 0.1, 0.2615041048079591],
    [15, 0.75, 0.2595699550983805],
    [30, 0.25, 0.517881934859938],
    [45, 0.5, 0.7481865041776614],
    [60, 0.1, 1.031651082281769],
    [60, 0.75, 0.9183932943163253],
    [75, 0.5, 1.16345845527085],
    [90, 0.25, 1.467462209339427],
  ])('E(%f deg, m = %f) = %f (memory, recomputed at high precision)', (degrees, m, expected) => {
    within(incompleteE(degrees * DEGREE, m), expected, 1e-15);
  });

  it.each([
    [0.5, 1.4674622093394271555],
    [0.99, 1.028475809028804001],
    [0.01, 1.5707570561503852873],
  ])(
    'E(k = %f) = %f: GNU Scientific Library test values (seen); k is the modulus, m = k^2',
    (k, expected) => {
      withinRelative(completeE(k * k), expected, LAST_DIGITS);
    },
  );
});

interface BoostRow {
  readonly k: string;
  readonly phi?: string;
  readonly E: string;
}
interface BoostFile {
  readonly incomplete_E_phi_k: readonly BoostRow[];
  readonly complete_E_k: readonly BoostRow[];
}
const boost = JSON.parse(
  readFileSync(new URL('data/elliptic_boost.json', import.meta.url), 'utf8'),
) as BoostFile;

describe('Boost.Math test data (seen; (c) 2006 John Maddock, Boost Software License 1.0), columns phi, k, E', () => {
  it('has all its rows', () => {
    expect([boost.incomplete_E_phi_k.length, boost.complete_E_k.length]).toEqual([65, 100]);
  });

  it.each(boost.incomplete_E_phi_k)('E(phi = $phi, k = $k) = $E', ({ phi, k, E }) => {
    withinRelative(incompleteE(Number(phi), Number(k) ** 2), Number(E), LAST_DIGITS);
  });

  it.each(boost.complete_E_k)('E(k = $k) = $E', ({ k, E }) => {
    withinRelative(completeE(Number(k) ** 2), Number(E), LAST_DIGITS);
    withinRelative(incompleteE(Math.PI / 2, Number(k) ** 2), Number(E), LAST_DIGITS);
  });
});

describe('cephes (S. L. Moshier, independent implementation) on a seeded grid', () => {
  beforeAll(async () => {
    await cephes.compiled;
  });
  const random = seededRandom(20);

  it.each(Array.from({ length: 40 }, () => random.uniform()))('complete, m = %f', (m) => {
    withinRelative(completeE(m), cephes.ellpe(1 - m), 1e-14);
    withinRelative(completeF(m), cephes.ellpk(1 - m), 1e-14);
  });

  it.each(Array.from({ length: 200 }, () => [8 * random.uniform() - 4, random.uniform()]))(
    'incomplete, phi = %f, m = %f',
    (phi, m) => {
      within(incompleteE(phi, m), cephes.ellie(phi, m), 2e-14);
      within(incompleteF(phi, m), cephes.ellik(phi, m), 1e-13);
    },
  );
});

describe('further round', () => {
  // Every half turn adds twice the complete integral: A&S 17.4.3.
  it.each([2, 3, 7, -3])('%i half turns and a bit', (turns) => {
    for (const m of [0.3, 0.9, -2]) {
      withinRelative(
        incompleteF(turns * Math.PI + 0.4, m),
        2 * turns * completeF(m) + incompleteF(0.4, m),
        1e-14,
      );
      withinRelative(
        incompleteE(turns * Math.PI + 0.4, m),
        2 * turns * completeE(m) + incompleteE(0.4, m),
        1e-14,
      );
    }
  });
});

describe('negative parameter (the deeper barrel)', () => {
  // cephes refuses negative m, so the other axis is its way in: sin and cos change places.
  it.each([-0.01, -0.5, -1, -1.0408, -3, -50])(
    'm = %f against cephes measured from the other axis',
    async (m) => {
      await cephes.compiled;
      const other = -m / (1 - m);
      const stretch = Math.sqrt(1 - m);
      withinRelative(completeE(m), stretch * cephes.ellpe(1 - other), 1e-14);
      for (const phi of [0.1, 0.5, 1, 1.5]) {
        const rest = cephes.ellie(Math.PI / 2 - phi, other);
        within(incompleteE(phi, m), stretch * (cephes.ellpe(1 - other) - rest), 1e-14 * stretch);
      }
    },
  );

  it('by numbers evaluated with mpmath to 40 digits (derived)', () => {
    withinRelative(completeE(-3), 2.4221120551369192625, LAST_DIGITS);
    withinRelative(completeF(-3), 1.0782578237498217279, LAST_DIGITS);
  });
});

describe('edges', () => {
  it('m = 1: E is the sine, F the inverse Gudermannian, K infinite', () => {
    expect(completeE(1)).toBe(1);
    expect(completeF(1)).toBe(Infinity);
    within(incompleteE(0.7, 1), Math.sin(0.7), 1e-15);
    within(incompleteF(0.7, 1), Math.asinh(Math.tan(0.7)), 1e-15);
  });

  it('m above 1 or not a number is refused', () => {
    for (const f of [completeE, completeF])
      for (const m of [1.0001, NaN]) expect(() => f(m)).toThrow(RangeError);
    for (const f of [incompleteE, incompleteF]) expect(() => f(1, 1.0001)).toThrow(RangeError);
  });
});
