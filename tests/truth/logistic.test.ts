/** Logistic regression against published fits and slow searches. */
import { describe, expect, test } from 'vitest';
import { chanceOf, fitLogistic, logChance, type Odds, type Trial } from '../../src/math/logistic.ts';
import { seededRandom } from '../../src/math/random.ts';
import { within, withinRelative } from '../support/within.ts';

/** Plain logistic regression: log odds are a weighted sum of columns. */
const linearOdds = (rows: readonly (readonly number[])[], trials: readonly Trial[]): Odds => ({
  trials,
  at: (i, numbers, gradient) =>
    rows[i]!.reduce((sum, value, j) => {
      gradient[j] = value;
      return sum + value * numbers[j]!;
    }, 0),
});
const noPrior = { mean: [0, 0], sd: [Infinity, Infinity] };
const fitLine = (x: readonly number[], trials: readonly Trial[], prior = noPrior) =>
  fitLogistic(
    linearOdds(
      x.map((value) => [1, value]),
      trials,
    ),
    prior,
    [0, 0],
  );
const yes = (y: readonly number[]): Trial[] => y.map((each) => ({ happened: each === 1 }));
const se = (fit: ReturnType<typeof fitLine>): number[] => fit.covariance!.map((row, i) => Math.sqrt(row[i]!));

describe('published fits', () => {
  test('hours of study and passing: encyclopedia article on logistic regression', () => {
    const x = [
      0.5, 0.75, 1, 1.25, 1.5, 1.75, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.25, 3.5, 4, 4.25, 4.5, 4.75, 5, 5.5,
    ];
    const y = [0, 0, 0, 0, 0, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 1, 1, 1, 1, 1];
    const fit = fitLine(x, yes(y));
    const [a, b] = fit.numbers;
    within(a!, -4.077713431, 1e-7);
    within(b!, 1.504645428, 1e-7);
    within(se(fit)[0]!, 1.760994, 2e-5);
    within(se(fit)[1]!, 0.628721, 2e-5);
    within(chanceOf(a! + 2 * b!), 0.2557031826, 1e-8);
    within(chanceOf(a! + 4 * b!), 0.8744475024, 1e-8);
    expect(fit.reached).toBe(true);
  });

  test('a bioassay of five animals a dose: Racine and others 1986, as Gelman and others have it', () => {
    const doses = [-0.86, -0.3, -0.05, 0.73];
    const deaths = [0, 1, 3, 5];
    const x = doses.flatMap((dose) => [dose, dose]);
    const trials = deaths.flatMap((dead): Trial[] => [
      { happened: true, weight: dead },
      { happened: false, weight: 5 - dead },
    ]);
    const fit = fitLine(x, trials);
    within(fit.numbers[0]!, 0.8465802281, 1e-7);
    within(fit.numbers[1]!, 7.7488171506, 1e-6);
    within(se(fit)[0]!, 1.0190854, 1e-4);
    within(se(fit)[1]!, 4.8727677, 1e-3);
  });

  test('O-rings and temperature: Challenger, 23 launches', () => {
    const x = [66, 70, 69, 68, 67, 72, 73, 70, 57, 63, 70, 78, 67, 53, 67, 75, 70, 81, 76, 79, 75, 76, 58];
    const y = [0, 1, 0, 0, 0, 0, 0, 0, 1, 1, 1, 0, 0, 1, 0, 0, 0, 0, 0, 0, 1, 0, 1];
    const fit = fitLine(x, yes(y));
    within(fit.numbers[0]!, 15.0429016477, 1e-6);
    within(fit.numbers[1]!, -0.2321627442, 1e-8);
    within(se(fit)[0]!, 7.3786363849, 1e-3);
    within(se(fit)[1]!, 0.1082365216, 1e-5);
    within(chanceOf(fit.numbers[0]! + 31 * fit.numbers[1]!), 0.9996087829, 1e-8);
  });

  test('separated data have a top where a prior gives them one', () => {
    const x = [1, 2, 3, 4, 5, 6];
    const y = [0, 0, 0, 1, 1, 1];
    const held = fitLine(x, yes(y), { mean: [0, 0], sd: [10, 2.5] });
    expect(held.reached).toBe(true);
    expect(held.numbers.every(Number.isFinite)).toBe(true);
    expect(held.numbers[1]!).toBeGreaterThan(0);
  });
});

/** The top by ever finer grids, without derivatives. */
function topByGrid(value: (a: number, b: number) => number): [number, number] {
  let [a, b, width] = [0, 0, 8];
  while (width > 1e-7) {
    let best = [-Infinity, a, b] as [number, number, number];
    for (let i = -10; i <= 10; i++)
      for (let j = -10; j <= 10; j++) {
        const [p, q] = [a + (i * width) / 10, b + (j * width) / 10];
        const found = value(p, q);
        if (found > best[0]) best = [found, p, q];
      }
    [, a, b] = best;
    width *= 0.6;
  }
  return [a, b];
}

test('with a prior and with outcomes that may not have shown yet: the same as a grid finds', () => {
  for (let seed = 1; seed <= 6; seed++) {
    const random = seededRandom(seed);
    const x = Array.from({ length: 40 }, () => random.normal());
    const trials = x.map((value): Trial => {
      const seen = random.uniform();
      return { happened: random.uniform() < seen * chanceOf(0.5 - 1.2 * value), seen };
    });
    const prior = { mean: [0.2, -0.5], sd: [1, 0.7] };
    const fit = fitLine(x, trials, prior);
    const [a, b] = topByGrid((p, q) => {
      const chance = (value: number): number => 1 / (1 + Math.exp(-(p + q * value)));
      const likely = trials.reduce(
        (sum, { happened, seen }, i) => sum + Math.log(happened ? chance(x[i]!) : 1 - seen! * chance(x[i]!)),
        0,
      );
      return likely - ((p - 0.2) / 1) ** 2 / 2 - ((q + 0.5) / 0.7) ** 2 / 2;
    });
    expect(fit.reached).toBe(true);
    within(fit.numbers[0]!, a, 1e-4);
    within(fit.numbers[1]!, b, 1e-4);
  }
});

test('log chances hold at the far ends', () => {
  expect(logChance({ happened: false }, 800)).toBe(-800);
  expect(logChance({ happened: true }, -800)).toBe(-800);
  within(logChance({ happened: false, seen: 0.5 }, 800), Math.log(0.5), 1e-12);
  expect(logChance({ happened: false, seen: 0 }, 800)).toBe(-0);
});

test('chances keep their digits at the far ends, where exp overflows', () => {
  withinRelative(chanceOf(-720), Math.exp(-720), 1e-9);
  expect(chanceOf(720)).toBe(1);
  expect(chanceOf(0)).toBe(0.5);
  withinRelative(logChance({ happened: true }, 40), -Math.exp(-40), 1e-12);
  withinRelative(logChance({ happened: false }, -40), -Math.exp(-40), 1e-12);
  within(logChance({ happened: true }, 800), 0, 0);
});

describe('whether there is a top', () => {
  const firm = { mean: [100, 0], sd: [1, 1] };

  test('without trials there is the prior', () => {
    const { reached, covariance } = fitLine([], [], firm);
    expect(reached).toBe(true);
    within(covariance![0]![0]!, 1, 1e-9);
    within(covariance![1]![1]!, 1, 1e-9);
    within(fitLine([], [], firm).numbers[0]!, 100, 1e-9);
  });

  test('a firm prior may be as sure as it likes', () => {
    expect(fitLine([0, 0.1], yes([1, 1]), firm).reached).toBe(true);
  });

  test('a single odd outcome among many is a top', () => {
    const x = Array.from({ length: 40 }, (_, i) => i);
    expect(fitLine(x, yes(x.map((value) => (value > 20 || value === 3 ? 1 : 0)))).reached).toBe(true);
  });

  test('from a start where chances are nothing or all to the last digit it comes back', () => {
    const wide = { mean: [0], sd: [1e6] };
    const odds = linearOdds([[1], [1], [1]], yes([0, 1, 1]));
    for (const start of [800, -800]) {
      const { numbers, reached } = fitLogistic(odds, wide, [start]);
      expect(reached).toBe(true);
      // Of 2 in 3 the log odds are log 2, by hand.
      within(numbers[0]!, Math.log(2), 1e-6);
    }
  });

  test('weights count as so many trials', () => {
    const twice = fitLine([0, 0, 1, 1, 1, 1], yes([0, 1, 0, 1, 1, 1]));
    const weighed = fitLine(
      [0, 0, 1, 1],
      [{ happened: false }, { happened: true }, { happened: false }, { happened: true, weight: 3 }],
    );
    within(weighed.numbers[0]!, twice.numbers[0]!, 1e-9);
    within(weighed.numbers[1]!, twice.numbers[1]!, 1e-9);
    // Of 1 in 2 and 3 in 4 the log odds are 0 and log 3, by hand.
    within(twice.numbers[0]!, 0, 1e-9);
    within(twice.numbers[1]!, Math.log(3), 1e-9);
  });
});
