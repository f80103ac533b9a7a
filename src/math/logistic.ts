/** Logistic regression with a normal prior, for outcomes that may still come. */
import { climb, inverseOf, type Slope } from './newton.ts';

export interface Trial {
  readonly happened: boolean;
  /** 1 by default. */
  readonly weight?: number;
  /** Chance that it, if any, has shown by now; 1 by default. */
  readonly seen?: number;
}

export interface Odds {
  readonly trials: readonly Trial[];
  /** Log odds of trial i; writes their gradient. */
  readonly at: (i: number, numbers: readonly number[], gradient: number[]) => number;
}

export interface Prior {
  readonly mean: readonly number[];
  readonly sd: readonly number[];
}

export interface Fit {
  readonly numbers: readonly number[];
  /** Inverse of the observed information (Laplace); undefined where that is flat. */
  readonly covariance: readonly (readonly number[])[] | undefined;
  /** False when neither data nor prior fix a number. */
  readonly reached: boolean;
}

/** Logistic function without overflow. */
export const chanceOf = (logOdds: number): number =>
  logOdds >= 0 ? 1 / (1 + Math.exp(-logOdds)) : Math.exp(logOdds) / (1 + Math.exp(logOdds));

/** log(1 + exp(x)) without overflow. */
const softplus = (x: number): number => (x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x)));

/** Without the constant log(seen) when it happened. */
export function logChance({ happened, seen = 1 }: Trial, logOdds: number): number {
  if (happened) return -softplus(-logOdds);
  return seen === 1 ? -softplus(logOdds) : Math.log1p(-seen * chanceOf(logOdds));
}

/** The likeliest numbers given prior and trials. */
export function fitLogistic(odds: Odds, prior: Prior, start = prior.mean): Fit {
  const slopeAt = (at: readonly number[]): Slope => slopeOf(odds, prior, at);
  const { at, reached } = climb(slopeAt, start);
  return { numbers: at, covariance: inverseOf(observed(slopeAt, at)), reached };
}

/** Log posterior, gradient and expected information, which is positive. */
function slopeOf(odds: Odds, prior: Prior, at: readonly number[]): Slope {
  const size = at.length;
  const precision = prior.sd.map((sd) => sd ** -2);
  const off = at.map((number, j) => number - (prior.mean[j] ?? 0));
  let value = -off.reduce((sum, each, j) => sum + ((precision[j] ?? 0) * each * each) / 2, 0);
  const gradient = off.map((each, j) => -(precision[j] ?? 0) * each);
  const bend = precision.map((each, j) => at.map((_, k) => (j === k ? each : 0)));
  const own = new Array<number>(size).fill(0);
  odds.trials.forEach((trial, i) => {
    const logOdds = odds.at(i, at, own);
    const { weight = 1, seen = 1 } = trial;
    const [p, other] = [chanceOf(logOdds), chanceOf(-logOdds)];
    // 1 - seen p, without losing digits near zero
    const notSeen = other + (1 - seen) * p;
    const never = notSeen === 0 ? 1 : other / notSeen;
    const rise = weight * (trial.happened ? other : -seen * p * never);
    const info = weight * seen * p * other * never;
    value += weight * logChance(trial, logOdds);
    for (let j = 0; j < size; j++) {
      gradient[j] = (gradient[j] ?? 0) + rise * (own[j] ?? 0);
      const row = bend[j] as number[];
      for (let k = 0; k < size; k++) row[k] = (row[k] ?? 0) + info * (own[j] ?? 0) * (own[k] ?? 0);
    }
  });
  return { value, gradient, bend };
}

/** Minus the second derivatives, by central differences. */
function observed(slopeAt: (at: readonly number[]) => Slope, at: readonly number[]): number[][] {
  const columns = at.map((number, j) => {
    const step = 1e-5 * Math.max(1e-3, Math.abs(number));
    const moved = (by: number): readonly number[] =>
      slopeAt(at.map((each, k) => (k === j ? each + by : each))).gradient;
    const [up, down] = [moved(step), moved(-step)];
    return at.map((_, k) => ((down[k] ?? 0) - (up[k] ?? 0)) / (2 * step));
  });
  return columns.map((column, j) => column.map((value, k) => (value + (columns[k]?.[j] ?? 0)) / 2));
}
