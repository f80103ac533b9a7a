/** Rules about horse and saddle at their bounds. */
import { describe, expect, it, test } from 'vitest';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import type { Estimate } from '../../src/horse/estimate.ts';
import type { Candidate, Clearance } from '../../src/cinch/candidate.ts';
import type { Trouble } from '../../src/order/types.ts';
import { judgedBy } from '../support/judged.ts';
import { orderOf } from '../support/orders.ts';
import { within } from '../support/within.ts';

const least = 1e-9;

describe('buckle-height', () => {
  const judged = (above: number, below = 5, k = 1) =>
    judgedBy('buckle-height', { k, model }, { buckleAboveElbow: above, buckleBelowWidest: below });

  it.each([
    [4, 5, 1, 'good'],
    [4 - least, 5, 1, 'acceptable'],
    [3, 5, 1, 'acceptable'],
    [3 - least, 5, 1, 'refuse'],
    [9, 0, 1, 'good'],
    [9, -least, 1, 'refuse'],
  ] as const)('%f above the elbow, %f below the widest part, size %f: %s', (...row) => {
    const [above, below, k, judgement] = row;
    expect(judged(above, below, k).judgement).toBe(judgement);
  });

  test('bounds grow with the horse', () => {
    expect(judged(5, 5, 1.25).judgement).toBe('good');
    expect(judged(4, 5, 1.25).judgement).toBe('acceptable');
    expect(judged(3.5, 5, 1.25).judgement).toBe('refuse');
    within(judged(4, 5, 1.25).margin!, 0.25, 1e-12);
  });

  test('each refusal tells its own number', () => {
    expect(judged(9, -0.5).margin).toBe(-0.5);
    expect(judged(9, -0.5).told).toContain('0.5 above the widest');
    expect(judged(2).margin).toBe(-1);
    expect(judged(2).told).toContain('2 above the point of the elbow, needs 3');
    expect(judged(0).told).toContain('0 above');
    expect(judged(-1).told).toContain('1 below the point of the elbow');
    expect(judged(3.5).told).toContain('3.5 above the point of the elbow');
    expect(judged(3.5).margin).toBe(0.5);
  });
});

describe('elbow-clearance', () => {
  const judged = (inches: number, likely = 0.5, more: Partial<Clearance> = {}) =>
    judgedBy(
      'elbow-clearance',
      { model },
      {
        clearance: {
          ...{
            inches,
            likely,
            chance: Math.min(0.95, likely),
            floor: 1,
            skin: true,
            where: 'cinch',
            ...more,
          },
        },
      },
    );
  const muscle = { floor: 0, skin: false };

  it.each([
    [1, 0.8, 'good'],
    [1, 0.8 - least, 'acceptable'],
    [1, 0.6, 'acceptable'],
    [1, 0.6 - least, 'poor'],
    [1 - least, 0.99, 'refuse'],
  ] as const)('%f in, %f sure: %s', (inches, sure, judgement) => {
    expect(judged(inches, sure).judgement).toBe(judgement);
    within(judged(inches, sure).margin!, inches - 1, 1e-12);
  });

  test('goes by the exact chance, not by the rounded one', () => {
    const strict = { ...model, 'chance-good': 0.97 };
    const clearance = { inches: 2, likely: 0.98, chance: 0.95, floor: 1 } as Clearance;
    expect(judgedBy('elbow-clearance', { model: strict }, { clearance }).judgement).toBe('good');
  });

  test.each(['cinch', 'buckle'] as const)('a %s against muscle needs no distance at all', (where) => {
    expect(judged(0, 0.6, { ...muscle, where }).judgement).toBe('acceptable');
    expect(judged(-least, 0.6, { ...muscle, where }).judgement).toBe('refuse');
    expect(judged(0.2, 0.6, { ...muscle, where }).margin).toBe(0.2);
  });

  test('what is told of one too near', () => {
    expect(judged(-0.3).told).toBe('reaches onto the elbow, about 0.3');
    expect(judged(-0.3, 0.1, { ...muscle, where: 'buckle' }).told).toBe(
      'the buckle reaches onto the elbow, about 0.3',
    );
    // A shop may ask for room against muscle.
    expect(judged(0, 0.1, { floor: 0.5, skin: false, where: 'buckle' }).told).toContain(
      '0 off the elbow, needs 0.5',
    );
    expect(judged(0).told).toContain('0 off the elbow, needs 1');
    expect(judged(0.9).told).toContain('0.9 off the elbow, needs 1');
    // Numbers that print alike would be no reason.
    expect(judged(0.98).told).toContain('just short of the 1 it needs');
    expect(judged(0.97).told).toContain('0.97 off');
  });

  test('what is told of one that clears: never surer than the model is', () => {
    expect(judged(1.5, 0.99).told).toBe('should clear the elbow by about 1.5; 0.95 to keep the 1 it needs');
    expect(judged(0.4, 0.7, { ...muscle, where: 'buckle' }).told).toBe(
      'should clear the elbow by about 0.4 at the buckle; 0.7 to clear',
    );
    expect(judged(0.4, 0.7, muscle).told).toBe(
      'should clear the elbow by about 0.4 above its point; 0.7 to clear',
    );
  });
});

describe('latigo-run', () => {
  const judged = (run: number, runSd = 0.35) => judgedBy('latigo-run', { model }, { run, runSd });

  it.each([
    [3, 0.35, 'poor'],
    [3 - least, 0.35, 'refuse'],
    [10, 0.35, 'poor'],
    [10 + least, 0.35, 'refuse'],
    [4 - least, 0, 'poor'],
    [4, 0, 'good'],
    [8, 0, 'good'],
    [8 + least, 0, 'poor'],
    [4.5, 0.5, 'good'],
    [4.5, 0.5 + least, 'acceptable'],
    [7.5, 0.5 + least, 'acceptable'],
  ] as const)('%f, give or take %f: %s', (run, sd, judgement) => {
    expect(judged(run, sd).judgement).toBe(judgement);
  });

  it.each([
    [5, 1],
    [7, 1],
    [3.5, -0.5],
    [8.5, -0.5],
    // Told from the bound that refuses.
    [2, -1],
    [12, -2],
  ])('%f is %f within the nearest bound', (run, margin) => {
    within(judged(run).margin!, margin, 1e-12);
  });

  test('the bound that is told is the one that was passed', () => {
    expect(judged(2).told).toContain('too short: 2 each side, needs 3');
    expect(judged(0).told).toContain('too short: 0 each side, needs 3');
    expect(judged(-1.5).told).toContain('reaches 1.5 past each ring; the ring-to-buckle gap needs 3');
    expect(judged(12).told).toContain('too long: 12 each side, at most 10');
    expect(judged(6).told).toContain('gap 6 each side, give or take 0.35');
  });
});

describe('ring-slant', () => {
  const judged = (x: number, k = 1) => judgedBy('ring-slant', { ring: { x }, k, model }, {});

  it.each([
    [1, 'good', 'plumb'],
    [-1, 'good', 'plumb'],
    [1.001, 'acceptable', 'ahead of the groove'],
    [-1.001, 'acceptable', 'behind the groove'],
    [2.5, 'acceptable', 'ahead of the groove'],
    [2.501, 'poor', 'pulls the cinch that way'],
    [4, 'poor', 'pulls the cinch that way'],
    [-4, 'poor', 'behind the groove, and pulls the cinch that way'],
    [4.001, 'poor', 'no cinch fixes it'],
    [-4.001, 'poor', "behind the groove: a saddle maker's call"],
  ] as const)('%f: %s, %s', (x, judgement, words) => {
    expect(judged(x).judgement).toBe(judgement);
    expect(judged(x).told).toContain(words);
    expect(judged(x).told).toContain(String(Math.abs(x)));
    within(judged(x).margin!, 2.5 - Math.abs(x), 1e-12);
  });

  test('bounds grow with the horse, and a hair of rounding is no slant', () => {
    expect(judged(1.25, 1.25).judgement).toBe('good');
    expect(judged(1 + 1e-12).judgement).toBe('good');
    within(judged(2, 2).margin!, 3, 1e-12);
    expect(judged(5, 2).judgement).toBe('acceptable');
  });

  test('a ring over the groove hangs nowhere else', () => {
    expect(judged(0).judgement).toBe('good');
  });
});

describe('flare-position', () => {
  const judged = (value: number, style: Candidate['style'], k = 1) =>
    judgedBy('flare-position', { ring: { setBack: { value } as Estimate }, k, model }, { style });

  // No high flare on full rigging; 7/8 is no trouble: common practice, no source. An eighth of the bars is
  // 1.5 in.
  it.each([
    [1.5, 'high-flare', 'good'],
    [1, 'high-flare', 'good'],
    [1 - least, 'high-flare', 'poor'],
    [0, 'high-flare', 'poor'],
    [-1.5, 'high-flare', 'poor'],
    [6, 'high-flare', 'good'],
    [0, 'low-flare', 'good'],
    [0, 'straight', 'not-applicable'],
  ] as const)('ring %f back of full, %s: %s', (back, style, judgement) => {
    expect(judged(back, style).judgement).toBe(judgement);
  });

  test('the bound grows with the horse; only a high flare has a margin', () => {
    expect(judged(1.5, 'high-flare', 1.5).judgement).toBe('good');
    within(judged(1, 'high-flare', 1.5).margin!, -0.5, 1e-12);
    within(judged(1.5, 'high-flare').margin!, 0.5, 1e-12);
    expect(judged(0, 'low-flare').margin).toBeUndefined();
  });

  test('each style is told by itself, and which way the ring hangs', () => {
    expect(judged(0.5, 'high-flare').told).toContain('close behind full position');
    expect(judged(0, 'high-flare').told).toContain('with the ring at full position');
    expect(judged(-0.5, 'high-flare').told).toContain('ahead of full position');
    const told = [
      judged(0, 'straight'),
      judged(0, 'low-flare'),
      judged(0, 'high-flare'),
      judged(2, 'high-flare'),
    ];
    expect(new Set(told.map((one) => one.told)).size).toBe(4);
    expect(told.every((one) => one.told !== '')).toBe(true);
  });
});

describe('grip', () => {
  const judged = (level: number, style: Candidate['style'], trouble: Trouble[] = []) =>
    judgedBy(
      'grip',
      {
        slipNeed: { level, because: level > 0 ? ['one', 'two', 'three'] : [] },
        order: orderOf({ horse: { trouble } }),
      },
      { style },
    );

  it.each([
    ['straight', 'acceptable'],
    ['high-flare', 'acceptable'],
    ['low-flare', 'good'],
  ] as const)('a saddle that creeps forward, %s: %s', (style, judgement) => {
    expect(judged(2, style, ['creeps-forward']).judgement).toBe(judgement);
  });

  it.each([
    [0, 'straight', 'not-applicable'],
    [0, 'high-flare', 'not-applicable'],
    [1, 'straight', 'good'],
    [1, 'high-flare', 'good'],
    [1, 'low-flare', 'acceptable'],
    [2, 'straight', 'acceptable'],
    [2, 'high-flare', 'good'],
    [2, 'low-flare', 'acceptable'],
  ] as const)('need %i, %s: %s', (level, style, judgement) => {
    const { judgement: found, told } = judged(level, style);
    expect(found).toBe(judgement);
    expect(told.includes('one, two and three')).toBe(level > 0);
  });

  test('each judgement has its own words', () => {
    const told = [
      judged(0, 'straight'),
      judged(1, 'straight'),
      judged(2, 'straight'),
      judged(2, 'high-flare'),
    ];
    expect(new Set(told.map((one) => one.told)).size).toBe(4);
  });
});
