/** The barrel section from a word, a depth, a photo or nothing. */
import { describe, expect, it, test } from 'vitest';
import { barrelOf, barrelWorking, withPhotoDepth, type Barrel } from '../../src/horse/barrel.ts';
import { solveRatioFromDepth } from '../../src/math/ellipse.ts';
import type { Horse } from '../../src/order/types.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { within, withinRelative } from '../support/within.ts';

const horse = (barrel?: Horse['barrel']): Horse => ({ trouble: [], barrel });
const GIRTH = 72;

/** Ramanujan 1914, Quart J Math 45:350, second formula: to 1e-7 here. */
function ramanujan({ halfWidth: a, halfDepth: b }: Barrel['ellipse']): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

function wellShaped({ ratio, ellipse }: Barrel, girth = GIRTH): void {
  withinRelative(ramanujan(ellipse), girth, 1e-6);
  withinRelative(ellipse.halfWidth / ellipse.halfDepth, ratio.value, 1e-9);
}

/** Weights of one over the squared spread (JCGM 100:2008, H.5). */
function pooled(a: { value: number; sd: number }, b: { value: number; sd: number }) {
  const [wa, wb] = [1 / (a.sd * a.sd), 1 / (b.sd * b.sd)];
  return { value: (wa * a.value + wb * b.value) / (wa + wb), sd: Math.sqrt(1 / (wa + wb)) };
}

describe('a barrel nobody measured', () => {
  test('is the average one, and said to be assumed', () => {
    const barrel = barrelOf(horse(), GIRTH, defaultModel);
    expect(barrel.ratio).toMatchObject({ value: 0.7, sd: 0.07, kind: 'assumed' });
    wellShaped(barrel);
  });

  it.each([
    ['slab-sided', 0.62],
    ['average', 0.7],
    ['round', 0.78],
  ] as const)('%s has its own number', (word, value) => {
    const barrel = barrelOf(horse(word), GIRTH, defaultModel);
    expect(barrel.ratio).toMatchObject({ value, sd: 0.07, kind: 'told' });
    wellShaped(barrel);
  });
});

describe('a barrel of which the depth was taped', () => {
  it.each([22, 24, 27, 30])('%i in under 72 in of girth: both sources, weighed by their spreads', (depth) => {
    const barrel = barrelOf(horse({ depth }), GIRTH, defaultModel);
    const solved = solveRatioFromDepth(GIRTH, depth)!;
    const both = pooled({ value: 0.7, sd: 0.07 }, { value: solved, sd: 0.15 });
    within(barrel.ratio.value, both.value, 1e-12);
    within(barrel.ratio.sd, both.sd, 1e-12);
    expect(barrel.ratio.kind).toBe('measured');
    wellShaped(barrel);
  });

  test('no closed curve is twice as deep as it is round: then the average stands', () => {
    const barrel = barrelOf(horse({ depth: 37 }), GIRTH, defaultModel);
    expect(barrel.ratio).toMatchObject({ value: 0.7, sd: 0.07, kind: 'assumed' });
    wellShaped(barrel);
  });

  test('no barrel comes out much wider than deep, or as a plank', () => {
    const believing = { ...defaultModel, 'ratio-from-depth-sd': 0.03 };
    expect(barrelOf(horse({ depth: 17 }), GIRTH, believing).ratio.value).toBe(1.1);
    expect(barrelOf(horse({ depth: 35.5 }), GIRTH, believing).ratio.value).toBe(0.45);
  });
});

describe('a barrel of which a photo shows the depth', () => {
  const girth = { value: GIRTH, sd: 0.5, kind: 'measured', basis: 'taped' } as const;
  const plain = barrelOf(horse(), GIRTH, defaultModel);

  test('a depth from a tape stands', () => {
    const taped = barrelOf(horse({ depth: 25 }), GIRTH, defaultModel);
    expect(withPhotoDepth(taped, { girth, depth: { value: 27, sd: 0.4 } }, defaultModel)).toBe(taped);
  });

  test('a depth that no ellipse of this girth has is left alone', () => {
    expect(withPhotoDepth(plain, { girth, depth: { value: 36.5, sd: 0.4 } }, defaultModel)).toBe(plain);
  });

  it.each([
    [25, 0.3, 0.5],
    [27, 0.8, 0.1],
    [26, 0.05, 2],
  ])('%f in, give or take %f, girth give or take %f: all three doubts count', (depth, sd, girthSd) => {
    const unsure = { ...girth, sd: girthSd };
    const barrel = withPhotoDepth(plain, { girth: unsure, depth: { value: depth, sd } }, defaultModel);
    const at = (g: number, d: number): number => solveRatioFromDepth(g, d)!;
    const tiny = 1e-4;
    const solved = at(GIRTH, depth);
    const perDepth = (at(GIRTH, depth + tiny) - at(GIRTH, depth - tiny)) / (2 * tiny);
    const perGirth = (at(GIRTH + tiny, depth) - at(GIRTH - tiny, depth)) / (2 * tiny);
    // JCGM 100:2008, 5.1.2.
    const spread = Math.sqrt(0.15 ** 2 + (perDepth * sd) ** 2 + (perGirth * girthSd) ** 2);
    const both = pooled({ value: 0.7, sd: 0.07 }, { value: solved, sd: spread });
    withinRelative(barrel.ratio.value, both.value, 0.002);
    withinRelative(barrel.ratio.sd, both.sd, 0.01);
    expect(barrel.ratio.kind).toBe('photo');
    wellShaped(barrel);
  });

  test('where the photo alone is believed, the spread is that of depth and girth', () => {
    const believing = { ...defaultModel, 'ratio-sd': 5, 'ratio-from-depth-sd': 0.001 };
    const unknown = barrelOf(horse(), GIRTH, believing);
    const sdFor = (sd: number, girthSd: number): number =>
      withPhotoDepth(unknown, { girth: { ...girth, sd: girthSd }, depth: { value: 26, sd } }, believing).ratio
        .sd;
    const at = (g: number, d: number): number => solveRatioFromDepth(g, d)!;
    const tiny = 1e-4;
    withinRelative(sdFor(0.1, 0), (at(GIRTH, 26 - tiny) - at(GIRTH, 26 + tiny)) * (0.1 / (2 * tiny)), 0.01);
    withinRelative(sdFor(0, 0.3), (at(GIRTH + tiny, 26) - at(GIRTH - tiny, 26)) * (0.3 / (2 * tiny)), 0.01);
  });

  test('a depth so unsure that half of what it may be is no barrel still gives a number', () => {
    const seen = withPhotoDepth(plain, { girth, depth: { value: 34, sd: 3 } }, defaultModel);
    expect(seen.ratio.value).toBeGreaterThan(0.45);
    expect(seen.ratio.value).toBeLessThan(0.7);
    expect(Number.isFinite(seen.ratio.sd)).toBe(true);
  });

  test('no barrel comes out much wider than deep, or as a plank', () => {
    const believing = { ...defaultModel, 'ratio-from-depth-sd': 0.001 };
    const by = (value: number): Barrel =>
      withPhotoDepth(plain, { girth, depth: { value, sd: 0.01 } }, believing);
    expect(by(17).ratio.value).toBe(1.1);
    expect(by(35.5).ratio.value).toBe(0.45);
    wellShaped(by(17));
    wellShaped(by(35.5));
  });
});

test('the working names both half-axes, and they are in the ratio', () => {
  const barrel = barrelOf(horse('round'), GIRTH, defaultModel);
  const lines = barrelWorking(barrel, GIRTH);
  expect(lines.map(({ symbol }) => symbol)).toEqual(['a', 'b']);
  const [a, b] = lines.map(({ result }) => Number(result.replace(' in', '')));
  within(a!, barrel.ellipse.halfWidth, 0.005);
  within(b!, barrel.ellipse.halfDepth, 0.005);
});
