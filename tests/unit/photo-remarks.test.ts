/** Remarks where a photo contradicts the order. */
import { describe, expect, it, test } from 'vitest';
import { factsOf, type Facts } from '../../src/horse/facts.ts';
import { photoRemarks } from '../../src/horse/photo-remarks.ts';
import { stationSeen } from '../../src/horse/ring.ts';
import { stationAtHeight } from '../../src/math/ellipse.ts';
import type { Order } from '../../src/order/types.ts';
import type { PhotoReading } from '../../src/photo/read/reading.ts';
import type { Quantity } from '../../src/units/phrase.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

/** The photo shows this; the rest is assumed or told. */
function showing(order: Order, shown: Partial<PhotoReading['seen']>): Facts {
  const facts = factsOf(order, model);
  const { ring, barrel, room, k } = facts;
  const sd = 0.2;
  const shares = {} as PhotoReading['seen']['room']['shares'];
  const at = (value: number) => ({ value, sd, shares });
  const level = heightOf(ring.station.value, barrel.ellipse);
  const { rigging: rig, barSpan } = order.saddle;
  const back = rig.kind === 'measured' ? rig.setBack : (1 - rig.fraction) * (barSpan ?? 12);
  const seen = {
    room: at(room.value),
    ringBehindElbow: at(2 * k + back),
    ringOffset: at(ring.x),
    ringHeight: at(level),
    depth: at(2 * barrel.ellipse.halfDepth),
    setBack: undefined,
    barSpan: undefined,
    ...shown,
  } as PhotoReading['seen'];
  return { ...facts, photo: { seen } as PhotoReading };
}

/** The height with this station, by halving. */
function heightOf(station: number, ellipse: Facts['barrel']['ellipse']): number {
  let [low, high] = [0, 2 * ellipse.halfDepth];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (stationAtHeight(ellipse, middle) < station) low = middle;
    else high = middle;
  }
  return low;
}

describe('remarks where photo and order disagree', () => {
  const seen = (value: number, sd = 0.2) => ({ value, sd, shares: {} }) as PhotoReading['seen']['room'];
  const numbers = (facts: Facts): number[][] =>
    photoRemarks(facts).map(({ values }) =>
      values.filter((value): value is Quantity => typeof value !== 'string').map(({ value }) => value),
    );
  const textOf = (facts: Facts): string =>
    photoRemarks(facts)
      .map(({ words, values }) =>
        words.map((word, i) => `${word}${typeof values[i] === 'string' ? values[i] : ''}`).join(''),
      )
      .join(' ');
  const plain = orderOf();
  const taped = orderOf({
    horse: { elbowRoom: 4, barrel: { depth: 25 } },
    saddle: { rigging: { kind: 'measured', setBack: 1 }, ringToRing: 44, barSpan: 12 },
  });

  test('none without a photo, and none where they agree', () => {
    expect(photoRemarks(factsOf(plain, model))).toEqual([]);
    expect(photoRemarks(showing(plain, {}))).toEqual([]);
    expect(photoRemarks(showing(taped, { depth: seen(25) }))).toEqual([]);
    expect(photoRemarks(showing(taped, { setBack: seen(1), barSpan: seen(12), depth: seen(25) }))).toEqual(
      [],
    );
  });

  // Two spreads of the difference: hypot(0.5, 0.2) if usual, hypot(0.25, 0.2) if taped.
  it.each([
    ['a usual room', plain, { name: 'room', told: 4, sd: 0.5 }],
    ['a taped room', taped, { name: 'room', told: 4, sd: 0.25 }],
    ['the name of the position', plain, { name: 'ringBehindElbow', told: 2, sd: 1 }],
    ['a measured set-back', taped, { name: 'setBack', told: 1, sd: 0.25 }],
    ['a taped depth', taped, { name: 'depth', told: 25, sd: 0.5 }],
    ['taped bars', taped, { name: 'barSpan', told: 12, sd: 0.5 }],
  ] as const)('%s: from two spreads on, with both numbers and the spread', (_, order, { name, told, sd }) => {
    const quiet = { setBack: seen(1), barSpan: seen(12), depth: seen(25) };
    const apart = 2 * Math.hypot(sd, 0.2);
    const facts = (by: number) =>
      showing(order, { ...(order === taped ? quiet : {}), [name]: seen(told + by) });
    expect(numbers(facts(apart - 0.01))).toEqual([]);
    expect(numbers(facts(0.01 - apart))).toEqual([]);
    for (const by of [apart + 0.01, -apart - 0.01]) {
      const [found, ...more] = numbers(facts(by));
      expect(more).toEqual([]);
      within(found![0]!, told, 1e-9);
      within(found![1]!, told + by, 1e-9);
      expect(found![2]).toBe(0.2);
    }
  });

  test('at exactly two spreads nothing is said yet', () => {
    expect(numbers(showing(plain, { ringBehindElbow: seen(4, 0) }))).toEqual([]);
    expect(numbers(showing(plain, { ringBehindElbow: seen(4.001, 0) }))).toHaveLength(1);
  });

  test('what is meant is named', () => {
    const named = showing(taped, { setBack: seen(3), barSpan: seen(15), depth: seen(30) });
    for (const what of ['set-back', 'bar span', 'depth']) expect(textOf(named)).toContain(what);
  });

  test('a position on taped bars is as far back as its share of them', () => {
    const order = orderOf({ saddle: { rigging: rigging('3/4'), barSpan: 14 } });
    const [found] = numbers(showing(order, { ringBehindElbow: seen(9) }));
    within(found![0]!, 2 + 14 / 4, 1e-12);
    const shown = orderOf({ saddle: { rigging: rigging('3/4') } });
    within(
      numbers(showing(shown, { ringBehindElbow: seen(9), barSpan: seen(16) }))[0]![0]!,
      2 + 16 / 4,
      1e-12,
    );
    const big = orderOf({ horse: { heartGirth: 90 }, saddle: { rigging: rigging('3/4') } });
    // The two inches grow with the horse (90 in is 1.25 times usual); the tree does not.
    within(numbers(showing(big, { ringBehindElbow: seen(12) }))[0]![0]!, 2.5 + 12 / 4, 1e-12);
  });

  test('bars seen badly leave the position open', () => {
    const order = orderOf({ saddle: { rigging: rigging('center-fire') } });
    const by = (sd: number) => numbers(showing(order, { ringBehindElbow: seen(11), barSpan: seen(12, sd) }));
    expect(by(0.1)).toHaveLength(1);
    expect(by(4)).toHaveLength(0);
  });

  it.each([
    ['a usual drop', orderOf(), 22],
    [
      'a usual drop of a large horse',
      orderOf({ horse: { heartGirth: 90 }, saddle: { style: 'dropped' } }),
      45 - 17 * 1.25,
    ],
    ['no style said', orderOf({ saddle: { style: undefined } }), 22],
    ['half of ring to ring', orderOf({ saddle: { ringToRing: 41 } }), 20.5],
    ['a measured drop', orderOf({ saddle: { ringDrop: 16 } }), 20],
  ] as const)('the height of the ring against %s', (_, order, station) => {
    const [found] = numbers(showing(order, { ringHeight: seen(6, 0.1) }));
    within(found![0]!, station, 1e-9);
    const { ellipse } = factsOf(order, model).barrel;
    within(found![1]!, stationAtHeight(ellipse, 6), 1e-9);
  });

  test('the height of a taped ring is compared with the tape', () => {
    const order = orderOf({ saddle: { ringToRing: 44 } });
    const { ellipse } = factsOf(order, model).barrel;
    const shown = (station: number) =>
      numbers(showing(order, { ringHeight: seen(heightOf(station, ellipse), 0.01) }));
    const { sd } = stationSeen({ value: heightOf(22, ellipse), sd: 0.01 }, factsOf(order, model).barrel);
    const bound = 2 * Math.hypot(0.25, sd);
    expect(shown(22 + bound - 0.2)).toEqual([]);
    expect(shown(22 + bound + 0.2)).toHaveLength(1);
  });

  test('only a contradiction says which one is used', () => {
    const contradicted = 3 * Math.hypot(0.5, 0.2) + 0.01;
    expect(textOf(showing(plain, { room: seen(4 - contradicted) }))).toContain("We used the photo's");
    expect(textOf(showing(plain, { room: seen(4 + contradicted) }))).toContain('We used the usual one');
    expect(textOf(showing(plain, { ringBehindElbow: seen(6) }))).toContain("We used the name's");
    expect(textOf(showing(plain, { room: seen(4 + contradicted - 0.02) }))).not.toContain('We used');
    expect(textOf(showing(plain, { room: seen(5.2) }))).toMatch(/give or take \. Check the clicks/);
    // A drop is not weighed by caution.
    expect(textOf(showing(plain, { ringHeight: seen(6, 0.1) }))).not.toContain('We used');
  });
});
