/** Laws of learning: honest intervals, small steps on little evidence. */
import { describe, expect, test } from 'vitest';
import { fitLogistic } from '../../src/math/logistic.ts';
import { seededRandom } from '../../src/math/random.ts';
import type { Evidence } from '../../src/learn/evidence.ts';
import { clearanceLearning, giveLearning, seenAfter } from '../../src/learn/models.ts';
import { binsOf } from '../../src/learn/calibration.ts';
import { refit } from '../../src/learn/refit.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { cases } from '../support/cases.ts';
import { many, one, outcomesOf, type Truth } from '../support/outcome-cases.ts';
import { within } from '../support/within.ts';

/** The shares below are off by 3 in 100 at the gate, one standard error. */
const shops = cases(100, 200);

/** Share of shops with 200 outcomes whose 90 % interval holds the truth. */
function coverage(truthOf: (seed: number) => Truth): { clearance: number; give: number } {
  let [clearance, give] = [0, 0];
  for (let seed = 1; seed <= shops; seed++) {
    const truth = truthOf(seed);
    const evidence = outcomesOf(200, seed, truth);
    const holds = (asked: ReturnType<typeof giveLearning>, value: number): number => {
      const { numbers, covariance } = fitLogistic(asked.odds, asked.prior);
      return Math.abs(numbers[0]! - value) <= 1.6449 * Math.sqrt(covariance![0]![0]!) ? 1 : 0;
    };
    clearance += holds(clearanceLearning(evidence), truth.required) / shops;
    give += holds(giveLearning(evidence, defaultModel), truth.give) / shops;
  }
  return { clearance, give };
}

describe('the 90 % interval holds the truth', () => {
  test('of a shop whose cinches rub below 1.5 in', () => {
    const found = coverage(() => ({ required: 1.5, softness: 0.15, give: 1.2 }));
    expect(found.clearance).toBeGreaterThanOrEqual(0.85);
    expect(found.clearance).toBeLessThanOrEqual(0.95);
  });
  test('of shops that differ as the defaults allow', () => {
    const found = coverage((seed) => {
      const random = seededRandom(seed, 99);
      return {
        required: 1.25 + 0.2 * random.normal(),
        softness: Math.exp(Math.log(0.15) + 0.5 * random.normal()),
        give: 1 + 0.5 * random.normal(),
      };
    });
    for (const share of [found.clearance, found.give]) {
      expect(share).toBeGreaterThanOrEqual(0.85);
      expect(share).toBeLessThanOrEqual(0.95);
    }
  });
  test('more often of a shop like the defaults', () => {
    expect(coverage(() => ({ required: 1.25, softness: 0.15, give: 1 })).clearance).toBeGreaterThan(0.95);
  });
});

const required = (evidence: readonly Evidence[]) => refit(clearanceLearning(evidence));
/** Bins of `required` without refitting for each outcome. */
function fittedBins(evidence: readonly Evidence[]) {
  const asked = clearanceLearning(evidence);
  return binsOf(asked, asked.prior.mean, fitLogistic(asked.odds, asked.prior).numbers);
}
const width = ({ after }: ReturnType<typeof required>): number => after.high - after.low;

test('nothing learned leaves the default as it is, and is not recommended', () => {
  const { after, before, settled, recommended, outcomes } = required([]);
  within(after.value, before.value, 1e-9);
  within(after.high, before.high, 1e-4);
  expect([settled < 1e-6, recommended, outcomes]).toEqual([true, false, 0]);
});

/** A rub among three is a surprise; the number still moves less than its spread. */
test('few outcomes move little, and are not recommended', () => {
  const surprised = required([one('elbow-rub', 1.5), one('good', 1.6), one('good', 1.4)]);
  within(surprised.after.value, 1.25, 0.2);
  const calm = required([one('good', 1.5), one('good', 1.6), one('good', 1.4)]);
  within(calm.after.value, 1.25, 0.06);
  expect([surprised.recommended, calm.recommended]).toEqual([false, false]);
});

test('a rub at more clearance asks for more, a good one at less for less', () => {
  const base = outcomesOf(40, 3, { required: 1.3, softness: 0.15, give: 1 });
  const { value } = required(base).after;
  expect(required([...base, one('elbow-rub', 1.6)]).after.value).toBeGreaterThan(value);
  expect(required([...base, one('good', 1.1)]).after.value).toBeLessThan(value);
});

test('contradictory outcomes leave a wider interval than as many that agree', () => {
  const agreeing = required([...many(8, one('elbow-rub', 1)), ...many(8, one('good', 1.7))]);
  const contrary = required([...many(8, one('elbow-rub', 1.7)), ...many(8, one('good', 1))]);
  expect(width(contrary)).toBeGreaterThan(1.2 * width(agreeing));
  expect(contrary.recommended && contrary.settled > agreeing.settled).toBe(false);
});

test('a good one after two days says less than one after two months', () => {
  const short = required(many(20, one('good', 1.2, 2)));
  const long = required(many(20, one('good', 1.2, 60)));
  expect(long.after.value).toBeLessThan(short.after.value - 0.03);
  expect(short.strength).toBeLessThan(0.2 * long.strength);
  within(seenAfter(2, 14), 1 - Math.exp(-1 / 7), 1e-12);
});

test('the order of outcomes changes nothing', () => {
  const evidence = outcomesOf(60, 4, { required: 1.4, softness: 0.15, give: 1.3 });
  const [a, b] = [required(evidence), required([...evidence].reverse())];
  within(b.after.value, a.after.value, 1e-7);
  within(b.heldOut.better, a.heldOut.better, 1e-5);
});

test('only what predicts better is recommended', () => {
  let [far, near] = [0, 0];
  const tried = cases(4, 10);
  for (let seed = 1; seed <= tried; seed++) {
    const of = (truth: number) =>
      required(outcomesOf(cases(70, 200), seed, { required: truth, softness: 0.15, give: 1 })).recommended;
    if (of(1.6)) far++;
    if (of(1.25)) near++;
  }
  expect(far).toBeGreaterThanOrEqual(0.9 * tried);
  expect(near).toBeLessThanOrEqual(0.3 * tried);
}, 60_000);

describe('expected and come', () => {
  /** With the defaults as the truth, what they expect must come. */
  test('by the true numbers as many are expected as come, and never more than there are', () => {
    let [expected, came] = [0, 0];
    for (let seed = 1; seed <= cases(300, 1500); seed++) {
      const asked = clearanceLearning(outcomesOf(200, seed, { required: 1.25, softness: 0.15, give: 1 }));
      for (const bin of binsOf(asked, asked.prior.mean, asked.prior.mean)) {
        expect(bin.before).toBeLessThanOrEqual(1);
        expected += bin.count * bin.before;
        came += bin.count * bin.came;
      }
    }
    // Over eight thousand rubs: three standard errors are 3 %.
    expect(came).toBeGreaterThan(7500);
    expect(expected / came).toBeGreaterThan(0.97);
    expect(expected / came).toBeLessThan(1.03);
  });
  test('the bins are those of the whole refit', () => {
    const evidence = outcomesOf(60, 1, { required: 1.25, softness: 0.15, give: 1 });
    expect(fittedBins(evidence)).toEqual(required(evidence).bins);
  });
  test('where all rub, all are expected to rub, though a complaint ends the days', () => {
    const evidence = many(12, one('elbow-rub', 0.2, 4));
    const { bins } = required(evidence);
    expect(bins).toHaveLength(1);
    within(bins[0]!.after * 12, 12, 0.2);
  });
  test('an outcome is counted once, though a length can be wrong two ways', () => {
    const evidence = outcomesOf(100, 5, { required: 1.25, softness: 0.15, give: 1 });
    const told = evidence.filter(({ result }) => ['good', 'too-long', 'too-short'].includes(result));
    const { bins, outcomes } = refit(giveLearning(evidence, defaultModel));
    expect(bins.reduce((sum, { count }) => sum + count, 0)).toBe(told.length);
    expect(outcomes).toBe(told.length);
  });
});

test('outcomes as the defaults expect them fit', () => {
  expect(required(outcomesOf(cases(60, 200), 2, { required: 1.25, softness: 0.15, give: 1 })).misfit).toBe(
    false,
  );
});
