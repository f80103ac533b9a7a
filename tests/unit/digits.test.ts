/** Which criteria become digits of one number, and where it has no room for more. */
import { describe, expect, it } from 'vitest';
import { criteriaFor, type Criterion } from '../../src/advice/criteria.ts';
import { addDigits, type Digits } from '../../src/advice/digits.ts';
import { Sums } from '../../src/advice/sums.ts';
import { placeOf } from '../../src/advice/verdict.ts';
import { Trial } from '../../src/advice/trial.ts';
import { ALL } from '../../src/fit/axes.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { factsForAll, shopOfManyBuckles } from '../support/many-keys.ts';
import { orderOf } from '../support/orders.ts';

function digitsOf(facts: CaseFacts, criteria: readonly Criterion[]): Digits {
  const trial = new Trial(facts);
  const sums = new Sums();
  sums.restart(trial);
  return addDigits(sums, criteria, trial);
}

describe('digits', () => {
  const usual = factsForAll(orderOf({}), defaultShop);
  const criteria = criteriaFor(usual);

  it('hold every criterion that an order to the built-in shop can ask for', () => {
    const { counted, others } = digitsOf(usual, criteria);
    expect(others).toEqual([]);
    expect(counted.map(({ place }) => place)).toEqual([
      placeOf.poor,
      placeOf['cannot-tell'],
      placeOf.acceptable,
    ]);
  });

  it('end where whole numbers are no longer exact, with room for the largest', () => {
    const many = factsForAll(orderOf({}), shopOfManyBuckles(200));
    const { counted, others } = digitsOf(many, criteriaFor(many));
    expect(others.map(({ id }) => id)).toEqual(['smaller buckle']);
    const [{ weight } = { weight: NaN }] = counted;
    // The first digit counts all rules at most, and the digits after it less than one of its own.
    expect(weight * (criteria[0]!.whole![1] + 1)).toBeLessThanOrEqual(Number.MAX_SAFE_INTEGER);
  });

  it('end before a criterion whose keys nobody can list', () => {
    const odd: Criterion = { ...criteria[3]!, id: 'odd', axes: ALL, rule: undefined, whole: undefined };
    const { others } = digitsOf(usual, [criteria[0]!, odd, criteria[1]!]);
    expect(others.map(({ id }) => id)).toEqual(['odd', criteria[1]!.id]);
  });
});
