/** Girth, room, lines and slip: value, spread and basis. */
import { describe, expect, it, test } from 'vitest';
import { centreLineOf, pushOf } from '../../src/horse/centre-line.ts';
import { elbowLineOf } from '../../src/horse/elbow-line.ts';
import { short } from '../../src/horse/estimate.ts';
import { factsOf, workingOf } from '../../src/horse/facts.ts';
import { girthFromHeight, girthOf, girthWorking } from '../../src/horse/girth.ts';
import { slipNeed } from '../../src/horse/slip-need.ts';
import type { Horse } from '../../src/order/types.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { orderOf } from '../support/orders.ts';
import { within } from '../support/within.ts';
import { done, lineOf } from '../support/working.ts';

const CM = 2.54;
const facts = (...order: Parameters<typeof orderOf>) => factsOf(orderOf(...order), defaultModel);

describe('heart girth', () => {
  const girth = (horse: Partial<Horse>, model = defaultModel) => girthOf({ trouble: [], ...horse }, model);

  test('taped: as it is, as sure as a tape, or as the height if that were surer', () => {
    expect(girth({ heartGirth: 71 })).toMatchObject({ value: 71, sd: 0.5, kind: 'measured', basis: 'taped' });
    expect(girth({ heartGirth: 71, height: 60 }).sd).toBe(0.5);
    const poorTape = { ...defaultModel, 'girth-taped-sd': 4 };
    expect(girth({ heartGirth: 71 }, poorTape).sd).toBe(4);
    expect(girth({ heartGirth: 71, height: 60 }, poorTape).sd).toBe(girthFromHeight(60, undefined).sd);
  });

  test('of a light horse from its height, with both spreads of the fit', () => {
    const found = girth({ height: 60 });
    expect(found.kind).toBe('assumed');
    // Squares add up (JCGM 100:2008, 5.1.2). 5.3 and 6.4 cm: src/numbers/girth-fit.ts.
    within(found.sd, Math.sqrt(5.3 * 5.3 + 6.4 * 6.4) / CM, 1e-12);
  });

  it.each(['pony', 'mule', 'donkey', 'draft'] as const)(
    'of a %s with twice the spread of the line',
    (kind) => {
      const found = girth({ height: 60, kind });
      expect(found.kind).toBe('assumed');
      within(found.sd, Math.sqrt(10.6 * 10.6 + 6.4 * 6.4) / CM, 1e-12);
      if (kind !== 'draft') expect(found.value).toBe(girth({ height: 60, kind: 'light' }).value);
    },
  );

  // 1.104 x 60 in x 2.54 + 15.7 cm is 72.42 in; 6 percent more at condition 8, 8 less at 1.
  it.each([
    [8, 76.77],
    [5.5, 73.15],
    [1, 66.63],
  ])('of a horse of condition %f: %f in', (condition, inches) => {
    within(girth({ height: 60, condition }).value, inches, 0.005);
  });

  it.each([
    [{}, 'from height, by a fit to published breed averages'],
    [{ condition: 8 }, 'from height, by a fit to published breed averages, for a horse of condition 8'],
    [
      { condition: 8, kind: 'draft' },
      'from height, by the average of one published draft breed, for a horse of condition 8',
    ],
    [
      { condition: 4.5, kind: 'pony' },
      'from height, by a fit for light horses, for a pony of condition 4.5; we found no figure for a pony',
    ],
  ] as const)('the basis of %j says the condition that was given', (horse, basis) => {
    expect(girth({ height: 60, ...horse }).basis).toBe(basis);
  });

  test('with neither given is the average, and very unsure', () => {
    expect(girth({})).toMatchObject({ value: 72, sd: 6, kind: 'assumed' });
  });

  it.each(['light', 'draft'] as const)(
    'the working of a %s horse by its height comes to the girth',
    (kind) => {
      const order = orderOf({ horse: { heartGirth: undefined, height: 62, kind } });
      const found = factsOf(order, defaultModel).girth;
      const line = lineOf(girthWorking(found, order, defaultModel), 'G');
      within(done(line.sum) / CM, found.value, 0.01);
      expect(line.result).toBe(`${short(found.value)} in`);
    },
  );

  it.each(['light', 'draft'] as const)(
    'the working of a fat %s horse has a line for its condition',
    (kind) => {
      const horse = { heartGirth: undefined, height: 62, kind, condition: 8 };
      const order = orderOf({ horse });
      const found = factsOf(order, defaultModel).girth;
      const lines = girthWorking(found, order, defaultModel);
      expect(lines.map(({ symbol }) => symbol)).toEqual(['G at condition 5', 'G', 'k']);
      within(done(lines[0]!.sum) / CM, found.value / 1.06, 0.01);
      within(done(lines[1]!.sum), found.value, 0.01);
      expect(lines[1]!.result).toBe(`${short(found.value)} in`);
      // Beside a tape at the rings.
      const ringed = orderOf({ horse, saddle: { ringToRing: 46 } });
      const symbols = girthWorking(factsOf(ringed, defaultModel).girth, ringed, defaultModel);
      expect(symbols.map(({ symbol }) => symbol)).toEqual([
        'G at condition 5',
        'G by height',
        'G by the rings',
        'G',
        'k',
      ]);
      const usual = orderOf({ horse: { ...horse, condition: 5 } });
      const plain = girthWorking(factsOf(usual, defaultModel).girth, usual, defaultModel);
      expect(plain.map(({ symbol }) => symbol)).toEqual(['G', 'k']);
    },
  );

  test('a taped one needs no working but the size factor', () => {
    const order = orderOf({ horse: { heartGirth: 75, height: 62 } });
    const lines = girthWorking(factsOf(order, defaultModel).girth, order, defaultModel);
    expect(lines.map(({ symbol }) => symbol)).toEqual(['k']);
    within(done(lines[0]!.sum), Number(lines[0]!.result), 0.005);
    within(Number(lines[0]!.result), 75 / 72, 0.005);
  });

  test('with neither given there is no working from a height', () => {
    const order = orderOf({ horse: { heartGirth: undefined, height: undefined } });
    const lines = girthWorking(factsOf(order, defaultModel).girth, order, defaultModel);
    expect(lines.map(({ symbol }) => symbol)).toEqual(['k']);
  });
});

describe('elbow room', () => {
  test('a hand, scaled with the horse', () => {
    expect(facts({ horse: { heartGirth: 90 } }).room).toMatchObject({
      value: 5,
      sd: 0.5,
      kind: 'assumed',
      weighed: false,
    });
  });

  test('taped: as it is', () => {
    const { room } = facts({ horse: { elbowRoom: 3.5 } });
    expect(room).toMatchObject({
      value: 3.5,
      sd: 0.25,
      kind: 'measured',
      basis: 'measured',
      weighed: false,
      perGirth: 0,
    });
  });

  test('a tape is never less sure than no tape', () => {
    const order = orderOf({ horse: { elbowRoom: 3.5 } });
    expect(factsOf(order, { ...defaultModel, 'elbow-room-taped-sd': 0.9 }).room.sd).toBe(0.5);
  });

  test('only an assumed one has working, and it comes to the room', () => {
    const assumed = facts({ horse: { heartGirth: 80 } });
    const line = lineOf(workingOf(assumed), 'E');
    within(done(line.sum), assumed.room.value, 0.02);
    expect(line.result).toBe(`${short(assumed.room.value)} in`);
    const taped = workingOf(facts({ horse: { elbowRoom: 3.5 } })).map(({ symbol }) => symbol);
    expect(taped).toEqual(['k', 'a', 'b', 'x_ring', 's_ring', 'ring to ring', 'L', 'L by girth']);
  });
});

describe('lines on the unrolled side', () => {
  test('the elbow line is straight up from armpit to elbow, and opens below and above', () => {
    const [x0, s0, x1, s1, x2, s2, x3, s3] = elbowLineOf(4, 90, defaultModel);
    const k = 90 / 72;
    expect([s0, s1, s2, s3]).toEqual([0, 3 * k, 7 * k, 45]);
    expect([x1, x2]).toEqual([4, 4]);
    within((x0! - x1!) / s1!, defaultModel['opening-below'], 1e-12);
    within((x3! - x2!) / (s3! - s2!), defaultModel['opening-above'], 1e-12);
  });

  it.each([
    [undefined, { value: 0, sd: 0.2, kind: 'assumed' }],
    ['average', { value: 0, sd: 0.1, kind: 'told' }],
    ['slab-sided', { value: 0, sd: 0.1, kind: 'told' }],
    ['round', { value: 0.5, sd: 0.1, kind: 'told' }],
  ] as const)('ribs of a barrel %s push as said', (barrel, push) => {
    expect(pushOf({ trouble: [], barrel }, 1.25, defaultModel)).toMatchObject(push);
  });

  test('the centre line goes from the groove to the ring, and the push adds to it at a quarter of the girth', () => {
    const ring = { x: 2, station: { value: 20 } };
    const push = { value: 0.45, sd: 0.1, kind: 'told', basis: '' } as const;
    const plain = centreLineOf(ring, { ...push, value: 0 }, 72);
    within(plain.slope * 20, 2, 1e-12);
    const pushed = centreLineOf(ring, push, 72);
    expect(pushed.pushStation).toBe(18);
    within((pushed.slope - plain.slope) * 18, 0.45, 1e-12);
    expect(pushed.push).toBe(push);
  });
});

describe('how much a saddle wants to slip (common practice, no source)', () => {
  it.each([
    ['nothing said', orderOf(), 0],
    ['it rolls', orderOf({ horse: { trouble: ['saddle-rolls'] } }), 2],
    ['it creeps forward', orderOf({ horse: { trouble: ['creeps-forward'] } }), 2],
    ['it slips back', orderOf({ horse: { trouble: ['slips-back'] } }), 2],
    ['a gall is no slipping', orderOf({ horse: { trouble: ['elbow-gall', 'girthy', 'buckle-rub'] } }), 0],
    ['round', orderOf({ horse: { barrel: 'round' } }), 1],
    ['slab-sided', orderOf({ horse: { barrel: 'slab-sided' } }), 1],
    ['average', orderOf({ horse: { barrel: 'average' } }), 0],
    ['low withers', orderOf({ horse: { withers: 'low' } }), 1],
    ['high withers', orderOf({ horse: { withers: 'high' } }), 0],
    // Fleshy from 7 of 9: Henneke et al. 1983.
    ['score 7', orderOf({ horse: { condition: 7 } }), 1],
    ['score 6', orderOf({ horse: { condition: 6 } }), 0],
    ['roped from', orderOf({ use: 'roping' }), 1],
    ['ridden at barrels', orderOf({ use: 'barrels' }), 0],
    [
      'all of it',
      orderOf({
        use: 'roping',
        horse: { trouble: ['saddle-rolls', 'slips-back'], withers: 'low', condition: 8 },
      }),
      7,
    ],
  ] as const)('%s: %#', (_, order, level) => {
    const need = slipNeed(order);
    expect(need.level).toBe(level);
    expect(need.because.length > 0).toBe(level > 0);
    expect(need.because.every((why) => why !== '')).toBe(true);
  });
});
