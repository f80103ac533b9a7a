/** The first two specs found by bounds are those that ranking all of them puts first. */
import { describe, expect, test } from 'vitest';
import { adviceOn } from '../../src/advice/advice.ts';
import { criteriaFor } from '../../src/advice/criteria.ts';
import { rank } from '../../src/advice/rank.ts';
import { passes } from '../../src/advice/refused.ts';
import { Trial } from '../../src/advice/trial.ts';
import { factsOf } from '../../src/facts/facts.ts';
import type { Shop } from '../../src/order/types.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { shelfOf } from '../../src/stock/shelf.ts';
import { randomOrders } from '../support/random-cases.ts';

const { model, buckles, cords } = defaultShop;

/** Shops that make some of the bounds weak, or wrong if they are not kept. */
const shops: Readonly<Record<string, Shop>> = {
  'the built-in shop': defaultShop,
  'a shop with next to nothing on the shelf': {
    ...defaultShop,
    buckles: buckles.map((buckle, i) => ({ ...buckle, onHand: i % 3, orderable: i % 2 === 0 })),
    cords: cords.map((cord, i) => ({ ...cord, feetOnHand: 20 * i, orderable: i % 2 === 0 })),
  },
  'a shop of few strands and even lengths': {
    ...defaultShop,
    strands: { min: 13, max: 21 },
    lengths: { min: 28, max: 32, step: 2 },
    buckles: [...buckles].reverse(),
  },
  'a shop that asks for much': {
    ...defaultShop,
    model: { ...model, 'chance-good': 0.97, 'required-clearance': 2, 'floor-clearance': 1.75 },
  },
  'a shop with cords as thick as ropes': { ...defaultShop, model: { ...model, 'strand-pitch': 1.2 } },
};

interface Asked {
  readonly facts: CaseFacts;
  readonly shop: Shop;
}

const asked = (shop: Shop, seed: number): Asked[] =>
  randomOrders(seed, 120).map((order) => {
    const facts: CaseFacts = { ...factsOf(order, shop.model), shop, shelf: shelfOf(order, shop) };
    return { facts, shop };
  });

const named = (judged: {
  candidate: { style: string; strands: number; length: number; buckle: { id: string } };
}) => {
  const { style, strands, length, buckle } = judged.candidate;
  return `${style} ${strands} ${length} ${buckle.id}`;
};

describe.each(Object.entries(shops))('%s', (_, shop) => {
  const cases = asked(shop, 7);

  test('the first two are those of sorting every candidate that passes', () => {
    for (const { facts } of cases) {
      const criteria = criteriaFor(facts);
      const sorted = rank(new Trial(facts).all.filter(passes), criteria);
      const [first] = sorted;
      const second = sorted.find(
        ({ candidate: { style, strands } }) =>
          style !== first?.candidate.style || strands !== first.candidate.strands,
      );
      const expected = [first, second].flatMap((entry) => (entry === undefined ? [] : [named(entry)]));
      expect(new Trial(facts).frontRunners(criteria).map(named)).toEqual(expected);
    }
  });

  test('the best of each style and strand count are those of sorting every candidate that passes', () => {
    for (const { facts } of cases) {
      const criteria = criteriaFor(facts);
      const seen = new Set<string>();
      const expected = rank(new Trial(facts).all.filter(passes), criteria).filter(({ candidate }) => {
        const group = `${candidate.style} ${candidate.strands}`;
        return !seen.has(group) && seen.add(group);
      });
      const found = rank(new Trial(facts).bestOfEach(criteria), criteria);
      expect(found.map(named)).toEqual(expected.map(named));
    }
  });

  test('asked for alone, the first spec says what it says as one of the list', () => {
    for (const { facts } of cases) {
      const alone = adviceOn(facts, shop).first;
      const [listed] = adviceOn(facts, shop).specs;
      expect(
        alone && { ...alone.candidate.clearance, because: alone.becauseOf, findings: alone.findings },
      ).toEqual(
        listed && { ...listed.candidate.clearance, because: listed.becauseOf, findings: listed.findings },
      );
    }
  });
});

test('the cases hold what bounds can get wrong: nothing passes, tight ones, and every criterion decides somewhere', () => {
  const all = Object.values(shops).flatMap((shop) => asked(shop, 7));
  const firsts = all.map(({ facts, shop }) => adviceOn(facts, shop).first);
  expect(firsts.filter((first) => first === undefined).length).toBeGreaterThan(20);
  expect(
    firsts.filter((first) => first?.judgementOf('elbow-clearance') === 'acceptable').length,
  ).toBeGreaterThan(5);
  const deciding = new Set(firsts.map((first) => first?.becauseOf?.criterion));
  expect([...deciding]).toEqual(
    expect.arrayContaining([
      'fewest poor',
      'good at the elbow',
      'fewest acceptable',
      'wider behind the elbow',
    ]),
  );
});

test('what criteria say of their keys is so', () => {
  let seen = 0;
  for (const { facts } of Object.values(shops).flatMap((shop) => asked(shop, 11).slice(0, 12))) {
    for (const { of, atBest, counts, key, id } of criteriaFor(facts)) {
      const known = new Map<string, number>();
      for (const judged of new Trial(facts).all) {
        const { style, strands, length } = judged.candidate;
        const own = key(judged);
        const group =
          of === 'make' ? `${style} ${String(strands)}` : of === 'length' ? String(length) : undefined;
        if (group !== undefined) expect([id, own]).toEqual([id, known.get(group) ?? own]);
        if (group !== undefined) known.set(group, own);
        if (counts !== undefined) expect([id, own]).toEqual([id, judged.countOf(counts)]);
        if (atBest !== undefined) expect(own, id).toBeGreaterThanOrEqual(atBest(judged));
        if (of !== undefined || atBest !== undefined || counts !== undefined) seen += 1;
      }
    }
  }
  expect(seen).toBeGreaterThan(1000);
});
