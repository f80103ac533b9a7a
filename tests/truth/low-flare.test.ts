/** Where a low flare begins: as high as the elbow allows for the clearance that it is tied for, found once more by trying. */
import cephes from 'cephes';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { factsOf, type Facts } from '../../src/facts/facts.ts';
import { fieldOf } from '../../src/fit/clearance.ts';
import { Ground } from '../../src/fit/ground.ts';
import { lay } from '../../src/fit/lay.ts';
import { lowFlareLimit, lowFlareTarget } from '../../src/fit/low-flare.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/sources/numbers.ts';
import { gapOf, pairs, type Line } from '../support/laid.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { within, withinRelative } from '../support/within.ts';

beforeAll(async () => {
  await cephes.compiled;
});

const orders: readonly (readonly [string, Order])[] = [
  ['full', orderOf()],
  ['7/8', orderOf({ saddle: { rigging: rigging('7/8') } })],
  ['3/4', orderOf({ saddle: { rigging: rigging('3/4') } })],
  ['center-fire', orderOf({ saddle: { rigging: rigging('center-fire') } })],
  ['little room', orderOf({ horse: { elbowRoom: 3 }, saddle: { rigging: rigging('7/8') } })],
  ['much room', orderOf({ horse: { elbowRoom: 6.5, barrel: 'round' } })],
  [
    'by height',
    orderOf({ horse: { heartGirth: undefined, height: 66 }, saddle: { rigging: rigging('3/4') } }),
  ],
  ['draft', orderOf({ horse: { heartGirth: 90 }, saddle: { rigging: rigging('7/8') } })],
];

describe('the clearance that a low flare is tied for', () => {
  it.each(orders)('%s: the required one, or what leaves it half of the risk', (_, order) => {
    const facts = factsOf(order, model);
    const { ring, centreLine: line } = facts;
    const slopeAt = (row: Facts['spread'][number], by: number): number =>
      (ring.x + by * row.ringX) / (ring.station.value + by * row.ringStation) +
      (line.push.value + by * row.push) / line.pushStation;
    // At the armpit, beside the elbow line, of the widest cinch: 31 strands of a quarter inch.
    const squares = facts.spread.reduce((sum, row) => {
      const slope = (slopeAt(row, 1e-4) - slopeAt(row, -1e-4)) / 2e-4;
      return sum + (row.room - 3 * facts.k * slope - (31 / 8) * row.width) ** 2;
    }, 0);
    // A good spec is 80 % sure: half of the fifth that is left is 10 %, 1.2816 spreads of a bell curve.
    within(cephes.ndtri(0.9), 1.2816, 1e-4);
    const expected = Math.max(facts.required, facts.floor + cephes.ndtri(0.9) * Math.sqrt(squares));
    withinRelative(lowFlareTarget(facts, fieldOf(facts)), expected, 1e-6);
  });

  test('is the required one where that asks for more', () => {
    const facts = factsOf(orderOf(), { ...model, 'required-clearance': 3.5 });
    expect(lowFlareTarget(facts, fieldOf(facts))).toBe(3.5);
  });
});

describe('where it begins', () => {
  /** The flare alone, from the midline up to where it is pinched. */
  const gapFrom = (facts: Facts, start: number, strands: number): number => {
    const { slope } = facts.centreLine;
    const wide = strands / 8;
    const edge: Line = [
      [wide, 0],
      [slope * (start - 3) + wide, start - 3],
      [slope * start + strands / 10, start],
    ];
    return gapOf(edge, pairs(facts.elbowLine));
  };
  const kinds = { lowest: 0, highest: 0, between: 0 };

  it.each(orders)('%s: no higher than it may, no lower than it must', (_, order) => {
    const facts = factsOf(order, model);
    const { slope } = facts.centreLine;
    for (const strands of [11, 15, 17, 19, 21, 23, 27, 31]) {
      for (const target of [0.5, 1.25, 1.6, 2.5]) {
        const start = lowFlareLimit({ full: strands / 4, pinched: strands / 5 }, { target, facts });
        const highest = facts.girth.value / 4;
        const pinched: Line = [3, highest].map((s) => [slope * s + strands / 10, s] as const);
        if (gapOf(pinched, pairs(facts.elbowLine)) < facts.floor) {
          expect(start).toBe(3);
          kinds.lowest += 1;
          continue;
        }
        const wanted = Math.min(target, gapFrom(facts, 3, strands));
        if (start === highest) {
          expect(gapFrom(facts, highest, strands)).toBeGreaterThanOrEqual(wanted - 1e-9);
          kinds.highest += 1;
          continue;
        }
        expect(gapFrom(facts, highest, strands)).toBeLessThan(wanted);
        within(gapFrom(facts, start, strands), wanted, 1e-5);
        kinds.between += 1;
      }
    }
  });

  test('all three happened above', () => {
    expect(Math.min(...Object.values(kinds))).toBeGreaterThan(5);
  });

  it.each(orders)('%s: a buckle far up leaves it there, one further down takes it along', (_, order) => {
    const facts = factsOf(order, model);
    const target = lowFlareTarget(facts, fieldOf(facts));
    for (const strands of [15, 19, 23]) {
      const limit = lowFlareLimit({ full: strands / 4, pinched: strands / 5 }, { target, facts });
      for (const length of [22, 26, 30, 34, 40]) {
        const spec = { style: 'low-flare', strands, length, buckle: plainBuckle, layers: 1 } as const;
        const { shape } = lay(spec, new Ground(facts))!;
        within(shape.pinchedFrom, Math.min(limit, shape.top - 5), 1e-9);
      }
    }
  });
});
