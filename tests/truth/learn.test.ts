/** What past cinches teach: chances, bins and intervals by hand or the slow way, and what is recommended. */
import { describe, expect, test } from 'vitest';
import { fitLogistic, logChance } from '../../src/math/logistic.ts';
import { contraries } from '../../src/learn/alike.ts';
import { binsOf, isMisfit, tailOf, wholeDays, wilson, type Bin } from '../../src/learn/calibration.ts';
import { evidenceOf, type Evidence } from '../../src/learn/evidence.ts';
import { learnFrom } from '../../src/learn/learn.ts';
import { clearanceLearning, giveLearning, rubOdds } from '../../src/learn/models.ts';
import { refit } from '../../src/learn/refit.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { factsOf } from '../../src/horse/facts.ts';
import { defaultModel, modelNumbers } from '../../src/numbers/numbers.ts';
import { many, one } from '../support/outcome-cases.ts';
import { orderOf, plainBuckle } from '../support/orders.ts';
import { within } from '../support/within.ts';

const required = (evidence: readonly Evidence[]) => refit(clearanceLearning(evidence));

describe('where a clearance is known with a spread', () => {
  /** The chance averaged over the spread in many small steps. */
  function byMany(value: number, sd: number, softness: number): number {
    let [sum, weights] = [0, 0];
    for (let z = -8; z <= 8; z += 0.002) {
      const weight = Math.exp((-z * z) / 2);
      sum += weight / (1 + Math.exp((value + sd * z - 1.25) / softness - Math.log(1 / 9)));
      weights += weight;
    }
    return sum / weights;
  }
  // By the usual softness, and by one that is two of its own spreads steeper.
  test.each([
    [0.15, 1e-5],
    [0.055, 0.004],
  ])('the chance is the average over it: softness %f', (softness, tolerance) => {
    for (const value of [0.6, 1.1, 1.4, 1.7, 2.4])
      for (const sd of [0, 0.2, 0.3, 0.5]) {
        const logOdds = rubOdds({ value, sd }, { required: 1.25, logSoftness: Math.log(softness) }, []);
        within(1 / (1 + Math.exp(-logOdds)), byMany(value, sd, softness), tolerance);
      }
  });
  test('far out it stays a number', () => {
    const gradient: number[] = [];
    const logOdds = rubOdds(
      { value: 40, sd: 0.3 },
      { required: 1.25, logSoftness: Math.log(0.001) },
      gradient,
    );
    expect([logOdds, ...gradient].every(Number.isFinite)).toBe(true);
    expect(logOdds).toBeLessThan(-100);
  });
});

test('gradients are those of the log odds', () => {
  const known = { value: 1.4, sd: 0.35 };
  const [a, b] = [1.3, Math.log(0.2)];
  const at = (required_: number, logSoftness: number): number =>
    rubOdds(known, { required: required_, logSoftness }, []);
  const gradient: number[] = [];
  rubOdds(known, { required: a, logSoftness: b }, gradient);
  within(gradient[0]!, (at(a + 1e-6, b) - at(a - 1e-6, b)) / 2e-6, 1e-6);
  within(gradient[1]!, (at(a, b + 1e-6) - at(a, b - 1e-6)) / 2e-6, 1e-6);
});

/** 8 of 20 at 95 %: 0.219 to 0.613 (Wilson), recomputed from the formula of the score test by halving. */
test("Wilson's interval ends where the score test does", () => {
  const { low, high } = wilson(0.4, 20);
  const z = (p: number): number => (0.4 - p) / Math.sqrt((p * (1 - p)) / 20);
  within(z(low), 1.6449, 1e-3);
  within(z(high), -1.6449, 1e-3);
});

/** By hand: of 0.2 good, 0.4 rub, 0.6 good, 0.8 good, 0.9 rub: the last as for ever, the other the mean of 0.6, 0.8 and 1. */
test('days of those that were complained of are those of the ones that lasted longer', () => {
  const seen = [0.2, 0.4, 0.6, 0.8, 0.9].map((each, i) => ({ seen: each, happened: i === 1 || i === 4 }));
  const shares = wholeDays(seen);
  [0.2, 0.8, 0.6, 0.8, 1].forEach((share, i) => {
    within(shares[i]!, share, 1e-12);
  });
});
/** Binomial table, 10 at 0.5: at most 2 come with 56/1024; of 0.1 and 0.2 both with 0.02. */
test('tails are those of the binomial', () => {
  within(
    tailOf(
      Array.from({ length: 10 }, () => 0.5),
      2,
    ),
    56 / 1024,
    1e-12,
  );
  within(tailOf([0.1, 0.2], 2), 0.02, 1e-12);
});

describe('reports that contradict each other', () => {
  const both = [...many(8, one('good', 1.45)), ...many(8, one('elbow-rub', 1.45))];
  test('like cinches that came out both ways are told, and one kind alone recommends nothing', () => {
    const [found] = contraries(both);
    expect(found?.counts.get('good')).toBe(8);
    expect(required(both).recommended).toBe(false);
    expect(required(both).settled).toBeGreaterThan(0.3);
    expect(contraries([one('too-long', 1.4), one('too-short', 1.4)])).toHaveLength(1);
  });
  test('a rub among many good, good ones of two days, and unlike cinches are no contradiction', () => {
    expect(contraries([...many(20, one('good', 1.4)), one('elbow-rub', 1.4)])).toEqual([]);
    expect(contraries([...many(8, one('good', 1.4, 2)), ...many(8, one('elbow-rub', 1.4))])).toEqual([]);
    expect(contraries([...many(8, one('good', 1.6)), ...many(8, one('elbow-rub', 1.2))])).toEqual([]);
  });
  // One in four of each and two at least: a choice.
  test('two of three and a quarter are enough, a good one from the days a rub takes to show', () => {
    const mixed = (good: number, rubs: number, days = 14) =>
      contraries([...many(good, one('good', 1.4, days)), ...many(rubs, one('buckle-rub', 1.4))]).length;
    expect([mixed(6, 2), mixed(2, 6), mixed(7, 2), mixed(2, 7), mixed(1, 1), mixed(2, 2, 13)]).toEqual([
      ...[1, 1, 0, 0, 0, 0],
    ]);
    const [found] = contraries([one('too-long', 1.4), one('too-short', 1.4), one('slipped', 1.4)]);
    expect([...found!.counts]).toEqual([
      ['too-long', 1],
      ['too-short', 1],
      ['slipped', 1],
    ]);
    expect(found!.clearance).toBe(1.4);
    expect(contraries(many(3, one('too-long', 1.4)))).toEqual([]);
  });
});

// One in ten rubs at what is required, by definition; the odds change by a factor of e for each 0.15 in.
test('the picture shows the chance of a rub from half an inch to two and a half', () => {
  const { curve, atFloor, clearance } = learnFrom([one('good', 1.2), one('elbow-rub', 1.1)], defaultShop);
  expect(curve).toHaveLength(41);
  curve.forEach(({ clearance: at, before, after }, i) => {
    within(at, 0.5 + 0.05 * i, 1e-12);
    within(Math.log(before / (1 - before)), (1.25 - at) / 0.15 - Math.log(9), 1e-9);
    const [required, softness] = [clearance.numbers[0]!, Math.exp(clearance.numbers[1]!)];
    within(Math.log(after / (1 - after)), (required - at) / softness - Math.log(9), 1e-9);
  });
  // The least is 1 in, and stays.
  const { before, after } = curve[10]!;
  within(atFloor.before, before, 1e-12);
  within(atFloor.after, after, 1e-12);
  within(atFloor.moved, after, 1e-12);
});

// Both sides of each bin are looked at, so that of three bins one misfits below a chance of 0.01 / 6.
test('the more bins, the less one that is off by chance counts', () => {
  const misfit = (...tails: number[]) => isMisfit(tails.map((tail) => ({ tail }) as Bin));
  expect([misfit(0.004), misfit(0.002, 1, 1), misfit(1, 0.0016, 1)]).toEqual([true, false, true]);
});

describe('a rub by the buckle', () => {
  test('counts like one at the elbow', () => {
    expect(required([one('buckle-rub', 1.5)])).toEqual(required([one('elbow-rub', 1.5)]));
  });

  test('is taken at the frame, by its distance over its own floor; all else at the cords', () => {
    const spec = { style: 'straight', strands: 21, buckle: plainBuckle, layers: 1, length: 26 } as const;
    const order = orderOf({ horse: { heartGirth: 60 } });
    const facts = factsOf(order, defaultModel);
    const { frameClearance, cordClearance } = lay(spec, sideOf(facts))!;
    const shown = (result: Evidence['result']) =>
      evidenceOf({ order, spec, days: 9, result }, { ...defaultModel, 'floor-clearance': 1.2 })!;
    const [rub, good] = [shown('buckle-rub'), shown('good')];
    // By default 1 in over k is the least at the cords, whatever the shop has, and nothing at the frame.
    within(rub.clearance.value, frameClearance.inches / (60 / 72) + 1, 1e-12);
    within(rub.clearance.sd, frameClearance.sd / (60 / 72), 1e-12);
    within(good.clearance.value, cordClearance.inches / (60 / 72), 1e-12);
    within(good.slack.value, (2 * facts.ring.station.value - 26) / 2, 1e-12);
  });
});

describe('a number is recommended', () => {
  /** Like outcomes on a row of clearances, so that none is like another. */
  const row = (count: number, result: Evidence['result'], from: number): Evidence[] =>
    Array.from({ length: count }, (_, i) => ({
      ...one(result, from + i / 200),
      clearance: { value: from + i / 200, sd: 0.1 },
    }));
  const rows = (goods: number, rubs: number, at: number) =>
    required([...row(goods, 'good', 0.75), ...row(rubs, 'elbow-rub', at)]);

  test.each([
    ['that predicts better and fits', [36, 4, 1.1], 'lower', false, true],
    ['that asks for more where rubs come where none should', [33, 7, 1.6], 'higher', true, true],
    ['not one that asks for less there', [35, 5, 1.1], 'lower', true, false],
  ] as const)('%s', (...row) => {
    const [, drawn, moves, odd, good] = row;
    const { value, misfit, recommended, heldOut, settled } = rows(drawn[0], drawn[1], drawn[2]);
    expect(value < 1.25 ? 'lower' : 'higher').toBe(moves);
    expect(heldOut.better).toBeGreaterThan(heldOut.error);
    expect(settled).toBeGreaterThan(0.2);
    expect([misfit, recommended]).toEqual([odd, good]);
  });

  test('not for the give, where some are too short whose run was short', () => {
    const long = Array.from({ length: 30 }, (_, i) => ({
      ...one('too-long', 1.4),
      slack: { value: 4.2 + i / 100, sd: 0.3 },
    }));
    const rest = Array.from({ length: 30 }, (_, i) => ({
      ...one(i % 6 === 0 ? 'too-short' : 'good', 1.4),
      slack: { value: 8 + i / 90, sd: 0.3 },
    }));
    const { value, misfit, recommended, heldOut } = refit(giveLearning([...long, ...rest], defaultModel));
    expect(value).toBe(modelNumbers.stretch.max);
    expect(heldOut.better).toBeGreaterThan(heldOut.error);
    expect([misfit, recommended]).toEqual([true, false]);
  });

  test('not where lengths are found too long and too short alike, whatever the give', () => {
    const found = refit(
      giveLearning([...many(6, one('too-long', 1.4)), ...many(6, one('too-short', 1.4))], defaultModel),
    );
    expect([isMisfit(found.bins), found.misfit, found.recommended]).toEqual([true, true, false]);
  });
});

// Stone 1974, J. R. Stat. Soc. B 36:111: each is predicted from the others; like ones are left out together and score as one.
test('what was left out is predicted from the rest, like cinches together', () => {
  const evidence = [
    one('good', 1.2, 20),
    one('elbow-rub', 1.1, 9),
    one('good', 1.2, 90),
    one('good', 1.5, 40),
  ];
  const { odds, prior } = clearanceLearning(evidence);
  const scores = [[0, 2], [1], [3]].map((left) => {
    const kept = [0, 1, 2, 3].filter((i) => !left.includes(i));
    const { numbers } = fitLogistic(
      {
        trials: kept.map((i) => odds.trials[i]!),
        at: (i, own, gradient) => odds.at(kept[i]!, own, gradient),
      },
      prior,
    );
    const score = (own: readonly number[]): number =>
      left.reduce((sum, i) => sum + logChance(odds.trials[i]!, odds.at(i, own, [])), 0);
    return { defaults: score(prior.mean), refit: score(numbers) };
  });
  const gains = scores.map((score) => score.refit - score.defaults);
  const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
  const mean = sum(gains) / 3;
  // The error of a sum of three: root 3 times their own spread.
  const error = Math.sqrt(3 * (sum(gains.map((gain) => (gain - mean) ** 2)) / 2));
  const { heldOut, strength, complaints, outcomes } = required(evidence);
  within(heldOut.defaults, sum(scores.map(({ defaults }) => defaults)), 1e-9);
  within(heldOut.refit, sum(scores.map((score) => score.refit)), 1e-6);
  within(heldOut.better, sum(gains), 1e-6);
  within(heldOut.error, error, 1e-6);
  expect([complaints, outcomes]).toEqual([1, 4]);
  // A rub counts whole, a good one by the days it had: 14 until a rub shows.
  within(strength, 1 + sum([20, 90, 40].map((days) => 1 - Math.exp(-days / 14))), 1e-12);
  expect(required([one('good', 1.2)]).heldOut.error).toBe(Infinity);
});

test('bins hold five outcomes at least, six bins at most, and like chances stay together', () => {
  const counts = (evidence: readonly Evidence[]) => {
    const asked = clearanceLearning(evidence);
    return binsOf(asked, asked.prior.mean, asked.prior.mean).map(({ count }) => count);
  };
  const spread = (count: number) => Array.from({ length: count }, (_, i) => one('good', 1 + i / 50));
  expect(counts([])).toEqual([]);
  expect(counts(spread(4))).toEqual([4]);
  expect(counts(spread(9))).toEqual([9]);
  expect(counts(spread(10))).toEqual([5, 5]);
  expect(counts(spread(61))).toEqual([10, 10, 11, 10, 10, 10]);
  expect(counts([...spread(6), ...many(6, one('good', 1.3))])).toEqual([6, 6]);
  expect(counts([...spread(3), ...many(9, one('good', 1.3))])).toEqual([9, 3]);
});
