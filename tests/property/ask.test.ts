/** Laws of asking: no worth below zero, nothing known is asked, repeatable. */
import { beforeAll, describe, expect, test } from 'vitest';
import { askAbout, toAsk, type AskResult } from '../../src/advice/ask.ts';
import { oddsOf } from '../../src/advice/odds.ts';
import { simulateClearance } from '../../src/advice/simulate.ts';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order } from '../../src/order/types.ts';
import { askingNumbers } from '../../src/numbers/asking-numbers.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { askFigure } from '../support/ask-figure.ts';
import { roomWorthByGrid } from '../support/ask-oracle.ts';
import { orderText } from '../support/backlog/order.ts';
import { orderOf, rigging, shopWith } from '../support/orders.ts';
import { cases, long } from '../support/cases.ts';
import { within } from '../support/within.ts';

const orders: Order[] = Array.from(
  { length: cases(18, 24) },
  (_, i) => readOrders(orderText(11, i + 1), 'o.yaml')[0]!,
).flatMap((entry) => (entry.ok ? [entry.order] : []));
const drawing = { strata: cases(10, 20), seed: 5 };
const numbers = ({ worths }: AskResult) =>
  worths.map(({ name, gain, changes, followed, wider }) => ({ name, gain, changes, followed, wider }));

let results: AskResult[] = [];
beforeAll(() => {
  results = orders.map((order) => askAbout(sizeOrder(order, defaultShop), drawing));
});

test('no question is worth less than nothing, and chances are chances', () => {
  expect(results.flatMap(({ worths }) => worths).length).toBeGreaterThan(30);
  for (const { worths } of results)
    for (const { gain, changes, followed, wider } of worths) {
      expect(gain.mean).toBeGreaterThanOrEqual(0);
      expect(gain.mean).toBeLessThanOrEqual(1);
      expect(followed.mean).toBeLessThanOrEqual(gain.mean + 1e-12);
      for (const { mean, error } of [changes, wider]) {
        expect(mean).toBeGreaterThanOrEqual(0);
        expect(mean).toBeLessThanOrEqual(1);
        expect(error).toBeLessThan(0.2);
      }
    }
});

test('what is measured is not asked for', () => {
  for (const [i, { worths }] of results.entries()) {
    const { horse, saddle } = orders[i]!;
    const names = worths.map(({ name }) => name);
    expect(names.includes('elbow room')).toBe(horse.elbowRoom === undefined);
    expect(names.includes('heart girth')).toBe(horse.heartGirth === undefined);
    expect(names.includes('ring to ring')).toBe(saddle.ringToRing === undefined);
    expect(names.includes('ring set-back')).toBe(saddle.rigging.kind === 'named');
    expect(names.includes('barrel shape')).toBe(horse.barrel === undefined);
    expect(names.includes('side photo')).toBe(
      names.includes('elbow room') || names.includes('ring set-back'),
    );
  }
});

test('the same seed gives the same, another seed nearly so', () => {
  const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8') } }), defaultShop);
  const strata = cases(12, 200);
  const [one, other] = [1, 2].map((seed) => askAbout(advice, { strata, seed }));
  expect(numbers(askAbout(advice, drawing))).toEqual(numbers(askAbout(advice, drawing)));
  expect(numbers(other!)).not.toEqual(numbers(one!));
  for (const { name, gain } of one!.worths) {
    const twin = other!.worths.find((worth) => worth.name === name)!.gain;
    within(twin.mean, gain.mean, 4 * Math.hypot(gain.error, twin.error) + 1e-3);
  }
});

test("the order of the shop's lists changes nothing", () => {
  const turned = {
    ...defaultShop,
    buckles: [...defaultShop.buckles].reverse(),
    cords: [...defaultShop.cords].reverse(),
  };
  for (const order of orders.slice(0, cases(2, 6))) {
    const [a, b] = [defaultShop, turned].map((shop) => askAbout(sizeOrder(order, shop), drawing));
    expect(numbers(b!)).toEqual(numbers(a!));
  }
});

test('a question is asked when it gains enough, changes enough, or must be known before cutting', () => {
  for (const result of results)
    for (const { worthAsking, gain, changes, beforeCutting } of result.worths)
      expect(worthAsking).toBe(
        beforeCutting ||
          gain.mean >= askingNumbers['worth-gain'].value ||
          changes.mean >= askingNumbers['worth-change'].value,
      );
});

test('a photo is offered instead of what it shows, or is a question of its own', () => {
  let instead = 0;
  for (const result of results) {
    const { questions, photo } = toAsk(result);
    const names = questions.map(({ name }) => name);
    if (photo !== undefined) {
      instead++;
      expect(names).not.toContain('side photo');
      expect(names.some((name) => ['elbow room', 'ring set-back', 'barrel shape'].includes(name))).toBe(true);
    }
  }
  expect(instead).toBeGreaterThan(3);
});

describe('the closed form against drawing the whole geometry', () => {
  test.each(orders.slice(0, cases(4, 10)).map((order) => [order.order, order] as const))('%s', (_, order) => {
    const { specs, facts } = sizeOrder(order, defaultShop);
    for (const { candidate } of specs.slice(0, 1)) {
      // Told chances stay within what the model allows.
      const clears = Math.min(facts.model['chance-most'], oddsOf(candidate, facts).clears);
      // First order against the whole, as in the spread test of sizing.
      within(
        clears,
        simulateClearance(candidate, facts, { draws: cases(8_000, 40_000), seed: 3 }).chance,
        0.03,
      );
    }
  });
});

test('taping the room is worth what a fine grid of readings and rooms says', () => {
  const shop = shopWith({
    'girth-taped-sd': 0.1,
    'measured-position-sd': 0.05,
    'ring-to-ring-sd': 0.1,
    'push-sd': 0,
    'ring-behind-elbow-sd': 0,
    'opening-above-sd': 0,
    'strand-pitch-sd': 0,
    stretch: 0,
  });
  for (const setBack of long ? [0.5, 2.25] : [2.25]) {
    const order = orderOf({
      horse: { barrel: 'average' },
      saddle: { rigging: { kind: 'measured', setBack }, ringToRing: 44 },
    });
    const { worths } = askAbout(sizeOrder(order, shop), { strata: cases(40, 400), seed: 1 });
    const room = worths.find(({ name }) => name === 'elbow room')!;
    const slow = roomWorthByGrid(order, shop);
    expect(slow.gain).toBeGreaterThan(0.02);
    within(room.gain.mean, slow.gain, 0.006 + 3 * room.gain.error);
    within(room.changes.mean, slow.changes, 0.015 + 3 * room.changes.error);
  }
}, 60_000);

/**
 * `size` looks at one reading, `ask` at all. On elbow room and set-back they may differ where two are
 * nearly alike, but not contradict each other.
 */
test('where size finds one tape clearly better than another, asking does not find it clearly worse', () => {
  let compared = 0;
  for (const { advice, worths } of results) {
    const [room, ring] = (['elbow room', 'ring set-back'] as const).map((input) => ({
      first: advice.ask.find((ask) => ask.input === input),
      full: worths.find(({ name }) => name === input),
    }));
    if (room?.first === undefined || ring?.first === undefined || room.first.sdNow === 0) continue;
    const surer = room.first.chanceThen - ring.first.chanceThen;
    if (Math.abs(surer) < 0.015) continue;
    compared++;
    expect(Math.sign(surer) * (room.full!.gain.mean - ring.full!.gain.mean)).toBeGreaterThan(-0.02);
  }
  expect(compared).toBeGreaterThan(1);
});

test('ring to ring stands first for both, until it is taped', () => {
  for (const { advice, worths } of results) {
    const open = worths.some(({ name }) => name === 'ring to ring');
    expect(worths[0]?.name === 'ring to ring').toBe(open);
    expect(advice.ask[0]?.input === 'ring to ring').toBe(open);
  }
});

// A hundred orders are too few: on this seed the first question even loses.
test.runIf(long)(
  'asking the first question beats asking any',
  () => {
    const {
      orders: count,
      unasked,
      any,
      first,
      more,
      error,
    } = askFigure({
      count: 300,
      seed: 7,
      strata: 4,
      uncut: false,
    });
    expect(count).toBeGreaterThan(200);
    expect(any).toBeGreaterThan(unasked);
    within(more, first - any, 1e-12);
    expect(more).toBeGreaterThan(error);
  },
  240_000,
);
