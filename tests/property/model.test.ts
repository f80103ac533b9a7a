/** Laws for any horse and saddle. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factsOf, type Facts } from '../../src/horse/facts.ts';
import type { Clearance } from '../../src/cinch/candidate.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { cordSpots, frameSpots, type Spot } from '../../src/cinch/spots.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Buckle, Order, Shop, Style } from '../../src/order/types.ts';
import { defaultModel, modelNumbers, type Model, type ModelKey } from '../../src/numbers/numbers.ts';
import { cases } from '../support/cases.ts';
import { orderOf, plainBuckle as buckle, shopWith } from '../support/orders.ts';
import { withinRelative } from '../support/within.ts';

const styles: readonly Style[] = ['straight', 'high-flare', 'low-flare'];
const inches = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Whatever the door lets in and a cinch can be tied for. */
const anyOrder: fc.Arbitrary<Order> = fc
  .record({
    heartGirth: inches(58, 92),
    elbowRoom: fc.option(inches(2, 7), { nil: undefined }),
    barrel: fc.constantFrom(undefined, 'slab-sided', 'average', 'round'),
    fraction: inches(0.5, 1),
    setBack: fc.option(inches(-1, 8), { nil: undefined }),
    ringToRing: fc.option(inches(38, 52), { nil: undefined }),
  })
  .map(({ heartGirth, elbowRoom, barrel, fraction, setBack, ringToRing }) =>
    orderOf({
      horse: { heartGirth, elbowRoom, barrel },
      saddle: {
        rigging:
          setBack === undefined
            ? { kind: 'named', name: 'a fraction', fraction }
            : { kind: 'measured', setBack },
        ringToRing,
      },
    }),
  );

const anyStyle = fc.constantFrom(...styles);
const anyStrands = fc.integer({ min: 5, max: 14 }).map((half) => 2 * half + 1);
const anyLength = fc.integer({ min: 26, max: 36 });
const anyCinch = fc.record({ style: anyStyle, strands: anyStrands, length: anyLength });

interface Asked {
  readonly style: Style;
  readonly strands: number;
  readonly length: number;
}

function clearanceOn(facts: Facts, { style, strands, length }: Asked): Clearance | undefined {
  return lay({ style, strands, length, buckle, layers: 1 }, sideOf(facts))?.clearance;
}

/** Gaps to the elbow line: cords in thin skin, everything against muscle. */
function gapsOn(facts: Facts, { style, strands, length }: Asked): [skin: number, muscle: number] | undefined {
  const side = sideOf(facts);
  const cinch = lay({ style, strands, length, buckle, layers: 1 }, side);
  if (cinch === undefined) return undefined;
  const cords = cordSpots(cinch.shape, side);
  const least = (spots: readonly Spot[]): number => Math.min(...spots.map(({ gap }) => gap.distance));
  // The point of the elbow belongs to both.
  const above = cords.filter(({ s }) => s >= side.elbow);
  return [least(cords.filter(({ skin }) => skin)), least([...above, ...frameSpots(buckle, cinch.low, side)])];
}

describe('clearance', () => {
  it('never grows with more strands, nor does its chance', () => {
    fc.assert(
      fc.property(anyOrder, anyCinch, (order, cinch) => {
        const facts = factsOf(order, defaultModel);
        const wider = { ...cinch, strands: cinch.strands + 2 };
        const [fewer, more] = [gapsOn(facts, cinch), gapsOn(facts, wider)];
        fc.pre(fewer !== undefined && more !== undefined);
        more.forEach((gap, i) => {
          // A low flare of more strands begins lower, to a few thousandths.
          if (cinch.style !== 'low-flare') expect(gap).toBeLessThanOrEqual(fewer[i]! + 1e-9);
        });
        const [before, then] = [clearanceOn(facts, cinch)!.likely, clearanceOn(facts, wider)!.likely];
        expect(then).toBeLessThanOrEqual(before + 0.002);
      }),
      { seed: 1, numRuns: cases(500, 1000) },
    );
  });

  it('of one finished cinch never shrinks when the ring moves back', () => {
    fc.assert(
      fc.property(anyOrder, anyCinch, inches(0.1, 4), (order, cinch, back) => {
        const asked = { ...cinch, style: 'straight' } as const;
        const setBack = factsOf(order, defaultModel).ring.setBack.value;
        const at = (value: number) =>
          factsOf(
            { ...order, saddle: { ...order.saddle, rigging: { kind: 'measured', setBack: value } } },
            defaultModel,
          );
        const [here, there] = [gapsOn(at(setBack), asked), gapsOn(at(setBack + back), asked)];
        // Past plumb the nearest point may move to the armpit, never nearer.
        there!.forEach((gap, i) => {
          expect(gap).toBeGreaterThanOrEqual(here![i]! - 1e-9);
        });
      }),
      { seed: 2, numRuns: cases(200, 400) },
    );
  });

  it('scales with horse, saddle, cord and hardware together', () => {
    fc.assert(
      fc.property(anyOrder, anyCinch, inches(0.5, 2), (order, { style, strands, length }, by) => {
        const small = lay(
          { style, strands, length, buckle, layers: 1 },
          sideOf(factsOf(order, defaultModel)),
        );
        const big = lay(
          { style, strands, length: length * by, buckle: scaledBuckle(by), layers: 1 },
          sideOf(factsOf(scaledOrder(order, by), scaledModel(by))),
        );
        expect(big === undefined).toBe(small === undefined);
        if (small === undefined || big === undefined) return;
        withinRelative(big.clearance.inches + by * 10, by * (small.clearance.inches + 10), 1e-6);
        withinRelative(big.run + by * 10, by * (small.run + 10), 1e-9);
        withinRelative(big.buckleAboveElbow + by * 10, by * (small.buckleAboveElbow + 10), 1e-9);
        // A flare as near as its pinched part has two nearest points with their own spreads.
        if (style === 'straight') withinRelative(big.clearance.sd, by * small.clearance.sd, 1e-6);
      }),
      { seed: 3, numRuns: 300 },
    );
  });

  /** What is said of girth and drop decides how the rest depends on it. */
  const saidOf = fc.record({
    girth: fc.option(inches(48, 92), { nil: undefined }),
    height: inches(46, 70),
    kind: fc.constantFrom(undefined, 'pony', 'draft', 'mule'),
    style: fc.constantFrom(undefined, 'ring', 'flat-plate', 'in-skirt', 'dropped'),
  });

  it('never has a wider spread when an input is measured and reads as assumed', () => {
    let compared = 0;
    fc.assert(
      fc.property(anyOrder, anyCinch, saidOf, (order, cinch, { girth, height, kind, style }) => {
        const { horse, saddle } = order;
        const bare: Order = {
          ...order,
          horse: { ...horse, heartGirth: girth, height, kind, elbowRoom: undefined },
          saddle: { ...saddle, style, ringToRing: undefined, ringDrop: undefined, barSpan: undefined },
        };
        const facts = factsOf(bare, defaultModel);
        const now = clearanceOn(facts, cinch);
        const inHorse = (more: Partial<Order['horse']>): Order => ({
          ...bare,
          horse: { ...bare.horse, ...more },
        });
        const inSaddle = (more: Partial<Order['saddle']>): Order => ({
          ...bare,
          saddle: { ...bare.saddle, ...more },
        });
        const measured: readonly Order[] = [
          inHorse({ elbowRoom: facts.room.value }),
          inHorse({ heartGirth: facts.girth.value }),
          inSaddle({ ringToRing: facts.lengthNeed.ringToRing.value }),
          inSaddle({ rigging: { kind: 'measured', setBack: facts.ring.setBack.value } }),
          inSaddle({ ringDrop: facts.girth.value / 2 - facts.ring.station.value }),
          inSaddle({ barSpan: defaultModel['bar-span'] }),
        ];
        for (const order2 of measured) {
          const then = clearanceOn(factsOf(order2, defaultModel), cinch);
          // Against muscle, room and lean work against each other: knowing one may show the other.
          if (now?.skin !== true || Math.abs((then?.station ?? 0) - now.station) > 1e-6) continue;
          expect(then?.sd).toBeLessThanOrEqual(now.sd + 1e-3);
          compared++;
        }
      }),
      { seed: 4, numRuns: cases(300, 600) },
    );
    expect(compared).toBeGreaterThan(1200);
  });

  it('is surer with a taped girth than with one from the height', () => {
    fc.assert(
      fc.property(inches(52, 70), (height) => {
        const byHeight = factsOf(orderOf({ horse: { heartGirth: undefined, height } }), defaultModel);
        const taped = factsOf(orderOf({ horse: { heartGirth: byHeight.girth.value, height } }), defaultModel);
        const asked = { style: 'straight', strands: 17, length: 32 } as const;
        expect(clearanceOn(taped, asked)?.sd ?? 9).toBeLessThanOrEqual(clearanceOn(byHeight, asked)?.sd ?? 0);
      }),
      { seed: 5 },
    );
  });
});

describe('what is admitted', () => {
  const admitted = (order: Order, shop: Shop): Set<string> =>
    new Set(sizeOrder(order, shop).specs.map(({ candidate: c }) => `${c.style} ${c.strands}`));

  it('never grows with a larger required clearance', () => {
    fc.assert(
      fc.property(anyOrder, inches(0.5, 1.2), inches(0, 0.8), (order, floor, more) => {
        const loose = admitted(
          order,
          shopWith({ 'floor-clearance': floor, 'required-clearance': floor + 0.25 }),
        );
        const strict = admitted(
          order,
          shopWith({ 'floor-clearance': floor + more, 'required-clearance': floor + more + 0.25 }),
        );
        for (const spec of strict) expect(loose.has(spec)).toBe(true);
      }),
      { seed: 6, numRuns: 60 },
    );
  });

  it('nor with a larger required clearance alone', () => {
    fc.assert(
      fc.property(anyOrder, inches(0, 1), (order, more) => {
        const loose = admitted(order, shopWith({ 'required-clearance': 1 }));
        const strict = admitted(order, shopWith({ 'required-clearance': 1 + more }));
        for (const spec of strict) expect(loose.has(spec)).toBe(true);
      }),
      { seed: 7, numRuns: 60 },
    );
  });
});

const scaledBuckle = (by: number): Buckle => ({
  ...buckle,
  barWidth: buckle.barWidth * by,
  frameWidth: buckle.frameWidth * by,
  frameHeight: buckle.frameHeight * by,
});

function scaledOrder(order: Order, by: number): Order {
  const times = (value: number | undefined) => (value === undefined ? undefined : value * by);
  const { horse, saddle } = order;
  const rig = saddle.rigging;
  return {
    ...order,
    horse: { ...horse, heartGirth: times(horse.heartGirth), elbowRoom: times(horse.elbowRoom) },
    saddle: {
      ...saddle,
      ringToRing: times(saddle.ringToRing),
      rigging: rig.kind === 'measured' ? { kind: 'measured', setBack: rig.setBack * by } : rig,
    },
  };
}

/** Lengths grow; what is given per average horse grows by itself. */
function scaledModel(by: number): Model {
  const keys = Object.keys(modelNumbers) as ModelKey[];
  return Object.fromEntries(
    keys.map((key) => {
      const grows = modelNumbers[key].unit === 'in' && key !== 'average-girth';
      return [key, defaultModel[key] * (grows ? by : 1)];
    }),
  ) as Model;
}
