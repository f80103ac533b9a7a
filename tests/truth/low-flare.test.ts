/** Where a low flare begins: as high as the elbow allows for the clearance that it is tied for, found once more by trying. */
import cephes from 'cephes';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { factsOf, type Facts } from '../../src/facts/facts.ts';
import { lay } from '../../src/fit/lay.ts';
import { lowFlareStart } from '../../src/fit/low-flare.ts';
import { sideOf, type Side } from '../../src/fit/side.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel as model, type Model } from '../../src/sources/numbers.ts';
import { below, gapOf, pairs, type Line } from '../support/laid.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

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
const sideBy = (order: Order, numbers: Model = model): Side => sideOf(factsOf(order, numbers));

/** The required clearance, or what leaves the flare half of the risk that a good spec may carry. */
function targetOf(facts: Facts): number {
  const { ring, centreLine: line } = facts;
  const slopeAt = (row: Facts['spread'][number], by: number): number =>
    (ring.x + by * row.ringX) / (ring.station.value + by * row.ringStation) +
    (line.push.value + by * row.push) / line.pushStation;
  // At the armpit, beside the elbow line, of the widest cinch: 31 strands of a quarter inch.
  const squares = facts.spread.reduce((sum, row) => {
    const slope = (slopeAt(row, 1e-4) - slopeAt(row, -1e-4)) / 2e-4;
    return sum + (row.room - 3 * facts.k * slope - (31 / 8) * row.width) ** 2;
  }, 0);
  // A good spec is 80 % sure: half of the fifth that is left is one in ten.
  return Math.max(facts.required, facts.floor + cephes.ndtri(0.9) * Math.sqrt(squares));
}

interface Tied {
  readonly strands: number;
  readonly layers: 1 | 2;
}

/** How near the flare alone comes, from the midline up to where it is pinched, in the thin skin below the point of the elbow. */
function gapFrom(start: number, { strands, layers }: Tied, { facts, slope, line }: Side): number {
  const pinched = (strands * (layers === 2 ? 0.145 : 0.2)) / 2;
  const edge: Line = [
    [strands / 8, 0],
    [slope * (start - 3) + strands / 8, start - 3],
    [slope * start + pinched, start],
  ];
  const rising = edge.filter(([, s], i) => i === 0 || s > edge[i - 1]![1]);
  return gapOf(below(rising, 7 * facts.k), pairs(line));
}

/** It is found by halving from 3 in to 3 in above the elbow, twelve times. */
const found = ({ facts }: Side): number => (7 * facts.k) / 2 ** 12;

describe('where it begins', () => {
  const kinds = { lowest: 0, highest: 0, between: 0 };
  const counts = [11, 15, 17, 19, 21, 23, 27, 31].flatMap((strands) =>
    ([1, 2] as const).map((layers): Tied => ({ strands, layers })),
  );

  it.each(orders)('%s: as high as it may for the clearance that it is tied for, no higher', (_, order) => {
    const side = sideBy(order);
    const { facts } = side;
    const wanted = targetOf(facts);
    for (const tied of counts) {
      const start = lowFlareStart(tied, side);
      const highest = 7 * facts.k + 3;
      if (start === facts.girth.value / 4) {
        // From there on it is whole above the skin.
        expect(gapFrom(highest, tied, side)).toBeGreaterThan(wanted - 1e-6);
        kinds.highest += 1;
      } else if (start === 3) {
        expect(gapFrom(3 + found(side), tied, side)).toBeLessThan(wanted);
        kinds.lowest += 1;
      } else {
        expect(gapFrom(start, tied, side)).toBeGreaterThan(wanted - 1e-6);
        expect(gapFrom(start + 1.01 * found(side), tied, side)).toBeLessThan(wanted);
        kinds.between += 1;
      }
    }
  });

  test('all three happened above', () => {
    expect(Math.min(...Object.values(kinds))).toBeGreaterThan(5);
  });

  test('where the required clearance asks for more, that is kept', () => {
    const side = sideBy(orderOf(), { ...model, 'required-clearance': 2.25 });
    const tied: Tied = { strands: 19, layers: 2 };
    const start = lowFlareStart(tied, side);
    expect(start).toBeGreaterThan(3);
    within(gapFrom(start, tied, side), 2.25, 2e-3);
  });

  it.each(orders)('%s: a buckle far up leaves it there, one further down takes it along', (_, order) => {
    const side = sideBy(order);
    for (const strands of [15, 19, 23]) {
      const limit = lowFlareStart({ strands, layers: 1 }, side);
      for (const length of [22, 26, 30, 34, 40]) {
        const spec = { style: 'low-flare', strands, length, buckle: plainBuckle, layers: 1 } as const;
        const { shape, flareStart } = lay(spec, side)!;
        // At least 5 in below the buckle: 3 for a high flare, 2 for a further weave.
        within(shape.pinchedFrom, Math.min(limit, shape.top - 5), 1e-9);
        within(flareStart!, shape.top - shape.pinchedFrom, 1e-9);
      }
    }
  });
});
