/** Gains by hand, and the error of a mean. */
import { expect, test } from 'vitest';
import { fullMean, gainOver, pairedMean } from '../../src/math/worth.ts';
import { seededRandom } from '../../src/math/random.ts';
import { within } from '../support/within.ts';

test('the gain over a choice is how much better the best is', () => {
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

test('when every answer was tried, the mean is weighed and has no error', () => {
  expect(fullMean([0.25, 0.75], [4, 8])).toEqual({ mean: 7, error: 0 });
});
