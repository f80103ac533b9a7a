/** Gaps to the elbow line and the measured spots of a cinch, on paper. */
import { describe, expect, test } from 'vitest';
import { elbowLineOf } from '../../src/horse/elbow-line.ts';
import { elbowGap } from '../../src/cinch/elbow-gap.ts';
import { cordSpots, frameSpots, type Spot, type Unrolled } from '../../src/cinch/spots.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { plainBuckle } from '../support/orders.ts';
import { within } from '../support/within.ts';

// Places are (x, s): forward of the groove, up from the midline. At 72 in of girth and 4 in of room the elbow
// line is (7, 0) (4, 3) (4, 7) (6.9, 36): x + s = 7 below, x = 4 + 0.1 (s - 7) above.
const line = elbowLineOf(4, 72, defaultModel);

test('the elbow line has its corners at the midline, the armpit, the elbow and the top', () => {
  expect([...line].map((value) => Math.round(value * 1e9) / 1e9)).toEqual([7, 0, 4, 3, 4, 7, 6.9, 36]);
});

interface Case {
  readonly name: string;
  readonly at: readonly [number, number];
  readonly distance: number;
  readonly to: readonly [number, number];
}

const cases: readonly Case[] = [
  { name: 'beside the upright middle', at: [1.5, 5], distance: 2.5, to: [4, 5] },
  { name: 'at the armpit', at: [1, 3], distance: 3, to: [4, 3] },
  // Square to x + s = 7: (1, 1) away.
  { name: 'below the armpit, square to the line', at: [3, 2], distance: Math.SQRT2, to: [4, 3] },
  { name: 'further down', at: [4, 1], distance: Math.SQRT2, to: [5, 2] },
  // The corner is nearest: (3, 2) away.
  { name: 'below the armpit, behind its corner', at: [1, 1], distance: Math.sqrt(13), to: [4, 3] },
  // (1, -0.1) is square to the line's rise, (0.1, 1).
  { name: 'above the elbow, square to its corner', at: [3, 7.1], distance: Math.sqrt(1.01), to: [4, 7] },
  // Twice that, to (5, 17), on x = 4 + 0.1 (s - 7).
  { name: 'against the muscle', at: [3, 17.2], distance: Math.sqrt(4.04), to: [5, 17] },
  { name: 'behind the corner of the elbow', at: [0, 7.2], distance: Math.sqrt(16.04), to: [4, 7] },
  { name: 'above the end of the line', at: [6, 38], distance: Math.sqrt(0.81 + 4), to: [6.9, 36] },
  // Over the line: an overlap along x.
  { name: 'over the middle', at: [4.5, 4], distance: -0.5, to: [4, 4] },
  { name: 'over it below the armpit', at: [6.5, 1], distance: -0.5, to: [6, 1] },
  { name: 'over it above the elbow', at: [6, 17], distance: -1, to: [5, 17] },
  { name: 'right on it', at: [5, 17], distance: 0, to: [5, 17] },
];

test.each(cases)('$name', ({ at: [x, s], distance, to }) => {
  const gap = elbowGap(x, s, line);
  within(gap.distance, distance, 1e-9);
  within(gap.elbowX, to[0], 1e-9);
  within(gap.elbowS, to[1], 1e-9);
});

const plumb: Unrolled = { line, slope: 0, armpit: 3, elbow: 7 };
const leaning: Unrolled = { ...plumb, slope: 0.1 };
const shape = { full: 6, pinched: 4, fullUpTo: 5, pinchedFrom: 9, top: 14 };
const places = (spots: readonly Spot[]): string[] =>
  spots.map(({ x, s }) => `${x.toFixed(3)} ${s.toFixed(3)}`).sort();

describe('spots', () => {
  test('of cords that lean: corners, armpit and elbow, and what lies square to a corner of the elbow line', () => {
    // Edge (3, 0) (3.5, 5) (2.9, 9) (3.4, 14). To the first piece, along (0.1, 1): the armpit (4, 3) from (3
    // + 0.1 s, s) where (1 - 0.1 s) 0.1 + 3 - s = 0, s = 3.1 / 1.01; the elbow would be at 7.1 / 1.01, beyond
    // 5. To the second, along (-0.15, 1): the elbow (4, 7) from (3.5 - 0.15 t, 5 + t), (0.5 + 0.15 t) -0.15 +
    // 2 - t = 0, t = 1.925 / 1.0225; the armpit is below. Both are below the third, (2.9 + 0.1 t, 9 + t).
    const [foot, t] = [3.1 / 1.01, 1.925 / 1.0225];
    const spots = cordSpots(shape, leaning);
    expect(places(spots)).toEqual(
      [
        [3, 0],
        [3.3, 3],
        [3 + 0.1 * foot, foot],
        [3.5, 5],
        [3.2, 7],
        [3.5 - 0.15 * t, 5 + t],
        [2.9, 9],
        [3.4, 14],
      ]
        .map(([x, s]) => `${x!.toFixed(3)} ${s!.toFixed(3)}`)
        .sort(),
    );
    for (const { s, skin, part } of spots) expect([skin, part]).toEqual([s <= 7, 'cords']);
  });

  test('widths of cords: full, half way down the flare, pinched', () => {
    const widthAt = (s: number): number => cordSpots(shape, plumb).find((spot) => spot.s === s)!.width;
    expect([0, 3, 5, 7, 9, 14].map(widthAt)).toEqual([6, 6, 6, 5, 4, 4]);
  });

  test('of a frame: its two corners, and armpit and elbow where it hangs beside them; never skin', () => {
    // 3.75 in wide, 2.5 high, plumb: level with the elbow, 7.
    const high = frameSpots(plainBuckle, 14, plumb);
    expect(places(high)).toEqual(['1.875 14.000', '1.875 16.500']);
    const beside = frameSpots(plainBuckle, 5, plumb);
    expect([...new Set(places(beside))]).toEqual(['1.875 5.000', '1.875 7.000', '1.875 7.500']);
    const below = frameSpots(plainBuckle, 0.25, plumb);
    expect([...new Set(places(below))]).toEqual(['1.875 0.250', '1.875 2.750']);
    for (const { skin, part, width } of [...high, ...beside, ...below])
      expect([skin, part, width]).toEqual([false, 'frame', 0]);
  });
});
