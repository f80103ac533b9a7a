/** Where a low flare begins: as high as its clearance allows, found by trying. */
import cephes from 'cephes';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { factsOf, type Facts } from '../../src/horse/facts.ts';
import { lay } from '../../src/cinch/lay.ts';
import { lowFlareStart } from '../../src/cinch/low-flare.ts';
import { sideOf, type Side } from '../../src/cinch/side.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel as model, type Model } from '../../src/numbers/numbers.ts';
import type { Line } from '../support/laid.ts';
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

interface Tied {
  readonly strands: number;
  readonly layers: 1 | 2;
}

/** One input off by so many spreads. */
interface Off {
  readonly row?: Facts['spread'][number];
  readonly by: number;
}

/** The gap when an input is off; cords are as unsure as 31 strands, the widest. */
function gapAt(place: { s: number; half: number }, { facts, line }: Side, { row, by }: Off): number {
  const { ring, centreLine, k, room, model: numbers } = facts;
  const of = (name: keyof Facts['spread'][number]): number =>
    row === undefined ? 0 : by * Number(row[name]);
  const slope =
    (ring.x + of('ringX')) / (ring.station.value + of('ringStation')) +
    (centreLine.push.value + of('push')) / centreLine.pushStation;
  const grown = 1 + of('k') / k;
  const [armpit, elbow, top] = [3 * k * grown, 7 * k * grown, line[7]! * grown];
  const x = room.value + of('room');
  const opening = numbers['opening-above'] + of('opening');
  const elbowLine: Line = [
    [x + armpit, 0],
    [x, armpit],
    [x, elbow],
    [x + opening * (top - elbow), top],
  ];
  const at = slope * place.s + place.half + (31 / 8) * of('width');
  return Math.min(
    ...elbowLine.slice(1).map(([toX, toS], i) => {
      const [fromX, fromS] = elbowLine[i]!;
      const [ux, us] = [toX - fromX, toS - fromS];
      const t = ((at - fromX) * ux + (place.s - fromS) * us) / (ux * ux + us * us);
      const along = Math.max(0, Math.min(1, t));
      return Math.hypot(at - fromX - along * ux, place.s - fromS - along * us);
    }),
  );
}

/** The least to spare, from the midline to where it is pinched or the skin ends. */
function spareFrom(start: number, { strands, layers }: Tied, side: Side): number {
  const { facts } = side;
  const pinched = strands * (layers === 2 ? 0.145 : 0.2);
  const end = Math.min(start, 7 * facts.k);
  const placeOf = (s: number): { s: number; half: number } => {
    const share = Math.max(0, Math.min(1, (s - (start - 3)) / 3));
    return { s, half: (strands / 4 + (pinched - strands / 4) * share) / 2 };
  };
  // Corners of both lines, and wherever the edge is nearest.
  const scan = Array.from({ length: 2001 }, (_, i) => (i * end) / 2000);
  const gaps = scan.map((s) => gapAt(placeOf(s), side, { by: 0 }));
  const nearest = scan[gaps.indexOf(Math.min(...gaps))]!;
  const spares = [0, 3 * facts.k, start - 3, end, nearest]
    .filter((s) => s >= 0 && s <= end)
    .map((s) => {
      const place = placeOf(s);
      const squares = facts.spread.map((row) => {
        const moved = gapAt(place, side, { row, by: 1e-3 }) - gapAt(place, side, { row, by: -1e-3 });
        return (moved / 2e-3) ** 2;
      });
      // A good spec is 80 % sure: half of the fifth that is left is one in ten.
      const sure = facts.floor + cephes.ndtri(0.9) * Math.sqrt(squares.reduce((a, b) => a + b));
      return gapAt(place, side, { by: 0 }) - Math.max(facts.required, sure);
    });
  return Math.min(...spares);
}

/** Twelve halvings from 3 in to 3 in above the elbow. */
const found = ({ facts }: Side): number => (7 * facts.k) / 2 ** 12;

/** Places are tried every few hundredths of an inch. */
const NEAR = 1e-3;

describe('where it begins', () => {
  const kinds = { lowest: 0, highest: 0, between: 0 };
  const counts = [11, 15, 17, 19, 21, 23, 27, 31].flatMap((strands) =>
    ([1, 2] as const).map((layers): Tied => ({ strands, layers })),
  );

  it.each(orders)('%s: as high as its clearance allows, no higher', (_, order) => {
    const side = sideBy(order);
    const { facts } = side;
    for (const tied of counts) {
      const start = lowFlareStart(tied, side);
      const highest = 7 * facts.k + 3;
      if (start === facts.girth.value / 4) {
        // From here it is above the skin.
        expect(spareFrom(highest, tied, side)).toBeGreaterThan(-NEAR);
        kinds.highest += 1;
      } else if (start === 3) {
        expect(spareFrom(3 + found(side), tied, side)).toBeLessThan(NEAR);
        kinds.lowest += 1;
      } else {
        expect(spareFrom(start, tied, side)).toBeGreaterThan(-NEAR);
        expect(spareFrom(start + 1.01 * found(side), tied, side)).toBeLessThan(NEAR);
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
    within(spareFrom(start, tied, side), 0, 2e-3);
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
