/** Two values weighed; how girth moves unmeasured values. */
import { describe, expect, it, test } from 'vitest';
import { factsOf, type Facts } from '../../src/horse/facts.ts';
import { namedSetBackSd } from '../../src/horse/ring.ts';
import { contradicts, shareOf, spreadsApart, weighed, weighedCautiously } from '../../src/horse/weigh.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { photographed } from '../support/photo-scenes.ts';
import { within } from '../support/within.ts';

const usual = { value: 4, sd: 0.5, kind: 'assumed', basis: 'usual' } as const;

describe('two values of one thing', () => {
  // By hand: 0.5^2 / (0.5^2 + 0.25^2) = 0.8.
  test('the surer counts more: 4 and 4.5, half as unsure, give 4.4', () => {
    const seen = { value: 4.5, sd: 0.25 };
    within(shareOf(usual, seen), 0.8, 1e-12);
    const found = weighed(usual, seen, 'both');
    within(found.value, 4.4, 1e-12);
    within(found.sd, Math.sqrt(0.05), 1e-12);
    expect(found).toMatchObject({ kind: 'photo', basis: 'both' });
  });

  test('how far apart they are is counted in spreads of their difference', () => {
    within(spreadsApart({ value: 1, sd: 3 }, { value: 11, sd: 4 }), 2, 1e-12);
    within(spreadsApart({ value: 11, sd: 3 }, { value: 1, sd: 4 }), 2, 1e-12);
  });

  // Birge 1932, Phys Rev 40:207: spread times the root of chi-square per degree of freedom.
  test('beyond two spreads the spread grows with the distance, and not before', () => {
    const pooled = 0.3 * Math.SQRT1_2; // two values of 0.3 each
    const at = (apart: number) =>
      weighed({ ...usual, sd: 0.3 }, { value: 4 + apart * Math.hypot(0.3, 0.3), sd: 0.3 }, 'both');
    within(at(1.99).sd, pooled, 1e-12);
    expect(at(1.99).basis).toBe('both');
    within(at(2.01).sd, 2.01 * pooled, 1e-12);
    expect(at(2.01).basis).not.toBe('both');
    // At the bound they still agree.
    const whole = { value: 1, sd: 3, kind: 'assumed', basis: 'usual' } as const;
    expect(weighed(whole, { value: 11, sd: 4 }, 'both')).toMatchObject({ basis: 'both', sd: 2.4 });
  });

  test('they contradict each other beyond three spreads, not at three', () => {
    expect(contradicts({ value: 0, sd: 3 }, { value: 15, sd: 4 })).toBe(false);
    expect(contradicts({ value: 0, sd: 3 }, { value: 15.1, sd: 4 })).toBe(true);
    expect(contradicts({ value: 0, sd: 3 }, { value: -15.1, sd: 4 })).toBe(true);
  });

  describe('of a length of which less is more cautious', () => {
    const words = { basis: 'both', words: 'the usual' };

    test('they are weighed as long as they do not contradict each other', () => {
      const found = weighedCautiously(usual, { value: 4.5, sd: 0.25 }, words);
      within(found.estimate.value, 4.4, 1e-12);
      within(found.share, 0.8, 1e-12);
    });

    test('a photo that shows far less is taken alone', () => {
      const { estimate, share } = weighedCautiously(usual, { value: 1, sd: 0.5 }, words);
      expect(share).toBe(1);
      expect(estimate).toMatchObject({ value: 1, kind: 'photo' });
      expect(estimate.sd).toBe(weighed(usual, { value: 1, sd: 0.5 }, '').sd);
    });

    test('a photo that shows far more adds only doubt', () => {
      const { estimate, share } = weighedCautiously(usual, { value: 8, sd: 0.5 }, words);
      expect(share).toBe(0);
      expect(estimate).toMatchObject({ value: 4, kind: 'assumed' });
      expect(estimate.sd).toBeGreaterThan(0.5);
      expect(estimate.basis).not.toBe('usual');
    });
  });
});

describe('how the girth moves the rest, against the facts of a horse a little larger', () => {
  const cases: Readonly<Record<string, Order>> = {
    'nothing measured': orderOf({ saddle: { rigging: rigging('7/8') } }),
    'measured bars': orderOf({ saddle: { rigging: rigging('3/4'), barSpan: 13 } }),
    'measured set-back': orderOf({ saddle: { rigging: { kind: 'measured', setBack: 1 } } }),
    'taped room': orderOf({ horse: { elbowRoom: 4.2 }, saddle: { rigging: rigging('7/8') } }),
    'measured drop': orderOf({ saddle: { ringDrop: 15 } }),
    'ring to ring': orderOf({ saddle: { ringToRing: 44 } }),
    'dropped plate': orderOf({ saddle: { style: 'dropped' } }),
    round: orderOf({ horse: { barrel: 'round' } }),
  };
  const slope = ({ horse, ...rest }: Order, of: (facts: Facts) => number): number => {
    const at = (heartGirth: number): number =>
      of(factsOf({ ...rest, horse: { ...horse, heartGirth } }, model));
    return (at(72.01) - at(71.99)) / 0.02;
  };

  test('only a photo of horse and saddle together shows where the saddle sits', () => {
    const placeOf = (order: Order): number | undefined =>
      factsOf(order, model).spread.find(({ input }) => input === 'saddle-place')?.ringX;
    expect(placeOf(cases['measured set-back']!)).toBe(0.4);
    expect(placeOf(photographed({}))).toBe(0);
  });

  it.each(Object.entries(cases))('%s', (_, order) => {
    const { spread, girth } = factsOf(order, model);
    const row = spread.find(({ input }) => input === 'heart-girth')!;
    within(row.room, girth.sd * slope(order, ({ room }) => room.value), 1e-9);
    within(row.ringX, girth.sd * slope(order, ({ ring }) => ring.x), 1e-9);
    within(row.ringStation, girth.sd * slope(order, ({ ring }) => ring.station.value), 1e-9);
    within(row.k, girth.sd * slope(order, ({ k }) => k), 1e-9);
    expect([row.push, row.width]).toEqual([0, 0]);
    // Where the ring does not move, the slope stays.
    if (order.horse.barrel === 'round')
      within(
        slope(order, ({ centreLine: c }) => c.push.value / c.pushStation),
        0,
        1e-9,
      );
  });

  /** Facts without the photo's dependence on the girth, which is another row. */
  it.each([
    {},
    { horse: { heartGirth: 72, trouble: [], elbowRoom: 4 } },
    { saddle: { rigging: rigging('7/8'), barSpan: 12 } },
  ])('by photo the usual share alone moves: %j', (change) => {
    const facts = factsOf(photographed(change), model);
    const { room, ring } = facts;
    const row = facts.spread.find(({ input }) => input === 'heart-girth')!;
    const share =
      room.kind === 'photo' ? shareOf({ ...usual, sd: model['elbow-room-sd'] }, facts.photo!.seen.room) : 1;
    within(room.perGirth, ((1 - share) * 4) / 72, 1e-12);
    within(row.room, room.perGirth * facts.girth.sd, 1e-12);
    const { barSpan } = facts.order.saddle;
    const named = namedSetBackSd({ fraction: 7 / 8, barSpan, seen: facts.photo!.seen.barSpan }, model);
    const byPhoto = shareOf({ ...usual, sd: named }, facts.photo!.seen.ringBehindElbow);
    // Bars do not grow with the girth; the two inches behind the elbow do.
    within(ring.setBackPerGirth, -byPhoto * (2 / 72), 1e-12);
    within(row.ringX, row.room - (2 / 72) * facts.girth.sd - ring.setBackPerGirth * facts.girth.sd, 1e-12);
  });

  test('every other input moves only itself', () => {
    const { spread, room, ring, centreLine } = factsOf(orderOf({ horse: { barrel: 'round' } }), model);
    const still = { room: 0, ringX: 0, ringStation: 0, push: 0, k: 0, width: 0, opening: 0 };
    expect(spread.slice(1)).toEqual([
      // The ring moves with the room.
      { ...still, input: 'elbow-room', room: room.sd, ringX: room.sd },
      { ...still, input: 'ring-position', ringX: ring.setBack.sd },
      // Where the saddle sits: 0.4 in, a choice.
      { ...still, input: 'saddle-place', ringX: 0.4 },
      { ...still, input: 'ring-height', ringStation: ring.station.sd },
      { ...still, input: 'rib-push', push: centreLine.push.sd },
      // Slope of the upper arm: 0.15 in an inch, a choice.
      { ...still, input: 'elbow-opening', opening: 0.15 },
      { ...still, input: 'strand-pitch', width: 0.015 / 0.25 },
    ]);
  });
});
