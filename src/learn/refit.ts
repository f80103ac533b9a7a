/** A number fitted again: before, after, and whether it predicts better. */
import { fitLogistic, logChance, type Odds } from '../math/logistic.ts';
import { normalInverse } from '../math/normal.ts';
import { learning } from '../numbers/learning-numbers.ts';
import { modelNumbers } from '../numbers/numbers.ts';
import { binsOf, isMisfit, type Bin } from './calibration.ts';
import type { Learning } from './models.ts';

export interface Range {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Log scores of outcomes left out; higher is better. */
export interface HeldOut {
  readonly defaults: number;
  readonly refit: number;
  /** Refit less defaults, and the standard error. */
  readonly better: number;
  readonly error: number;
}

export interface Refit {
  readonly key: Learning['key'];
  readonly before: Range;
  readonly after: Range;
  /** The one sought first. */
  readonly numbersBefore: readonly number[];
  readonly numbers: readonly number[];
  /** Outcomes that bear on it, and complaints among them. */
  readonly outcomes: number;
  readonly complaints: number;
  /** Outcomes weighted by their days in use, at most 1 each. */
  readonly strength: number;
  /** Share of the prior variance removed, 0 to 1. */
  readonly settled: number;
  readonly heldOut: HeldOut;
  readonly bins: readonly Bin[];
  /** What to write: in the shop file's range, to 0.01 in. */
  readonly value: number;
  /** Results are too far from expected. */
  readonly misfit: boolean;
  readonly recommended: boolean;
}

/** Fits one number. */
export function refit(asked: Learning): Refit {
  const { key, prior, odds, of } = asked;
  const fit = fitLogistic(odds, prior);
  const sdBefore = prior.sd[0] ?? 0;
  const sd = Math.sqrt(fit.covariance?.[0]?.[0] ?? sdBefore ** 2);
  const heldOut = heldOutOf(asked, fit.numbers);
  const outcomes = new Set(of).size;
  const happened = odds.trials.filter((trial) => trial.happened).length;
  const settled = Math.max(0, 1 - (sd / sdBefore) ** 2);
  const { min, max } = modelNumbers[key];
  const value = Math.round(100 * Math.min(max, Math.max(min, fit.numbers[0] ?? 0))) / 100;
  const bins = binsOf(asked, prior.mean, fit.numbers);
  const misfit = isMisfit(bins);
  return {
    key,
    before: rangeOf(prior.mean[0] ?? 0, sdBefore),
    after: rangeOf(fit.numbers[0] ?? 0, sd),
    numbersBefore: prior.mean,
    numbers: fit.numbers,
    outcomes,
    complaints: happened,
    strength: strengthOf(asked),
    settled,
    heldOut,
    bins,
    value,
    misfit,
    recommended:
      fit.reached &&
      settled >= learning('least-settled') &&
      heldOut.better > heldOut.error &&
      (!misfit || (key === 'required-clearance' && value > (prior.mean[0] ?? 0))),
  };
}

function rangeOf(value: number, sd: number): Range {
  const by = sd * normalInverse((1 + learning('interval')) / 2);
  return { value, low: value - by, high: value + by };
}

/** A complaint counts 1, whenever it came. */
function strengthOf({ odds, of }: Learning): number {
  const worth = new Map<number, number>();
  odds.trials.forEach(({ happened, seen = 1 }, i) => {
    const place = of[i] ?? 0;
    worth.set(place, Math.max(worth.get(place) ?? 0, happened ? 1 : seen));
  });
  return [...worth.values()].reduce((sum, each) => sum + each, 0);
}

const only = (odds: Odds, kept: readonly number[]): Odds => ({
  trials: kept.map((i) => odds.trials[i] ?? { happened: false, weight: 0 }),
  at: (i, numbers, gradient) => odds.at(kept[i] ?? 0, numbers, gradient),
});

/**
 * Predicts each outcome from the others (Stone 1974), in folds when there are many. Like cinches would
 * predict each other, so we leave them out together and count them once.
 */
function heldOutOf({ odds, prior, alike }: Learning, numbers: readonly number[]): HeldOut {
  const places = [...new Set(alike)];
  const folds = places.length <= learning('one-by-one') ? places.length : 50;
  const foldOf = new Map(places.map((place, i) => [place, i % Math.max(1, folds)]));
  const byLikes = new Map<string, { defaults: number; refit: number }>();
  const scratch = numbers.map(() => 0);
  for (let fold = 0; fold < folds; fold++) {
    const inFold = (i: number): boolean => foldOf.get(alike[i] ?? '') === fold;
    const all = odds.trials.map((_, i) => i);
    const without = fitLogistic(
      only(
        odds,
        all.filter((i) => !inFold(i)),
      ),
      prior,
      numbers,
    ).numbers;
    for (const i of all.filter(inFold)) {
      const trial = odds.trials[i];
      if (trial === undefined) continue;
      const sums = byLikes.get(alike[i] ?? '') ?? { defaults: 0, refit: 0 };
      sums.defaults += logChance(trial, odds.at(i, prior.mean, scratch));
      sums.refit += logChance(trial, odds.at(i, without, scratch));
      byLikes.set(alike[i] ?? '', sums);
    }
  }
  return summed([...byLikes.values()]);
}

function summed(scores: readonly { defaults: number; refit: number }[]): HeldOut {
  const sum = (of: (score: { defaults: number; refit: number }) => number): number =>
    scores.reduce((total, score) => total + of(score), 0);
  const better = sum((score) => score.refit - score.defaults);
  const mean = better / Math.max(1, scores.length);
  const squares = sum((score) => (score.refit - score.defaults - mean) ** 2);
  const error = scores.length < 2 ? Infinity : Math.sqrt((scores.length * squares) / (scores.length - 1));
  return { defaults: sum(({ defaults }) => defaults), refit: sum(({ refit: own }) => own), better, error };
}
