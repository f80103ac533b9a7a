/** The best of each style and strand count, found by numbers, are those that ranking all candidates by their criteria puts first. */
import { describe, expect, test } from 'vitest';
import { adviceOn } from '../../src/advice/advice.ts';
import { bestOfEach } from '../../src/advice/best.ts';
import { criteriaFor } from '../../src/advice/criteria.ts';
import { ruleOf, Seen, type Judged } from '../../src/advice/judge.ts';
import { rank } from '../../src/advice/rank.ts';
import { passes } from '../../src/advice/refused.ts';
import { axesOfRule } from '../../src/advice/tallies.ts';
import { Trial } from '../../src/advice/trial.ts';
import { factsOf } from '../../src/facts/facts.ts';
import type { Shop } from '../../src/order/types.ts';
import { judgements, type CaseFacts } from '../../src/rules/rule.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { shelfOf } from '../../src/stock/shelf.ts';
import { factsForAll, shopOfManyBuckles } from '../support/many-keys.ts';
import { numbersOf } from '../support/numbers.ts';
import { randomOrders } from '../support/random-cases.ts';

const { model, buckles, cords } = defaultShop;

/** Shops whose candidates have many keys, few, or the same ones. */
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
  // The order in which they are tried is not the order of their ids, which comes last of all.
  'a shop of frames that are all alike': {
    ...defaultShop,
    buckles: buckles.map((buckle, i) => ({
      ...buckle,
      id: '3504162'.charAt(i),
      frameWidth: 7,
      frameHeight: 2.5,
      single: { min: 11, max: 25 },
    })),
  },
  'a shop none of whose buckles takes any strands it ties': {
    ...defaultShop,
    buckles: buckles.map((buckle) => ({ ...buckle, single: { min: 41, max: 45 }, double: undefined })),
  },
  'a shop with cords as thick as ropes': { ...defaultShop, model: { ...model, 'strand-pitch': 1.2 } },
};

interface Asked {
  readonly facts: CaseFacts;
  readonly shop: Shop;
}

const asked = (shop: Shop, seed: number, measuredBy = shop.model): Asked[] =>
  randomOrders(seed, 120).map((order) => {
    const facts: CaseFacts = { ...factsOf(order, measuredBy), shop, shelf: shelfOf(order, shop) };
    return { facts, shop };
  });

/** The best of each style and strand count, by sorting every candidate that passes. */
function sorted(facts: CaseFacts, criteria = criteriaFor(facts)): Judged[] {
  const seen = new Set<string>();
  return rank(new Trial(facts).all.filter(passes), criteria).filter(({ candidate }) => {
    const group = `${candidate.style} ${candidate.strands}`;
    return !seen.has(group) && seen.add(group);
  });
}

const named = (judged: {
  candidate: { style: string; strands: number; length: number; buckle: { id: string } };
}) => {
  const { style, strands, length, buckle } = judged.candidate;
  return `${style} ${strands} ${length} ${buckle.id}`;
};

const countsOf = (judged: Judged) => judgements.map((judgement) => judged.countOf(judgement));

/** The same candidate, whose verdicts nobody has counted yet. */
const asSeen = ({ candidate }: Judged, facts: CaseFacts) => new Seen(facts, candidate);

describe.each(Object.entries(shops))('%s', (_, shop) => {
  const cases = asked(shop, 7);

  test('the best of each style and strand count are those of sorting every candidate that passes', () => {
    for (const { facts } of cases) {
      const found = bestOfEach(new Trial(facts), criteriaFor(facts));
      expect(found.map(named)).toEqual(sorted(facts).map(named));
    }
  });

  test('tallies read part by part are those of asking every rule', () => {
    for (const { facts } of cases.slice(0, 30)) {
      for (const spec of bestOfEach(new Trial(facts), criteriaFor(facts)))
        expect(countsOf(spec)).toEqual(countsOf(asSeen(spec, facts)));
    }
  });
});

test('a fact that is not known is one more that nobody can tell, of each candidate', () => {
  for (const { facts } of asked(defaultShop, 7).slice(0, 20)) {
    const unknown = { ...facts, slipNeed: undefined as unknown as CaseFacts['slipNeed'] };
    const criteria = criteriaFor(facts);
    const found = bestOfEach(new Trial(unknown), criteria);
    expect(found.map(named)).toEqual(sorted(unknown, criteria).map(named));
    for (const spec of found) {
      expect(countsOf(spec)).toEqual(countsOf(asSeen(spec, unknown)));
      expect(spec.judgementOf('grip')).toBe('cannot-tell');
    }
  }
});

test('facts of another model than the shop has now are compared by that model, and in turn by both', () => {
  const thin = { ...defaultShop, model: { ...model, 'strand-pitch': 0.15, 'pinch-pitch': 0.1 } };
  const thick = asked(thin, 7, { ...model, 'strand-pitch': 0.4, 'pinch-pitch': 0.1 });
  for (const { facts } of thick.flatMap((one, i) => [one, asked(thin, 7)[i] as Asked])) {
    const found = bestOfEach(new Trial(facts), criteriaFor(facts));
    expect(found.map(named)).toEqual(sorted(facts).map(named));
  }
});

test('a shop of more lengths, buckles and bodies than are kept by number, asked for all there is', () => {
  const shop = shopOfManyBuckles(200);
  for (const order of randomOrders(13, 4)) {
    const facts = factsForAll(order, shop);
    const found = bestOfEach(new Trial(facts), criteriaFor(facts));
    expect(found.map(named)).toEqual(sorted(facts).map(named));
  }
});

describe('orders that share what is filled anew for each', () => {
  const [first, second] = [defaultShop, shopOfManyBuckles(40)];
  const both = asked(first, 5).flatMap(({ facts }, i) => (i < 12 ? [facts, { ...facts, shop: second }] : []));
  const alone = both.map((facts) => sorted(facts).map(named));

  test('are told the same in whatever order they are read', () => {
    const advice = both.map((facts) => adviceOn(facts, facts.shop));
    for (let i = advice.length - 1; i >= 0; i--) {
      const { specs } = advice[i]!;
      // Of another order, before anything of this one is looked at closely.
      expect(advice[(7 * i) % advice.length]!.specs.map(named)).toEqual(alone[(7 * i) % advice.length]);
      expect(specs.map(named)).toEqual(alone[i]);
      for (const spec of specs.slice(0, 3)) expect(countsOf(spec)).toEqual(countsOf(asSeen(spec, both[i]!)));
    }
  });

  test('are told the same after one that broke off', () => {
    const broken = both[1]!;
    const breaking = criteriaFor(broken).map((one) =>
      one.id === 'wider behind the elbow' ? { ...one, key: () => fail() } : one,
    );
    const fail = () => {
      throw new Error('broken off');
    };
    expect(() => bestOfEach(new Trial(broken), breaking)).toThrow('broken off');
    const found = bestOfEach(new Trial(both[0]!), criteriaFor(both[0]!));
    expect(found.map(named)).toEqual(alone[0]);
  });
});

test('the cases hold what numbers can get wrong: nothing passes, tight ones, and nearly every criterion decides somewhere', () => {
  const all = Object.values(shops).flatMap((shop) => asked(shop, 7));
  const specs = all.map(({ facts, shop }) => adviceOn(facts, shop).specs);
  const firsts = specs.map(([first]) => first);
  expect(firsts.filter((first) => first === undefined).length).toBeGreaterThan(20);
  expect(
    firsts.filter((first) => first?.judgementOf('elbow-clearance') === 'acceptable').length,
  ).toBeGreaterThan(5);
  const deciding = new Set(specs.flat().map((spec) => spec.becauseOf?.criterion));
  // What nobody can tell is the same of all candidates; a smaller buckle is for those of one style and strand count.
  const never = ['fewest cannot-tell', 'buckle clear of the elbow', 'smaller buckle'];
  const asking = factsForAll(randomOrders(7, 1)[0]!, defaultShop);
  const known = [...criteriaFor(asking).map(({ id }) => id), 'a plain cinch for a plain need'];
  expect(known.filter((id) => !deciding.has(id))).toEqual(never);
});

test('what criteria say of their keys is so', () => {
  const seen = new Map<string, number>();
  for (const shop of Object.values(shops)) {
    const ofShops = new Map<string, number>();
    for (const { facts } of asked(shop, 11).slice(0, 8)) {
      for (const criterion of criteriaFor(facts)) {
        const { id, key, whole, counts, ofShop, rule } = criterion;
        const axes = rule === undefined ? criterion.axes : criterion.axes | axesOfRule(ruleOf(rule)!, facts);
        const ofOrder = new Map<string, number>();
        for (const judged of new Trial(facts).all) {
          const { style, strands, buckle } = judged.candidate;
          const own = key(judged);
          if (whole !== undefined) {
            expect([id, Number.isInteger(own)]).toEqual([id, true]);
            expect(own).toBeGreaterThanOrEqual(whole[0]);
            expect(own).toBeLessThanOrEqual(whole[1]);
          }
          if (counts !== undefined) {
            expect([id, own]).toEqual([id, judged.countOf(counts)]);
            continue;
          }
          const known = ofShop ? ofShops : ofOrder;
          const choices = ofShop ? `${id} ${style} ${String(strands)} ${buckle.id}` : numbersOf(axes, judged);
          expect([id, own]).toEqual([id, known.get(choices) ?? own]);
          known.set(choices, own);
          seen.set(id, (seen.get(id) ?? 0) + 1);
        }
      }
    }
  }
  // Each criterion that is not a count was asked for by some order.
  expect(seen.size).toBe(13);
});
