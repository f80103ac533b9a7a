/** Strands in practice; what betters a cinch that makes sore. */
import { describe, expect, it, test } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { isTied, type Practice } from '../../src/horse/practice.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { judgedBy } from '../support/judged.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

const practice = (...order: Parameters<typeof orderOf>): Practice =>
  factsOf(orderOf(...order), model).practice;

type Bounds = readonly [least: number, low: number, high: number, most: number];
const same = ({ least, low, high, most }: Practice['straight'], expected: Bounds): void => {
  [least, low, high, most].forEach((bound, i) => {
    within(bound, expected[i]!, 1e-9);
  });
};

// Riggings and ponies: common practice, no source.
describe('strands of straights where the ring hangs', () => {
  it.each([
    ['full', [13, 15, 17, 17]],
    ['7/8', [15, 17, 19, 21]],
    ['3/4', [15, 17, 21, 23]],
    ['5/8', [17, 21, 23, 25]],
    ['center-fire', [19, 21, 25, 25]],
  ] as const)('%s on bars of 12 in, under every style', (position, bounds) => {
    for (const style of [undefined, 'flat-plate', 'dropped'] as const)
      same(practice({ saddle: { rigging: rigging(position), style } }).straight, bounds);
  });

  it.each([
    // 2 in, an eighth of 16, is a third of the way from 7/8 to 3/4 of usual bars.
    [{ rigging: rigging('7/8'), barSpan: 16 }, 72, [15, 17, 19 + 2 / 3, 21 + 2 / 3]],
    [{ rigging: { kind: 'measured', setBack: 0.75 } }, 72, [14, 16, 18, 19]],
    // 1.2 in of the average horse: four fifths from full to 7/8.
    [{ rigging: rigging('7/8') }, 90, [14.6, 16.6, 18.6, 20.2]],
    [{ rigging: { kind: 'measured', setBack: -2 } }, 72, [13, 15, 17, 17]],
    [{ rigging: { kind: 'measured', setBack: 11 } }, 72, [19, 21, 25, 25]],
  ] as const)('%j on a horse of %f in: in between', (saddle, heartGirth, bounds) => {
    same(practice({ horse: { heartGirth }, saddle }).straight, bounds);
  });

  it.each([
    ['pony', 67, [9, 11, 13, 15]],
    ['pony', 48, [9, 11, 13, 15]],
    ['pony', 70, [11, 13, 15, 16]],
    [undefined, 58, [9, 11, 13, 15]],
    ['stock', 63, [11, 13, 15, 16]],
    ['stock', 68, [13, 15, 17, 17]],
  ] as const)('kind %s of %f in on full: from pony to horse by halves', (kind, heartGirth, bounds) => {
    same(practice({ horse: { kind, heartGirth } }).straight, bounds);
  });

  test('have no step at any girth', () => {
    for (const kind of ['pony', 'light'] as const) {
      let before: number[] | undefined;
      for (let heartGirth = 50; heartGirth < 80; heartGirth += 0.05) {
        const { straight, roper, narrowest } = practice({
          horse: { kind, heartGirth },
          saddle: { rigging: rigging('5/8') },
        });
        const bounds: Readonly<Record<string, number>>[] = [{ ...straight }, { ...roper }];
        const now = [narrowest, ...bounds.flatMap((each) => Object.values(each))];
        // In 6 in of girth no straight's bound moves over 10 strands, no roper's over 14.
        before?.forEach((bound, i) => {
          within(now[i]!, bound, 0.2);
        });
        before = now;
      }
    }
  });

  // From a hand down and a hand up to an inch: a choice.
  it.each([
    [{}, 17, 19],
    [{ barrel: 'round' }, 15, 19],
    [{ barrel: 'slab-sided' }, 17, 19],
    [{ trouble: ['elbow-gall'] }, 15, 19],
    [{ elbowRoom: 4 }, 17, 19],
    [{ elbowRoom: 3.5 }, 16, 19],
    [{ elbowRoom: 3 }, 15, 19],
    [{ elbowRoom: 2 }, 15, 19],
    [{ elbowRoom: 4.5 }, 17, 20],
    [{ elbowRoom: 5 }, 17, 21],
    // Beyond 3 x hypot(0.5, 0.25) = 1.68 in hardly believable.
    [{ elbowRoom: 5.6 }, 17, 21],
    [{ elbowRoom: 5.7 }, 17, 19],
    [{ elbowRoom: 5, heartGirth: 90 }, 16.6, 18.6],
    [{ elbowRoom: 4.375, heartGirth: 90 }, 15.6, 18.6],
  ] as const)('on 7/8, %j: from %f to %f on this horse', (horse, from, to) => {
    const { straight } = practice({ horse, saddle: { rigging: rigging('7/8') } });
    within(straight.from, from, 1e-9);
    within(straight.to, to, 1e-9);
  });

  test('ropers are tied from 19 up, two to six strands over the straight, and usually not all six', () => {
    same(practice().roper, [19, 19, 21, 23]);
    same(practice({ saddle: { rigging: rigging('center-fire') } }).roper, [19, 23, 29, 31]);
  });

  test('on a pony even the narrowest roper is wider than makers tie', () => {
    for (const position of ['full', 'center-fire'] as const) {
      const horse = { kind: 'pony', heartGirth: 50 } as const;
      expect(isTied(19, practice({ horse, saddle: { rigging: rigging(position) } }).roper)).toBe(false);
    }
  });
});

describe('usual-strands', () => {
  const band = { least: 15, from: 17, low: 17, high: 19, to: 19, most: 21 };
  const roper = { least: 19, from: 19, low: 19, high: 25, to: 25, most: 25 };
  const judged = (strands: number, style: 'straight' | 'high-flare' = 'straight') =>
    judgedBy('usual-strands', { practice: { straight: band, roper, narrowest: 13 } }, { style, strands });

  it.each([
    [13, 'poor', -2, '; this is well outside: measure again'],
    [15, 'acceptable', 0, '; fewer only where a horse is short of room'],
    [17, 'good', 2, ''],
    [19, 'good', 2, ''],
    [21, 'acceptable', 0, '; more only with plenty of room, taped'],
    [23, 'poor', -2, '; this is well outside: measure again'],
  ] as const)('a straight of %i: %s, margin %i', (...row) => {
    const [strands, judgement, margin, words] = row;
    expect(judged(strands)).toMatchObject({ judgement, margin });
    expect(judged(strands).told).toBe(`17 to 19 strands are usual where this ring hangs${words}`);
  });

  it('goes by what is tied in the style', () => {
    expect(judged(23, 'high-flare').judgement).toBe('good');
    expect(judged(27, 'high-flare').judgement).toBe('poor');
  });

  // Counts are odd: half a step either way is the same.
  it.each([
    [15, 16, 'good'],
    [15, 16.01, 'acceptable'],
    [17, 17.9, 'good'],
  ] as const)('%i with a bound of %f: %s', (strands, low, judgement) => {
    const straight = { ...band, low, from: low };
    const found = judgedBy(
      'usual-strands',
      { practice: { straight, roper, narrowest: 13 } },
      { style: 'straight', strands },
    );
    expect(found.judgement).toBe(judgement);
    expect(found.told.startsWith(`${String(strands)} to 19 strands`)).toBe(judgement === 'good');
  });

  it('tells the last count within half a step of its bound, too', () => {
    const straight = { ...band, high: 18, to: 18 };
    const told = judgedBy('usual-strands', { practice: { straight } }, { style: 'straight', strands: 19 });
    expect(told).toMatchObject({ judgement: 'good', told: expect.stringContaining('17 to 19') as string });
  });

  it('tells of a pony that no roper is usual, and nothing more', () => {
    const small = practice({ horse: { kind: 'pony', heartGirth: 50 } });
    const found = judgedBy('usual-strands', { practice: small }, { style: 'low-flare', strands: 19 });
    expect(found).toMatchObject({ judgement: 'poor', told: 'ropers are too wide for a horse this small' });
  });
});

describe('better-than-now', () => {
  const worn = { frame: { width: 4.25, low: 12 }, cords: { elbowWidth: 5, clearance: { likely: 0.7 } } };
  const ask = (
    [width, low, elbowWidth, likely]: readonly [number, number, number, number],
    trouble: Order['horse']['trouble'],
    current: object = worn,
  ) =>
    judgedBy(
      'better-than-now',
      { order: { horse: { trouble } }, current: { frame: undefined, cords: undefined, ...current } },
      {
        buckle: { ...plainBuckle, frameWidth: width },
        ...{ low, elbowWidth, clearance: { likely } },
      },
    ).judgement;

  // A quarter inch narrower, an inch higher, a twentieth surer: choices.
  it.each([
    [4, 12, 'good'],
    [4.01, 12, 'poor'],
    [4.25, 12, 'poor'],
    [4.25, 12.99, 'poor'],
    [4.25, 13, 'good'],
    [4.26, 13, 'poor'],
    [4.26, 20, 'poor'],
    [4, 5, 'good'],
  ] as const)('after a rub of 4.25 in at 12 in, a frame of %f at %f: %s', (width, low, judgement) => {
    expect(ask([width, low, 9, 0.1], ['buckle-rub'])).toBe(judgement);
  });

  it.each([
    [0.7, 5, 0.75, 'good'],
    [0.7, 5, 0.749, 'poor'],
    [0.7, 5.01, 0.9, 'poor'],
    [0.7, 3, 0.6, 'poor'],
    // Already sure: narrower by nearly two cords.
    [0.97, 5, 0.99, 'poor'],
    [0.97, 4.5, 0.95, 'good'],
    [0.97, 4.5, 0.949, 'poor'],
    [0.9, 4.6, 0.91, 'good'],
    [0.9, 4.61, 0.91, 'poor'],
  ] as const)('after a gall of 5 in %f sure, one of %f in %f sure: %s', (...row) => {
    const [now, width, likely, judgement] = row;
    const current = { cords: { elbowWidth: 5, clearance: { likely: now } } };
    expect(ask([9, 1, width, likely], ['elbow-gall'], current)).toBe(judgement);
  });

  it('asks both of a horse with both sores, neither of one without', () => {
    const both = ['elbow-gall', 'buckle-rub'] as const;
    expect(ask([4, 12, 5, 0.8], both)).toBe('good');
    expect(ask([4.25, 12, 5, 0.8], both)).toBe('poor');
    expect(ask([4, 12, 6, 0.8], both)).toBe('poor');
    expect(ask([9, 1, 9, 0.1], ['girthy', 'saddle-rolls'])).toBe('not-applicable');
  });

  it('cannot tell of a cinch nobody described', () => {
    expect(ask([4, 12, 5, 0.8], ['buckle-rub'], { frame: undefined })).toBe('cannot-tell');
    expect(ask([4, 12, 5, 0.8], ['elbow-gall'], { cords: undefined })).toBe('cannot-tell');
    expect(ask([4, 12, 5, 0.8], ['elbow-gall'], { ...worn, frame: undefined })).toBe('good');
  });
});
