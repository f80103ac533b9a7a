/** The worth of knowing against a published decision, and against trying every rule from answers to choices. */
import { describe, expect, test } from 'vitest';
import {
  answersOf,
  fullMean,
  bestUnasked,
  gainOver,
  pairedMean,
  worthOf,
  type Answer,
} from '../../src/geometry/worth.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { within } from '../support/within.ts';
import { worthByEveryRule, type Decision } from '../support/worth-oracle.ts';

/**
 * An oil wildcatter: drill or not, with or without a seismic test. Raiffa 1968, with the numbers of the manual of SAS/OR, procedure
 * DTREE; results recomputed. Gains are what the well yields less the mean cost of drilling, 310; not drilling gains nothing.
 */
const states: Answer[] = [
  { chance: 0.5, gains: [0, 0 - 310] },
  { chance: 0.3, gains: [0, 700 - 310] },
  { chance: 0.2, gains: [0, 1200 - 310] },
];
const seismic = [
  [0.6, 0.3, 0.1],
  [0.3, 0.4, 0.4],
  [0.1, 0.3, 0.5],
];
const expected = (choice: number): number =>
  states.reduce((sum, { chance, gains }) => sum + chance * gains[choice]!, 0);

describe('an oil wildcatter', () => {
  test('drilling gains 140, so that is what is done unasked', () => {
    within(expected(1), 140, 1e-9);
    expect(bestUnasked(states)).toBe(1);
  });
  test('knowing how much oil there is is worth 155', () => {
    within(worthOf(states), 155, 1e-9);
  });
  test('the seismic test is worth 40.1, and 180.1 with what it leads to: at a price of 60 it is not made', () => {
    const answers = answersOf(states, seismic);
    within(
      answers.reduce((sum, { chance }) => sum + chance, 0),
      1,
      1e-12,
    );
    within(worthOf(answers), 40.1, 1e-9);
    within(expected(1) + worthOf(answers), 180.1, 1e-9);
    expect(worthOf(answers)).toBeLessThan(60);
  });
  test('a test that says the same whatever is true is worth nothing', () => {
    within(
      worthOf(
        answersOf(states, [
          [0.5, 0.5, 0.5],
          [0.5, 0.5, 0.5],
        ]),
      ),
      0,
      1e-12,
    );
  });
});

function randomDecision(seed: number): Decision {
  const random = seededRandom(seed);
  const whole = (low: number, high: number): number => low + Math.floor(random.uniform() * (high - low + 1));
  const shares = (count: number): number[] => {
    const parts = Array.from({ length: count }, () => random.uniform());
    const sum = parts.reduce((a, b) => a + b, 0);
    return parts.map((part) => part / sum);
  };
  const [s, a, c] = [whole(2, 4), whole(1, 4), whole(1, 4)];
  const byState = Array.from({ length: s }, () => shares(a));
  return {
    chances: shares(s),
    gains: Array.from({ length: c }, () => Array.from({ length: s }, () => random.normal())),
    likelihoods: Array.from({ length: a }, (_, i) => byState.map((row) => row[i]!)),
  };
}

test('150 random decisions agree with trying every rule, and none is negative', () => {
  let positive = 0;
  for (let seed = 1; seed <= 150; seed++) {
    const decision = randomDecision(seed);
    const { chances, gains, likelihoods } = decision;
    const own = chances.map((chance, i) => ({ chance, gains: gains.map((row) => row[i]!) }));
    const worth = worthOf(answersOf(own, likelihoods));
    within(worth, worthByEveryRule(decision), 1e-9);
    expect(worth).toBeGreaterThan(-1e-12);
    if (worth > 1e-6) positive++;
  }
  expect(positive).toBeGreaterThan(20);
});

test('the gain over a choice is what the best gains more', () => {
  expect(gainOver([1, 3, 2], 0)).toBe(2);
  expect(gainOver([1, 3, 2], 1)).toBe(0);
});

test('the error of a stratified mean is that of many repeated means', () => {
  const strata = 8;
  const means: number[] = [];
  const errors: number[] = [];
  for (let seed = 1; seed <= 4000; seed++) {
    const random = seededRandom(seed);
    const values = Array.from({ length: 2 * strata }, (_, i) => {
      const u = (Math.floor(i / 2) + random.uniform()) / strata;
      return u * u + 0.3 * random.normal();
    });
    const { mean, error } = pairedMean(values);
    means.push(mean);
    errors.push(error ** 2);
  }
  const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  const center = average(means);
  within(center, 1 / 3, 0.005);
  const true2 = average(means.map((mean) => (mean - center) ** 2));
  within(average(errors) / true2, 1, 0.08);
});

test('answers that were all looked at have a weighed mean and no error', () => {
  expect(fullMean([0.25, 0.75], [4, 8])).toEqual({ mean: 7, error: 0 });
});

test('an answer that never comes is worth nothing', () => {
  const state = { chance: 1, gains: [3, 5] };
  expect(answersOf([state], [[0], [1]])).toEqual([
    { chance: 0, gains: [0, 0] },
    { chance: 1, gains: [3, 5] },
  ]);
});
