/** Rules about cords and buckles at their bounds. */
import { describe, expect, it, test } from 'vitest';
import type { Candidate } from '../../src/cinch/candidate.ts';
import type { Use } from '../../src/order/types.ts';
import { orderKeys } from '../../src/order/order-schema.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { judgedBy } from '../support/judged.ts';
import { plainBuckle } from '../support/orders.ts';
import { within } from '../support/within.ts';

const least = 1e-9;

const special6 = { ...plainBuckle, id: 'six', double: { min: 27, max: 31 } };

describe('buckle-room', () => {
  const judged = (inches: number, k = 1) =>
    judgedBy('buckle-room', { k, model }, { frameClearance: { inches } });

  // Muscle: half an inch wanted, no floor.
  it.each([
    [0.5, 1, 'good'],
    [0.5 - least, 1, 'acceptable'],
    [0.5, 1.25, 'acceptable'],
    [0.625, 1.25, 'good'],
    [0, 1, 'acceptable'],
    [-least, 1, 'poor'],
  ] as const)('%f on a horse of size %f: %s', (clearance, k, judgement) => {
    expect(judged(clearance, k).judgement).toBe(judgement);
    within(judged(clearance, k).margin!, clearance, 1e-12);
  });

  test('a floor of the shop grows with the horse', () => {
    const own = { k: 2, model: { ...model, 'muscle-floor': 0.2 } };
    const found = (inches: number) => judgedBy('buckle-room', own, { frameClearance: { inches } });
    within(found(0.5).margin!, 0.1, 1e-12);
    expect([found(0.4).judgement, found(0.4 - least).judgement]).toEqual(['acceptable', 'poor']);
  });

  test('over the line no distance is told', () => {
    expect(judged(-0.4).told).not.toMatch(/\d/);
    expect(judged(0).told).toContain('stays 0');
    expect(judged(0.4).told).toContain('0.4 off');
  });
});

describe('buckle-strands', () => {
  const judged = (layers: Candidate['layers'], wide: number, more: Partial<Candidate> = {}) =>
    judgedBy(
      'buckle-strands',
      { model, shop: { buckles: [special6, plainBuckle] } },
      {
        style: 'straight',
        buckle: { ...plainBuckle, special: false },
        ...{ layers, strands: 29, width: wide, buckleWidth: 4, ...more },
      },
    );

  // From 7 in on a special buckle: common practice, no source.
  it.each([
    [0, 4, 'refuse'],
    [1, 7 - least, 'good'],
    [1, 7, 'refuse'],
    [2, 7.25, 'refuse'],
  ] as const)('a straight in %i layers, %f wide: %s', (layers, width, judgement) => {
    expect(judged(layers, width).judgement).toBe(judgement);
  });

  test('a roper may be as wide as it likes where it fans out: at the buckle weaves pinch it', () => {
    const roper = { style: 'high-flare', width: 7.75 } as const;
    expect(judged(2, 7.75, { ...roper, buckleWidth: 7 - least }).judgement).toBe('good');
    expect(judged(2, 7.75, { ...roper, buckleWidth: 7 })).toMatchObject({ judgement: 'refuse', margin: 0 });
  });

  test('a special buckle takes any width, but not what it has no room for', () => {
    const special = { buckle: { ...plainBuckle, special: true } };
    expect(judged(1, 7.25, special).judgement).toBe('good');
    expect(judged(0, 4, special).judgement).toBe('refuse');
  });

  test('what is told, and by how much it is too wide', () => {
    expect(judged(2, 7.25).margin).toBe(-0.25);
    expect(judged(2, 7.25).told).toContain('7.25 wide below the buckle');
    expect(judged(2, 7.25).told).toContain('needs a special buckle from 7 up');
    expect(judged(0, 4).told).toContain('b buckle does not take 29 strands');
    expect(judged(0, 4, { strands: 33 }).told).toBe("none of the shop's buckles take 33 strands");
    expect(judged(1, 4).told).toBe('the b buckle takes 29 strands strung single');
    expect(judged(2, 4).told).toBe('the b buckle takes 29 strands strung double');
  });
});

describe('layers', () => {
  const judged = (layers: Candidate['layers'], strands: number) =>
    judgedBy('layers', {}, { layers, strands });

  // 17 and fewer single, 27 and more double: src/numbers/sources.ts, layers.
  it.each([
    [0, 29, 'cannot-tell'],
    [1, 17, 'good'],
    [1, 19, 'acceptable'],
    [1, 26, 'acceptable'],
    [1, 27, 'poor'],
    [2, 17, 'acceptable'],
    [2, 18, 'good'],
    [2, 27, 'good'],
  ] as const)('in %i, %i strands: %s', (layers, strands, judgement) => {
    expect(judged(layers, strands).judgement).toBe(judgement);
  });

  test('are told as they are', () => {
    expect(judged(1, 17).told).toBe('17 strands strung single');
    expect(judged(2, 19).told).toBe('19 strands strung double');
    expect(judged(0, 29).told).toBe('the buckle does not take them');
  });
});

describe('pressure-index', () => {
  const judged = (pressure: number) => judgedBy('pressure-index', {}, { pressure });
  // Werner et al. 2002, under saddles: mean 13.2 kPa, maximum 34.5 kPa; 1 psi is 6.894757 kPa (NIST SP 811);
  // read up to 42 % below.
  const mean = 13.2 / 6.894757 / 1.42;

  // Never poor: a saddle's maximum says nothing of a girth.
  it.each([
    [mean - least, 'good'],
    [mean + least, 'acceptable'],
    [34.5 / 6.894757 + 1, 'acceptable'],
    [1000, 'acceptable'],
  ] as const)('%f psi: %s', (pressure, judgement) => {
    expect(judged(pressure).judgement).toBe(judgement);
  });

  test('how far it is from the mean, and the number', () => {
    within(judged(1).margin!, 0.9145, 1e-4);
    expect(judged(1.5).told).toContain('1.5 behind the elbow');
  });
});

describe('roping-strength', () => {
  const judged = (strands: number, use: Use | undefined = 'roping') =>
    judgedBy('roping-strength', { order: { use }, practice: { ponyShare: 0 } }, { strands });

  // Roping 19, ranch work 17: common practice, no source.
  it.each([
    ['roping', 19, 'good', 0],
    ['roping', 18, 'acceptable', -1],
    ['roping', 15, 'acceptable', -4],
    ['roping', 14, 'poor', -5],
    ['ranch', 17, 'good', 0],
    ['ranch', 16, 'acceptable', -1],
    ['ranch', 13, 'acceptable', -4],
    ['ranch', 12, 'poor', -5],
  ] as const)('for %s, %i: %s, margin %i', (use, strands, ...[judgement, margin]) => {
    expect(judged(strands, use)).toEqual({
      judgement,
      margin,
      told: `${strands} strands are ${judgement === 'good' ? 'enough' : 'few'} for ${use === 'ranch' ? 'ranch work' : use}`,
    });
  });

  test('of a pony as many as are usual are enough, and no count is poor; half a pony asks for half as much more', () => {
    const ofPony = (ponyShare: number, strands: number) =>
      judgedBy('roping-strength', { order: { use: 'roping' }, practice: { ponyShare } }, { strands })
        .judgement;
    expect([13, 11, 9].map((strands) => ofPony(1, strands))).toEqual(['good', 'acceptable', 'acceptable']);
    expect([16, 15, 8, 7].map((strands) => ofPony(0.5, strands))).toEqual([
      ...['good', 'acceptable', 'acceptable', 'poor'],
    ]);
  });

  test('does not apply where nothing pulls, and cannot tell where no use was given', () => {
    for (const use of orderKeys.use.words.filter((each) => each !== 'roping' && each !== 'ranch')) {
      expect(judged(11, use).judgement).toBe('not-applicable');
      expect(judged(11, use).told).toContain(use);
    }
    const unsaid = judgedBy('roping-strength', { order: {} }, { strands: 21 });
    expect(unsaid).toMatchObject({
      judgement: 'cannot-tell',
      told: 'no use given',
    });
  });
});

describe('strand-range', () => {
  const judged = (strands: number) =>
    judgedBy('strand-range', { shop: { strands: { min: 11, max: 31 } } }, { strands });

  it.each([
    [11, 'good', 0],
    [31, 'good', 0],
    [13, 'good', 2],
    [27, 'good', 4],
    [9, 'refuse', -2],
    [35, 'refuse', -4],
    [18, 'refuse', undefined],
  ] as const)('%i: %s, margin %p', (strands, judgement, margin) => {
    expect(judged(strands)).toMatchObject({ judgement, margin });
  });

  test('what is told', () => {
    expect(judged(33).told).toBe('33 strands; the shop ties 11 to 31');
    expect(judged(18).told).toContain('is even');
    expect(judged(17).told).toContain('17 strands is a count the shop ties');
  });
});

describe('usual-length', () => {
  const judged = (length: number) => judgedBy('usual-length', {}, { length });

  // 26 to 34 in steps of 2: src/numbers/sources.ts, usual-lengths.
  it.each([
    [26, 'good'],
    [34, 'good'],
    [30.125, 'good'],
    [29.875, 'good'],
    [30.126, 'acceptable'],
    [29.874, 'acceptable'],
    [24, 'acceptable'],
    [36, 'acceptable'],
    [25.9, 'good'],
    [34.1, 'good'],
    [31, 'acceptable'],
  ] as const)('%f: %s', (length, judgement) => {
    expect(judged(length).judgement).toBe(judgement);
    expect(judged(length).told).toContain(String(length));
  });

  test('outside and between are told apart', () => {
    expect(judged(22).told).toContain('not a standard length');
    expect(judged(31).told).toContain('between the standard steps of 2');
    expect(judged(32).told).toMatch(/is a standard length/);
  });
});

describe('length-agreement', () => {
  const judged = (length: number, measured = true) =>
    judgedBy('length-agreement', { lengthNeed: { crossCheck: 32, measured }, model }, { length });

  it.each([
    [34, 'good', 0],
    [30, 'good', 0],
    [34 + 1e-12, 'good', 0],
    [34.001, 'acceptable', -0.001],
    [29.999, 'acceptable', -0.001],
    [32, 'good', 2],
  ] as const)('%f: %s, margin %f', (length, judgement, margin) => {
    expect(judged(length).judgement).toBe(judgement);
    within(judged(length).margin!, margin, 1e-9);
  });

  test('only a tape that was laid is to be checked', () => {
    expect(judged(28).told).toBe('4 off the rule of thumb, 32 by the girth: check the tape');
    expect(judged(28, false).told).toBe('4 off the rule of thumb, 32 by the girth: tape ring to ring');
    expect(judged(32).told).toContain('32 by the girth');
  });
});
