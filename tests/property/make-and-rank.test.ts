/** What is tied of each style and strand count, in which order. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adviceOn, type Advice } from '../../src/advice/advice.ts';
import { criteriaFor } from '../../src/advice/criteria.ts';
import { passes, type Judged } from '../../src/advice/judge.ts';
import { make } from '../../src/advice/make.ts';
import { rank, whyBefore } from '../../src/advice/rank.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases } from '../support/cases.ts';
import { caseFactsOf, likelyOrders, randomOrders } from '../support/random-cases.ts';

const { model, buckles, cords } = defaultShop;

const shops: Readonly<Record<string, Shop>> = {
  'the built-in shop': defaultShop,
  'a shop with next to nothing on the shelf': {
    ...defaultShop,
    buckles: buckles.map((buckle, i) => ({ ...buckle, onHand: i % 3, orderable: i % 2 === 0 })),
    cords: cords.map((cord, i) => ({ ...cord, feetOnHand: 20 * i, orderable: i % 2 === 0 })),
  },
  'a shop of few strands and lengths by the half inch': {
    ...defaultShop,
    strands: { min: 13, max: 21 },
    lengths: { min: 26, max: 34, step: 0.5 },
  },
  'a shop that asks for much': {
    ...defaultShop,
    model: { ...model, 'chance-good': 0.97, 'required-clearance': 2, 'floor-clearance': 1.75 },
  },
  // Only their ids differ, which come last.
  'a shop of frames that are all alike': {
    ...defaultShop,
    buckles: buckles.map((buckle, i) => ({
      ...buckle,
      id: '3504162'.charAt(i),
      barWidth: 4,
      frameWidth: 5,
      frameHeight: 2.5,
      single: { min: 11, max: 25 },
      double: { min: 19, max: 31 },
    })),
  },
};

const orders: readonly Order[] = [
  ...randomOrders(7, 30),
  ...likelyOrders(3, 10, { taped: false }),
  ...likelyOrders(4, 10, { taped: true }),
];
const named = ({ candidate: c }: Judged): string =>
  `${c.style} ${c.strands} ${c.layers} ${c.length} ${c.buckle.id}`;
const kindOf = ({ candidate: c }: Judged): string => `${c.style} ${c.strands}`;
const every = cases(3, 1);
const factsIn = (shop: Shop): CaseFacts[] =>
  orders.filter((_, i) => i % every === 0).map((order) => caseFactsOf(order, shop));
const adviceIn = (order: Order, shop: Shop): Advice => adviceOn(caseFactsOf(order, shop), shop);

/** Lexicographic: below 0, 0 or above 0. */
const byFirst = (a: readonly number[], b: readonly number[]): number => {
  const i = a.findIndex((value, at) => value !== b[at]);
  return i < 0 ? 0 : a[i]! - b[i]!;
};

/** What a maker prefers, in order, written again; half the girth less 3, up to even: university extension. */
function wishes({ candidate: c }: Judged, { k, girth, model: numbers, order }: CaseFacts): number[] {
  const target = Math.min(8, Math.max(4, 6 * k));
  const sure = c.frameClearance.likely;
  const { onHand, orderable, frameWidth, barWidth } = c.buckle;
  return [
    c.run < 4 || c.run > 8 ? 1 : 0,
    Math.abs(c.length / 2 - Math.round(c.length / 2)) > 0.0625 ? 1 : 0,
    Math.round(4 * Math.abs(c.run - target)),
    Math.abs(c.length - 2 * Math.ceil((girth.value / 2 - 3) / 2 - 1e-9)),
    c.length,
    sure >= numbers['chance-good'] ? 0 : sure >= 0.6 ? 1 : 2,
    orderable && onHand < 2 * order.quantity ? 1 : 0,
    (c.layers === 1) === c.strands <= 17 ? 0 : 1,
    frameWidth,
    barWidth,
  ];
}

describe.each(Object.entries(shops))('%s', (_, shop) => {
  const all = factsIn(shop).map((facts) => ({
    facts,
    tied: make(facts).map(({ made, ways }) => ({ made, passing: ways().filter(passes) })),
  }));

  test('what is made is the first way that no rule refuses, or none', () => {
    let some = 0;
    for (const { tied } of all)
      for (const { made, passing } of tied) {
        const [first] = passing;
        expect(made === undefined ? undefined : named(made)).toBe(
          first === undefined ? undefined : named(first),
        );
        if (made !== undefined) some += 1;
      }
    expect(some).toBeGreaterThan(100);
  });

  test('no passing way is preferred to it', () => {
    for (const { facts, tied } of all) {
      // A rubbing buckle comes first, in its own test.
      if (facts.order.horse.trouble.includes('buckle-rub')) continue;
      for (const { made, passing } of tied) {
        if (made === undefined) continue;
        const own = wishes(made, facts);
        for (const way of passing) expect(byFirst(own, wishes(way, facts))).toBeLessThanOrEqual(0);
      }
    }
  });

  test('each stands before the next by the first criterion that differs, and that one is told', () => {
    for (const { facts, tied } of all) {
      const criteria = criteriaFor(
        facts,
        tied.flatMap(({ made }) => made ?? []),
      );
      const keys = (judged: Judged): number[] => criteria.map(({ key }) => key(judged));
      const ranked = rank(
        tied.flatMap(({ made }) => made ?? []),
        criteria,
      );
      ranked.slice(1).forEach((next, i) => {
        const before = ranked[i]!;
        expect(byFirst(keys(before), keys(next))).toBeLessThanOrEqual(0);
        const at = keys(before).findIndex((key, j) => key !== keys(next)[j]);
        expect(whyBefore(before, next, criteria).criterion).toBe(criteria[at]?.id ?? 'none');
      });
    }
  });
});

test("the order of the shop's lists changes nothing", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...orders),
      fc.constantFrom(...Object.values(shops)),
      fc.nat(),
      (order, shop, seed) => {
        const shuffled = <T>(list: readonly T[]): T[] =>
          fc.sample(fc.shuffledSubarray([...list], { minLength: list.length }), { seed, numRuns: 1 })[0]!;
        const mixed = { ...shop, buckles: shuffled(shop.buckles), cords: shuffled(shop.cords) };
        expect(adviceIn(order, mixed).every.map(named)).toEqual(adviceIn(order, shop).every.map(named));
      },
    ),
    { seed: 8, numRuns: 60 },
  );
});

test('adding a kind does not reorder the others', () => {
  const narrow = { ...defaultShop, strands: { min: 15, max: 23 } };
  let [more, reached] = [0, 0];
  for (const order of orders) {
    const few = adviceIn(order, narrow).specs;
    const many = adviceIn(order, defaultShop).specs;
    const inFew = new Set(few.map(kindOf));
    expect(many.filter((spec) => inFew.has(kindOf(spec))).map(named)).toEqual(few.map(named));
    if (many.length > few.length) more += 1;
    if (many[0] !== undefined && !inFew.has(kindOf(many[0]))) reached += 1;
  }
  expect(Math.min(more, reached)).toBeGreaterThan(5);
});

test('the order they come in does not matter', () => {
  for (const facts of factsIn(defaultShop)) {
    const made = make(facts).flatMap((tied) => tied.made ?? []);
    const criteria = criteriaFor(facts, made);
    expect(rank([...made].reverse(), criteria)).toEqual(rank(made, criteria));
  }
});

test('where a buckle rubs, no wider one and none as wide and no higher is tied, if another passes', () => {
  let smaller = 0;
  for (const order of orders) {
    const now = { style: 'straight', strands: 17, length: 30, buckle: 'plain 4' } as const;
    const rubbed: Order = { ...order, current: now, horse: { ...order.horse, trouble: ['buckle-rub'] } };
    const facts = caseFactsOf(rubbed, defaultShop);
    // The low edge of a 3 in frame at half of 30 and the give.
    const again = ({ candidate: { buckle, low } }: Judged): boolean =>
      buckle.frameWidth > 4.75 || (buckle.frameWidth > 4.5 && low < 12.5 + 1);
    for (const { made, ways } of make(facts)) {
      if (made === undefined) continue;
      if (again(made)) expect(ways().filter(passes).every(again)).toBe(true);
      else smaller += 1;
    }
  }
  expect(smaller).toBeGreaterThan(100);
});

test('the cases hold what can go wrong: nothing passes, tight ones, and every criterion decides somewhere', () => {
  const sore = orders.map((order, i): Order => {
    const trouble = i % 2 === 0 ? (['elbow-gall'] as const) : (['saddle-rolls'] as const);
    const current = { style: 'straight', strands: 17, length: 30, buckle: 'plain 3' } as const;
    return { ...order, current, horse: { ...order.horse, trouble } };
  });
  const asked = Object.values(shops).flatMap((shop) =>
    [...orders, ...sore].map((order) => adviceIn(order, shop)),
  );
  const firsts = asked.map(({ first }) => first);
  expect(firsts.filter((first) => first === undefined).length).toBeGreaterThan(20);
  expect(
    firsts.filter((first) => first?.judgementOf('elbow-clearance') === 'acceptable').length,
  ).toBeGreaterThan(5);
  const deciding = new Set(
    asked.flatMap(({ specs }) => specs.flatMap(({ becauseOf }) => becauseOf?.criterion ?? [])),
  );
  const known = new Set(asked.flatMap(({ facts }) => criteriaFor(facts, []).map(({ id }) => id)));
  expect(known.size).toBe(9);
  expect([...known].filter((id) => !deciding.has(id))).toEqual([]);
});
