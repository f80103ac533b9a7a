/** Elliptic integrals against printed tables, two libraries' test values and an independent implementation. */
import { readFileSync } from 'node:fs';
import cephes from 'cephes';
import { beforeAll, describe, expect, it } from 'vitest';
import { angleToStation } from '../../src/math/ellipse.ts';
import { seededRandom } from '../../src/math/random.ts';
import { within, withinRelative } from '../support/within.ts';

const DEGREE = Math.PI / 180;
/** A nanometer is enough for a barrel. */
const ENOUGH = 1e-9;

/** E(phi, m), m = k^2, phi the eccentric angle: the arc of an ellipse 1 wide and sqrt(1 - m) deep. */
const incompleteE = (phi: number, m: number): number =>
  angleToStation({ halfWidth: 1, halfDepth: Math.sqrt(1 - m) }, phi);
const completeE = (m: number): number => incompleteE(Math.PI / 2, m);

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
    // The last row prints ...546 for 1.0159935450: one unit of the ninth decimal is allowed.
    within(completeE(m), expected, m === 0.99 ? 1e-9 : 0.5e-9);
  });
});

describe('table of E to 15 decimals (memory, recomputed at high precision)', () => {
  it.each([
    [0, 1.570796326794897],
    [0.1, 1.530757636897763],
    [0.25, 1.467462209339427],
    [0.5, 1.350643881047676],
    [0.75, 1.21105602756846],
    [0.9, 1.104774732704073],
    [0.99, 1.015993545025224],
  ])('m = %f: E = %f', (m, e) => {
    within(completeE(m), e, ENOUGH);
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
    within(incompleteE(degrees * DEGREE, m), expected, ENOUGH);
  });

  it.each([
    [0.5, 1.4674622093394271555],
    [0.99, 1.028475809028804001],
    [0.01, 1.5707570561503852873],
  ])(
    'E(k = %f) = %f: GNU Scientific Library test values (seen); k is the modulus, m = k^2',
    (k, expected) => {
      withinRelative(completeE(k * k), expected, ENOUGH);
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
    withinRelative(incompleteE(Number(phi), Number(k) ** 2), Number(E), ENOUGH);
  });

  it.each(boost.complete_E_k)('E(k = $k) = $E', ({ k, E }) => {
    withinRelative(completeE(Number(k) ** 2), Number(E), ENOUGH);
    withinRelative(incompleteE(Math.PI / 2, Number(k) ** 2), Number(E), ENOUGH);
  });
});

describe('cephes (S. L. Moshier, independent implementation) on a seeded grid', () => {
  beforeAll(async () => {
    await cephes.compiled;
  });
  const random = seededRandom(20);

  it.each(Array.from({ length: 40 }, () => random.uniform()))('complete, m = %f', (m) => {
    withinRelative(completeE(m), cephes.ellpe(1 - m), ENOUGH);
  });

  it.each(Array.from({ length: 200 }, () => [8 * random.uniform() - 4, random.uniform()]))(
    'incomplete, phi = %f, m = %f',
    (phi, m) => {
      within(incompleteE(phi, m), cephes.ellie(phi, m), ENOUGH);
    },
  );
});

describe('further round', () => {
  // A half turn adds twice the complete integral: A&S 17.4.3.
  it.each([2, 3, 7, -3])('%i half turns and a bit', (turns) => {
    for (const m of [0.3, 0.9, -2]) {
      withinRelative(
        incompleteE(turns * Math.PI + 0.4, m),
        2 * turns * completeE(m) + incompleteE(0.4, m),
        ENOUGH,
      );
    }
  });
});

describe('negative parameter (the deeper barrel)', () => {
  // cephes refuses negative m; on the other axis sin and cos change places.
  it.each([-0.01, -0.5, -1, -1.0408, -3, -50])(
    'm = %f against cephes measured from the other axis',
    async (m) => {
      await cephes.compiled;
      const other = -m / (1 - m);
      const stretch = Math.sqrt(1 - m);
      withinRelative(completeE(m), stretch * cephes.ellpe(1 - other), ENOUGH);
      for (const phi of [0.1, 0.5, 1, 1.5]) {
        const rest = cephes.ellie(Math.PI / 2 - phi, other);
        within(incompleteE(phi, m), stretch * (cephes.ellpe(1 - other) - rest), ENOUGH * stretch);
      }
    },
  );

  it('by numbers evaluated with mpmath to 40 digits (derived)', () => {
    withinRelative(completeE(-3), 2.4221120551369192625, ENOUGH);
  });
});
