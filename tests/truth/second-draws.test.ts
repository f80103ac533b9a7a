/** The draws of the second geometry: each chance alone on paper, then all together. */
import { describe, expect, test } from 'vitest';
import {
  clears,
  gapsByHand,
  shareThatClears,
  type PlainCinch,
  type PlainHorse,
} from '../support/second-geometry.ts';
import { asTold, type Chance } from '../support/second-lines.ts';
import { full, plumb, straight } from '../support/second-paper.ts';
import { within } from '../support/within.ts';

// The skin's gap is 4 - 2 - 7 times the lean, which is the ring's place by its station, 2 / 20.
const usualElbow: PlainHorse = { ...full, elbowRoom: undefined };
const byDrop: PlainHorse = { ...full, ringToRing: undefined, ringDrop: 16 };
const bySkirt: PlainHorse = { ...full, ringToRing: undefined, style: 'in-skirt' };
const heighted: PlainHorse = { ...full, girthTaped: false };
const toNinety = 18 / (8.31 / 2.54);

interface Drawn {
  readonly name: string;
  readonly horse: PlainHorse;
  readonly chance: Partial<Chance>;
  readonly skin: number;
}

/** Standard deviations drawn, and the gap of the skin then. */
const drawn: Drawn[] = [
  {
    name: 'taped elbow room 4 x 0.25: room 5, ring 3, lean 0.15',
    horse: full,
    chance: { elbow: 4 },
    skin: 3 - 1.05,
  },
  { name: 'usual elbow room 2 x 0.5: the same', horse: usualElbow, chance: { elbow: 2 }, skin: 3 - 1.05 },
  {
    name: 'measured set-back 4 x 0.25: ring 1, lean 0.05',
    horse: full,
    chance: { setBack: 4 },
    skin: 2 - 0.35,
  },
  {
    name: 'named set-back 1 x 1: the same',
    horse: { ...full, setBackMeasured: false },
    chance: { setBack: 1 },
    skin: 2 - 0.35,
  },
  {
    name: 'ring 2.5 x 0.4 forward: ring 3, lean 0.15',
    horse: full,
    chance: { ringPlace: 2.5 },
    skin: 2 - 1.05,
  },
  {
    name: 'ring to ring 20 x 0.25: 25 up, lean 0.08',
    horse: full,
    chance: { ringStation: 20 },
    skin: 2 - 0.56,
  },
  { name: 'measured drop 10 x 0.5: the same', horse: byDrop, chance: { ringStation: 10 }, skin: 2 - 0.56 },
  {
    name: 'usual drop 10/3 x 1.5: the same',
    horse: bySkirt,
    chance: { ringStation: 10 / 3 },
    skin: 2 - 0.56,
  },
  {
    name: 'told barrel 5 x 0.1: lean by 0.5 / 18 more',
    horse: full,
    chance: { push: 5 },
    skin: 1.3 - 7 / 36,
  },
  {
    name: 'untold barrel 2.5 x 0.2: the same',
    horse: { ...full, barrelTold: false },
    chance: { push: 2.5 },
    skin: 1.3 - 7 / 36,
  },
  {
    name: 'strand 10 x 0.06: 1.6 times as wide, 6.4 in',
    horse: full,
    chance: { strand: 10 },
    skin: 0.8 - 0.7,
  },
  // G 90, k 1.25: the taped room stays, the ring is at 1.5, the lean 0.075, and the skin ends at 8.75.
  { name: 'taped girth 36 x 0.5', horse: full, chance: { girth: 36 }, skin: 2 - 8.75 * 0.075 },
  { name: 'girth from height', horse: heighted, chance: { girth: toNinety }, skin: 2 - 8.75 * 0.075 },
  // The mean push grows to 0.5, the lean by 0.5 / 22.5.
  {
    name: 'taped girth, round barrel',
    horse: { ...full, round: true },
    chance: { girth: 36 },
    skin: 2 - 8.75 * (0.075 + 1 / 45),
  },
  // Room 5, ring 2.5.
  { name: 'taped girth, usual elbow room', horse: usualElbow, chance: { girth: 36 }, skin: 3 - 8.75 * 0.125 },
  // Ring 1.5, up by 45 - 16 = 29, or by 45 - 16 x 1.25 = 25.
  { name: 'taped girth, measured drop', horse: byDrop, chance: { girth: 36 }, skin: 2 - (8.75 * 1.5) / 29 },
  { name: 'taped girth, usual drop', horse: bySkirt, chance: { girth: 36 }, skin: 2 - 8.75 * 0.06 },
];

describe('draws', () => {
  test.each(drawn)('$name', ({ horse, chance, skin }) => {
    within(gapsByHand(horse, straight, { ...asTold, ...chance }).skin, skin, 1e-9);
  });

  test('the opening 2 x 0.15 turns the upper elbow line to 0.4', () => {
    // From (3.7, 12) to x = 4 + 0.4 (s - 7): 6 - 3.7 along x.
    within(gapsByHand(full, straight, { ...asTold, opening: 2 }).frame, 2.3 / Math.sqrt(1.16), 1e-9);
  });

  test('wide strands are still cut to the bar', () => {
    // 12 strands in two layers, 1.6 times as wide: 4.8 in up to 6, cut from 2.4 to 2 in at 8, so 3.4 in at 7.
    // Edge (3, 6) (2.4, 7).
    const cinch: PlainCinch = { ...straight, strands: 12, layers: 2, barWidth: 2, frameWidth: 2, length: 23 };
    const gaps = gapsByHand(full, cinch, { ...asTold, strand: 10 });
    within(gaps.skin, 1, 1e-9);
    within(gaps.muscle, 1.6, 1e-9);
  });

  test('the skin needs 1 in on the girth as told, the muscle none', () => {
    const narrow = { ...straight, frameWidth: 4 };
    // The skin's gap is 1.149 where k is 1.25, and 0.95 in the second.
    expect(clears({ ...full, round: true }, narrow, { ...asTold, girth: 36 })).toBe(true);
    expect(clears(full, narrow, { ...asTold, ringPlace: 2.5 })).toBe(false);
    // A plumb frame 8.8 or 9.2 in wide clears by 0.1 in or overlaps by 0.1.
    expect(clears(plumb, { ...straight, frameWidth: 8.8 }, asTold)).toBe(true);
    expect(clears(plumb, { ...straight, frameWidth: 9.2 }, asTold)).toBe(false);
  });

  test('hardly any spread leaves all or nothing', () => {
    const how = { draws: 500, seed: 1, spreadTimes: 1e-6 };
    const share = (horse: PlainHorse): number => shareThatClears(horse, straight, how);
    // Plumb lines: the skin's gap is the room less 2.
    expect(share({ ...plumb, elbowRoom: 3.1, setBack: 1.1 })).toBe(1);
    expect(share({ ...plumb, elbowRoom: 2.9, setBack: 0.9 })).toBe(0);
    // k is 1.25, and so much is asked.
    expect(share({ ...plumb, girth: 90, elbowRoom: 3.3, setBack: 0.8 })).toBe(1);
    expect(share({ ...plumb, girth: 90, elbowRoom: 3.1, setBack: 0.6 })).toBe(0);
  });

  // Small spreads add up: 84.13 % of draws clear a floor one sum below the gap, half one at it.
  const times = 0.02;
  const oneAbove = 0.841345;
  // With 40 000 draws a share has a standard deviation of 0.0025 at most.
  const how = { draws: 40_000, seed: 7, spreadTimes: times };

  /** A width that puts a gap a sum of spreads above its floor; strands need not be whole. */
  const ofWidth = (width: number): PlainCinch => ({ ...straight, strands: width / 0.25 });

  test('of the skin with everything taped, the spreads add up', () => {
    // The gap is 4 - 0.7 less half the width, 2.3. By room: 1 - 7/20. By place, and set-back: 7/20. By
    // station: 14/400. By push: 7/18. By k: 14/20 for the ring less 0.7 for the end of the skin: nothing.
    const sum = Math.hypot(
      0.25 * (13 / 20),
      0.25 * (7 / 20),
      0.4 * (7 / 20),
      0.25 * (14 / 400),
      0.1 * (7 / 18),
      0.06 * 2.3,
    );
    within(shareThatClears(full, ofWidth(4.6), how), 0.5, 0.01);
    within(shareThatClears(full, ofWidth(4.6 - 2 * times * sum), how), oneAbove, 0.01);
  });

  test('of the skin with nothing taped, the spreads add up', () => {
    // The gap is 4 k - 14/22 k less half the width, which alone does not grow with k.
    const horse = { girth: 72, setBack: 0, round: false };
    const untold = { ...horse, barrelTold: false, girthTaped: false, setBackMeasured: false };
    const width = 2 * (3 - 14 / 22);
    const sum = Math.hypot(
      (8.31 / 2.54 / 72) * (4 - 14 / 22),
      0.5 * (15 / 22),
      7 / 22,
      0.4 * (7 / 22),
      1.5 * (14 / 22 ** 2),
      0.2 * (7 / 18),
      0.06 * (width / 2),
    );
    within(shareThatClears(untold, ofWidth(width), how), 0.5, 0.01);
    within(shareThatClears(untold, ofWidth(width - 2 * times * sum), how), oneAbove, 0.01);
  });

  test('of a frame, where the opening decides, the spreads add up', () => {
    // Lean 0.2. The frame's upper corner at 16 is 4.9 - 3.2 = 1.7 behind, less half its width. By the opening
    // 9, by room 1 - 1.6, by k 3.2 - 0.7, by the ring's place 1.6, by its station 0.32, by push 16/18.
    const sum = Math.hypot(
      0.15 * 9,
      0.25 * 0.6,
      (0.5 / 72) * 2.5,
      0.25 * 1.6,
      0.4 * 1.6,
      0.25 * 0.32,
      1.6 / 18,
    );
    const horse = { ...full, ringToRing: 20 };
    const cinch = { ...straight, strands: 8, frameWidth: 3.4 - 2 * times * sum };
    within(shareThatClears(horse, cinch, how), oneAbove, 0.01);
  });

  test('a seed draws the same share again, another seed another', () => {
    const share = (seed: number): number => shareThatClears(full, straight, { draws: 2000, seed });
    expect(share(1)).toBe(share(1));
    expect(new Set([1, 2, 3, 4, 5].map(share)).size).toBeGreaterThan(1);
  });
});
