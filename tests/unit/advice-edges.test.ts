/** The rest of an advice, worked out again from the model. */
import { describe, expect, test } from 'vitest';
import type { Advice } from '../../src/advice/advice.ts';
import { asksFor } from '../../src/advice/measure-next.ts';
import type { Judged } from '../../src/advice/judge.ts';
import { photoWorth } from '../../src/advice/photo-worth.ts';
import { rank, whyBefore } from '../../src/advice/rank.ts';
import { factsOf } from '../../src/horse/facts.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { phraseText } from '../../src/units/text.ts';
import { orderOf, rigging, shopWith } from '../support/orders.ts';
import { randomOrders } from '../support/random-cases.ts';

const shop = defaultShop;
/** Sore from a cinch that lies differently once the horse is measured. */
const galled = (strands: number, buckle: string, position: Parameters<typeof rigging>[0]): Order =>
  orderOf({
    horse: { trouble: ['elbow-gall'] },
    saddle: { rigging: rigging(position) },
    current: { style: 'straight', strands, buckle, length: 28 },
  });
const orders = [
  ...randomOrders(21, 60),
  galled(21, 'plain 3', '5/8'),
  galled(23, 'wide 5', 'center-fire'),
  galled(27, 'plain 4', '3/4'),
];
/** New for each test: an advice caches. */
const advised = () => orders.map((order) => sizeOrder(order, shop));

/** Only its order among equals matters. */
const plain = (style: Candidate['style'], strands: number, length: number) =>
  ({ candidate: { style, strands, length } }) as unknown as Judged;

describe('specs that no criterion tells apart', () => {
  const inOrder = [
    plain('straight', 13, 30),
    plain('straight', 13, 32),
    plain('straight', 15, 28),
    plain('high-flare', 11, 28),
    plain('low-flare', 11, 26),
  ];

  test('stand by what is simpler, then by fewest strands, then shortest', () => {
    for (let turn = 0; turn < inOrder.length; turn++) {
      const mixed = [...inOrder.slice(turn), ...inOrder.slice(0, turn)];
      expect(rank(mixed, [])).toEqual(inOrder);
      expect(rank(mixed.toReversed(), [])).toEqual(inOrder);
    }
  });

  test('are said to be', () => {
    expect(whyBefore(inOrder[0]!, inOrder[1]!, [])).toMatchObject({ criterion: 'none' });
  });
});

/** Every assumed value as if taped. */
function taped(input: string, { facts }: Advice): Order {
  const { order, lengthNeed, room, ring, girth } = facts;
  const { horse, saddle } = order;
  switch (input) {
    case 'ring to ring':
      return { ...order, saddle: { ...saddle, ringToRing: lengthNeed.ringToRing.value } };
    case 'elbow room':
      return { ...order, horse: { ...horse, elbowRoom: room.value } };
    case 'ring set-back':
      return {
        ...order,
        saddle: { ...saddle, rigging: { kind: 'measured', setBack: ring.setBack.value } },
      };
    case 'heart girth':
      return { ...order, horse: { ...horse, heartGirth: girth.value } };
    default:
      return { ...order, horse: { ...horse, barrel: 'average' } };
  }
}

describe('what to measure next', () => {
  test('is what nobody measured, each once', () => {
    for (const { ask, facts } of advised()) {
      const { horse, saddle } = facts.order;
      const open = [
        saddle.ringToRing === undefined ? 'ring to ring' : '',
        horse.elbowRoom === undefined ? 'elbow room' : '',
        saddle.rigging.kind === 'named' ? 'ring set-back' : '',
        horse.heartGirth === undefined ? 'heart girth' : '',
        horse.barrel === undefined ? 'barrel shape' : '',
      ].filter((input) => input !== '');
      expect(ask.map(({ input }) => input).toSorted()).toEqual(open.toSorted());
    }
  });

  test('is worth what laying the same cinch on the horse so measured says', () => {
    let earned = 0;
    for (const advice of advised()) {
      const first = advice.specs[0];
      for (const entry of advice.ask) {
        if (first === undefined) {
          expect(entry).toMatchObject({
            sdNow: 0,
            sdThen: 0,
            chanceNow: 0,
            chanceThen: 0,
            couldEarn: undefined,
          });
          continue;
        }
        const { style, strands, clearance } = first.candidate;
        const measured = taped(entry.input, advice);
        const then = lay(first.candidate, sideOf(factsOf(measured, shop.model)))!;
        // Cords and frame have spreads of their own.
        const part = clearance.where === 'buckle' ? 'frameClearance' : 'cordClearance';
        const best = sizeOrder(measured, shop).specs.find(({ candidate }) => candidate.style === style);
        const more = best !== undefined && best.candidate.strands > strands;
        expect(entry).toMatchObject({
          sdNow: first.candidate[part].sd,
          chanceNow: clearance.chance,
          sdThen: then[part].sd,
          chanceThen: then.clearance.chance,
          couldEarn: more ? best.candidate.strands : undefined,
          beforeCutting: entry.input === 'ring to ring',
        });
        if (more) earned += 1;
      }
    }
    expect(earned).toBeGreaterThan(3);
  });

  test('earns nothing of another style, though the tape may put a high flare before a low one', () => {
    for (const position of ['7/8', '3/4', '5/8'] as const) {
      const slips = orderOf({ horse: { trouble: ['saddle-rolls'] }, saddle: { rigging: rigging(position) } });
      const { facts, specs } = sizeOrder(slips, shop);
      const high = specs.filter(({ candidate }) => candidate.style === 'high-flare');
      const low = specs.filter(({ candidate }) => candidate.style === 'low-flare');
      const narrow = low.find(({ candidate }) => candidate.strands === 19)!;
      for (const { couldEarn } of asksFor(facts, [narrow, ...high])) expect(couldEarn).toBeUndefined();
      for (const { couldEarn } of asksFor(facts, [narrow, ...low])) expect(couldEarn).toBeGreaterThan(19);
    }
  });

  test('stands in order: what cutting waits for, then what makes the first surest', () => {
    for (const advice of advised()) {
      const { ask, firstAsk, first } = advice;
      const keys = ask.map(({ input, beforeCutting }) => {
        if (beforeCutting || first === undefined) return -1;
        const side = sideOf(factsOf(taped(input, advice), shop.model));
        return 1 - lay(first.candidate, side)!.clearance.likely;
      });
      expect(keys).toEqual(keys.toSorted((a, b) => a - b));
      expect(firstAsk?.input).toBe(ask[0]?.input);
    }
  });
});

describe('when nothing passes', () => {
  const tight = shopWith({ 'floor-clearance': 4, 'required-clearance': 4.5 });

  test('the first of the refused alone is the first of all', () => {
    const none = orders.map((order) => sizeOrder(order, tight)).filter(({ specs }) => specs.length === 0);
    expect(none.length).toBeGreaterThan(10);
    for (const advice of none) expect(advice.firstRefused).toEqual(advice.refused[0]);
  });

  test('and only then there is a first of the refused', () => {
    for (const advice of advised()) {
      if (advice.specs.length > 0)
        expect([advice.firstRefused, advice.wayOut]).toEqual([undefined, undefined]);
    }
  });

  test('the list of all holds those that pass, best first, then the others once each', () => {
    for (const advice of advised().slice(0, 12)) {
      const { every } = advice;
      const refusing = every.map(({ findings }) => findings.some(({ judgement }) => judgement === 'refuse'));
      expect(refusing).toEqual(every.map((_, i) => i >= advice.specs.length));
      const named = every.map(({ candidate: c }) => `${c.style} ${c.strands}`);
      expect(new Set(named).size).toBe(named.length);
    }
  });
});

test('styles are impossible where no candidate has them', () => {
  const short = sizeOrder(orderOf({ horse: { heartGirth: 40 }, saddle: { ringToRing: 21 } }), {
    ...shop,
    lengths: { min: 8, max: 40, step: 1 },
  });
  const tied = new Set(short.every.map(({ candidate }) => candidate.style));
  expect(short.impossible.length).toBeGreaterThan(0);
  expect(short.impossible).toEqual(styleIds.filter((style) => !tied.has(style)));
  expect(advised()[0]!.impossible).toEqual([]);
  for (const { style, why } of short.otherStyles)
    if (short.impossible.includes(style)) expect(phraseText(why, 'in')).toBe('no room below the buckle');
});

test('the last of those that pass comes before nothing', () => {
  expect(sizeOrder(orderOf(), shop).specs.at(-1)!.becauseOf).toBeUndefined();
});

test('even neighbours of a length are even, tied by the shop, and leave the run they say', () => {
  let odd = 0;
  for (const { specs, facts } of advised()) {
    for (const { candidate, evenLengths } of specs) {
      const { length } = candidate;
      const even = length % 2 === 0;
      const target = facts.lengthNeed.target.value;
      const low = even ? length - 2 : 2 * Math.floor(target / 2);
      const around = even ? [length - 2, length + 2] : [low, low + 2];
      const within = around.filter((each) => each >= shop.lengths.min && each <= shop.lengths.max);
      expect(evenLengths.map((each) => each.length)).toEqual(within);
      for (const each of evenLengths) {
        const both = facts.lengthNeed.ringToRing.value - each.length - facts.lengthNeed.stretch;
        expect(each.run).toBeCloseTo(both / 2, 12);
      }
      if (!even) odd += 1;
    }
  }
  expect(odd).toBeGreaterThan(3);
});

test('the stretch in new cord is assumed, unless outcomes of the shop stand behind it', () => {
  const giveOf = (own: Shop) =>
    sizeOrder(orderOf(), own).assumptions.find(({ input }) => input === 'stretch in new cord');
  const learned = { ...shop, learned: { stretch: { outcomes: 14, until: '2026-10-02' } } };
  expect(giveOf(shop)).toMatchObject({ kind: 'assumed' });
  expect(giveOf(learned)).toEqual({
    ...giveOf(shop),
    kind: 'computed',
    basis: 'from 14 outcomes of this shop until 2026-10-02',
  });
  const others = (own: Shop) =>
    sizeOrder(orderOf(), own).assumptions.filter(({ input }) => input !== 'stretch in new cord');
  expect(others(learned)).toEqual(others(shop));
});

test('what a photo buys is told of the same cinch on the horse as it was assumed before', () => {
  const surer = sizeOrder(orderOf({ horse: { elbowRoom: 5 } }), shop);
  const bare = sizeOrder(orderOf(), shop);
  const worth = photoWorth(surer, bare);
  expect(worth.first).toBe(surer.specs[0]);
  expect(worth.firstWithout).toBe(bare.specs[0]);
  expect(worth.without).toEqual(lay(surer.specs[0]!.candidate, sideOf(bare.facts))?.clearance);
  expect(photoWorth({ specs: [] } as unknown as Advice, bare)).toMatchObject({
    first: undefined,
    without: undefined,
  });
});
