/** The second geometry on paper, and its two ways against each other. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  gapsByHand,
  secondGeometry,
  type Gaps,
  type PlainCinch,
  type PlainHorse,
} from '../support/second-geometry.ts';
import { full, plumb, straight } from '../support/second-paper.ts';
import { within } from '../support/within.ts';

const roper: PlainCinch = { ...straight, style: 'roper' };
/** The line leans 0.1: square to it is shorter than along x by this. */
const leaning = Math.sqrt(1.01);

interface Case {
  readonly name: string;
  readonly horse?: PlainHorse;
  readonly cinch?: PlainCinch;
  readonly gaps: Partial<Gaps>;
}

const cases: Case[] = [
  {
    // Skin: 2 to 4. Frame: 4.5 - 2.5 = 2 along x at 12.
    name: 'a straight cinch on a plumb line',
    gaps: { skin: 2, frame: 2 / leaning, muscle: 2 / leaning },
  },
  {
    // Edge 2 + 0.1 s: 2.7 at 7. Frame edge 2.5 + 0.1 s, 0.8 along x behind.
    name: 'a ring in full position, a line that leans as the elbow line does',
    horse: full,
    gaps: { skin: 1.3, frame: 0.8 / leaning, muscle: 0.8 / leaning },
  },
  {
    // Frame edge 0.5 + 0.1 s, 2.8 along x; cords 1.3.
    name: 'cords that are nearer to the muscle than a narrow frame',
    horse: full,
    cinch: { ...straight, frameWidth: 1 },
    gaps: { skin: 1.3, frame: 2.8 / leaning, muscle: 1.3 / leaning },
  },
  {
    // The ring is 4 in behind the groove: edge 2 - 0.2 s. The corner (4, 3) is nearest, from (1.5, 2.5).
    // Above, (0.6, 7) to (4, 7). Frame (0.1, 12) to 4.5.
    name: 'a ring behind the groove',
    horse: { ...plumb, setBack: 6 },
    gaps: { skin: Math.sqrt(6.5), frame: 4.4 / leaning, muscle: 3.4 },
  },
  {
    // 3 in wide up to 6, 2.25 at 7, 1.5 at the low edge, 8. Edge with the lean 0.1: (2.1, 6) for the skin,
    // (1.825, 7) for muscle, both to x = 4. Frame edge 1 + 0.1 s.
    name: 'a double-layer straight cinch that narrows beside the elbow',
    horse: full,
    cinch: { ...straight, strands: 12, layers: 2, barWidth: 2.5, frameWidth: 2, length: 23 },
    gaps: { skin: 1.9, frame: 2.3 / leaning, muscle: 2.175 },
  },
  {
    // In one layer the bar cuts 3 in to 2.5: 2.75 in at 7, edge 1.375 + 0.7.
    name: 'the same in one layer',
    horse: full,
    cinch: { ...straight, strands: 12, layers: 1, barWidth: 2.5, frameWidth: 2, length: 23 },
    gaps: { skin: 1.9, muscle: 1.925 },
  },
  {
    // Lean 0.2, flare from 11.5 (3.2 in wide) to 8.5 (4 in): edge (2, 0) (3.7, 8.5) (3.9, 11.5). Skin at 7: 4
    // - 3.4. Muscle at 8.5: 4.15 - 3.7. Frame edge 1 + 0.2 s: at 16 4.9 - 4.2.
    name: 'a high flare',
    horse: { ...full, ringToRing: 20 },
    cinch: { ...roper, frameWidth: 2, flareStart: 0.5 },
    gaps: { skin: 0.6, frame: 0.7 / leaning, muscle: 0.45 / leaning },
  },
  {
    // Flare from the bar, 12, to 9: edge (2, 0) (3.8, 9), 4.2 - 3.8 = 0.4 along x.
    name: 'a flare from the bar on',
    horse: { ...full, ringToRing: 20 },
    cinch: { ...roper, frameWidth: 2 },
    gaps: { skin: 0.6, muscle: 0.4 / leaning },
  },
  {
    // 4 in wide down to 4, 5 in from 1 on: edge (2.5, 1) (2, 4). From the corner (4, 3) to the flare, 6 x + s
    // = 16. Muscle from (2, 7).
    name: 'a low flare',
    cinch: { ...roper, strands: 20, frameWidth: 3, flareStart: 8 },
    gaps: { skin: 11 / Math.sqrt(37), frame: 3 / leaning, muscle: 2 },
  },
  {
    // Pinched to 2.9 in: edge (2.5, 1) (1.45, 4), 3 x + 1.05 s = 8.55; the corner (4, 3) gives 12 + 3.15 -
    // 8.55 = 6.6.
    name: 'a low flare in two layers',
    cinch: { ...roper, strands: 20, layers: 2, frameWidth: 2, flareStart: 8 },
    gaps: { skin: 6.6 / Math.hypot(3, 1.05), muscle: 2.55 },
  },
  {
    // Lean -1. The flare from 1 is cut off at the midline with 4 + 1/3 in: edge (13/6, 0) (1, 1). The midline
    // is nearest, 7 - 13/6 = 29/6 along x.
    name: 'a flare that the midline cuts off',
    horse: { ...plumb, setBack: 12, ringToRing: 20 },
    cinch: { ...roper, strands: 20, flareStart: 11 },
    gaps: { skin: 29 / 6 / Math.SQRT2 },
  },
  {
    // Lean -1: edge (1.75, 0) (0.5, 1). Above 7 is only the frame: (1.5, 1) to (4, 3).
    name: 'an end bar that the midline cuts off',
    horse: { ...plumb, setBack: 12, ringToRing: 20 },
    cinch: { ...straight, length: 9 },
    gaps: { skin: 5.25 / Math.SQRT2, muscle: Math.sqrt(10.25), frame: Math.sqrt(10.25) },
  },
  {
    // Lean 0.2: edge (3, 0) (5, 10), forward by 4.4 - 4 at 7, by 5 - 4.3 at 10. Frame at 16 by 5.2 - 4.9.
    name: 'overlaps of skin, cords and frame',
    horse: { ...full, ringToRing: 20 },
    cinch: { ...straight, strands: 24, frameWidth: 4 },
    gaps: { skin: -0.4, frame: -0.3, muscle: -0.7 },
  },
  {
    // Lean -0.2: the edge 2 - 0.2 s is at 1.4 at the corner (1, 3). Above, (0.6, 7) to (1, 7).
    name: 'an overlap that is greatest at a corner of the elbow line',
    horse: { ...plumb, elbowRoom: 1, setBack: 3 },
    gaps: { skin: -0.4, frame: 1.4 / leaning, muscle: 0.4 },
  },
  {
    // Edge 3.5 of a frame 7 in wide: 1 along x at 12.
    name: 'a frame that is nearest',
    cinch: { ...straight, frameWidth: 7 },
    gaps: { skin: 2, frame: 1 / leaning, muscle: 1 / leaning },
  },
  {
    // Low edge at 33, top at 37, above the end (6.9, 36) of the elbow line. Forward by 0.3 at 33, by 7.5 -
    // 6.9 at 36.
    name: 'a frame that overlaps up to where the elbow line ends',
    horse: { ...full, ringToRing: 20 },
    cinch: { ...straight, strands: 2, frameWidth: 0.6, length: 73 },
    gaps: { frame: -0.6 },
  },
  {
    // Lean 0.4 / 18 = 1/45 on a plumb line: edge at 7 is 2 + 7/45.
    name: 'a round barrel',
    horse: { ...plumb, round: true },
    gaps: { skin: 2 - 7 / 45 },
  },
];

// k is 1.25: room 5, x = 5 up to 8.75, ring 2.5 forward. The lean is 2.5 by the ring's height.
const large: PlainHorse = {
  girth: 90,
  setBack: 0,
  round: false,
  barrelTold: true,
  girthTaped: true,
  setBackMeasured: true,
};
const rings: [string, PlainHorse, number][] = [
  ['45 - 14 k = 27.5, nothing known', large, 3 - 8.75 / 11],
  ['45 - 14 k = 27.5, a ring', { ...large, style: 'ring' }, 3 - 8.75 / 11],
  ['45 - 14.5 k = 26.875, a flat plate', { ...large, style: 'flat-plate' }, 3 - 21.875 / 26.875],
  ['45 - 16 k = 25, in the skirt', { ...large, style: 'in-skirt' }, 2.125],
  ['45 - 17 k = 23.75, dropped', { ...large, style: 'dropped' }, 3 - 21.875 / 23.75],
  ['45 - 20, a drop before the style', { ...large, style: 'ring', ringDrop: 20 }, 2.125],
  ['40 / 2, ring to ring before a drop', { ...large, ringToRing: 40, ringDrop: 20 }, 1.90625],
];

describe('worked out on paper', () => {
  test.each(cases)('$name', ({ horse = plumb, cinch = straight, gaps }) => {
    const found = secondGeometry(horse, cinch);
    for (const [front, gap] of Object.entries(gaps)) within(found[front as keyof Gaps], gap, 1e-9);
  });

  test.each(rings)('the ring is up by %s', (_name, horse, skin) => {
    within(secondGeometry(horse, straight).skin, skin, 1e-9);
  });

  test('a buckle below the midline is out of the model', () => {
    expect(() => secondGeometry(plumb, { ...straight, length: 7 })).toThrow(RangeError);
  });
});

const maybe = (min: number, max: number): fc.Arbitrary<number | undefined> =>
  fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });
const from = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const anyHorse: fc.Arbitrary<PlainHorse> = fc.record({
  girth: from(56, 90),
  elbowRoom: maybe(2, 6),
  setBack: from(-1, 8),
  ringToRing: maybe(24, 48),
  ringDrop: maybe(10, 18),
  style: fc.constantFrom('ring', 'flat-plate', 'in-skirt', 'dropped', undefined),
  round: fc.boolean(),
  barrelTold: fc.boolean(),
  girthTaped: fc.boolean(),
  setBackMeasured: fc.boolean(),
});
const anyCinch: fc.Arbitrary<PlainCinch> = fc.record({
  style: fc.constantFrom('straight', 'roper'),
  strands: fc.integer({ min: 9, max: 29 }),
  layers: fc.constantFrom(1, 2),
  barWidth: from(2, 5),
  frameWidth: from(2, 6),
  frameHeight: from(2, 5),
  length: from(14, 42),
  flareStart: from(0, 12),
});

describe('in two ways', () => {
  test('a geometry library and plain arithmetic find the same gaps', () => {
    const met = { clear: 0, overlap: 0, low: 0, high: 0 };
    fc.assert(
      fc.property(anyHorse, anyCinch, (horse, cinch) => {
        const library = secondGeometry(horse, cinch);
        const hand = gapsByHand(horse, cinch);
        // The library takes lines closer than a millionth for crossing.
        for (const front of ['skin', 'muscle', 'frame'] as const) within(hand[front], library[front], 1e-5);
        met[library.muscle > 0 ? 'clear' : 'overlap'] += 1;
        met[(cinch.length + 1) / 2 - cinch.frameHeight > (7 * horse.girth) / 72 ? 'high' : 'low'] += 1;
      }),
      { numRuns: 1000, seed: 3 },
    );
    expect(Math.min(...Object.values(met))).toBeGreaterThan(50);
  });

  test('a frame wholly above the elbow line is as far as the end of the line', () => {
    // Length 91: low edge at 42; a plumb frame 5 in wide, (2.5, 42), and the end (6.9, 36): (4.4, 6).
    const high = { ...straight, length: 91 };
    within(secondGeometry(plumb, high).frame, Math.hypot(4.4, 6), 1e-9);
    within(gapsByHand(plumb, high).frame, Math.hypot(4.4, 6), 1e-9);
  });
});
