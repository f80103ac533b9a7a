/** The two models to fit: rubs by clearance, length complaints by latigo run. */
import { chanceOf, type Odds, type Prior, type Trial } from '../math/logistic.ts';
import { learning } from '../numbers/learning-numbers.ts';
import { defaultModel, type Model } from '../numbers/numbers.ts';
import { alikeKey } from './alike.ts';
import type { Evidence, Known } from './evidence.ts';

/** The number sought comes first. */
export interface Learning {
  readonly key: 'required-clearance' | 'stretch';
  readonly prior: Prior;
  readonly odds: Odds;
  /** Index of each trial's outcome. */
  readonly of: readonly number[];
  /** The same for like cinches. */
  readonly alike: readonly string[];
}

/** Chance that trouble, if any, has shown by now. */
export const seenAfter = (days: number, average: number): number => 1 - Math.exp(-days / average);

interface Averaged {
  readonly logOdds: number;
  /** Derivatives. */
  readonly perMiddle: number;
  readonly perReach: number;
}

/** The normal curve in steps: five digits, or two at spreads over nine log odds. */
const bell = Array.from({ length: 29 }, (_, i) => {
  const z = 0.4 * (i - 14);
  return { z, weight: (0.4 * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI) };
});
/** Larger log odds overflow. */
const MOST = 600;

/** Log odds of the mean chance, when the log odds have sd `reach`. */
function averaged(middle: number, reach: number): Averaged {
  let [yes, no, slope, tilt] = [0, 0, 0, 0];
  for (const { z, weight } of bell) {
    const logOdds = Math.max(-MOST, Math.min(MOST, middle + reach * z));
    const p = chanceOf(logOdds);
    const q = chanceOf(-logOdds);
    yes += weight * p;
    no += weight * q;
    slope += weight * p * q;
    tilt += weight * p * q * z;
  }
  return { logOdds: Math.log(yes / no), perMiddle: slope / (yes * no), perReach: tilt / (yes * no) };
}

/** Log odds of a rub at the required clearance. */
const enough = Math.log(learning('rub-chance') / (1 - learning('rub-chance')));

/**
 * Log odds of a rub = (required - c) / softness + `enough`, for clearance c over k; fits required and log
 * softness.
 */
export function clearanceLearning(evidence: readonly Evidence[]): Learning {
  const used = evidence.flatMap(({ result }, i) => (isAboutElbow(result) ? [i] : []));
  const trials = used.map((i): Trial => {
    const { result, days } = evidence[i] as Evidence;
    return { happened: result !== 'good', seen: seenAfter(days, learning('days-to-rub')) };
  });
  return {
    key: 'required-clearance',
    of: used,
    alike: used.map((i) => alikeKey(evidence[i] as Evidence)),
    prior: {
      mean: [defaultModel['required-clearance'], Math.log(learning('softness'))],
      sd: [learning('required-sd'), learning('softness-sd')],
    },
    odds: {
      trials,
      at: (i, [required = 0, logSoftness = 0], gradient) =>
        rubOdds((evidence[used[i] ?? 0] as Evidence).clearance, { required, logSoftness }, gradient),
    },
  };
}

const isAboutElbow = (result: Evidence['result']): boolean =>
  result === 'good' || result === 'elbow-rub' || result === 'buckle-rub';

export interface RubCurve {
  readonly required: number;
  readonly logSoftness: number;
}

/** Also writes the gradient by both numbers. */
export function rubOdds(
  { value, sd }: Known,
  { required, logSoftness }: RubCurve,
  gradient: number[],
): number {
  const softness = Math.exp(logSoftness);
  const short = (required - value) / softness;
  const reach = sd / softness;
  const { logOdds, perMiddle, perReach } = averaged(short + enough, reach);
  gradient[0] = perMiddle / softness;
  gradient[1] = -perMiddle * short - perReach * reach;
  return logOdds;
}

/**
 * Fits the stretch. A small latigo run (slack - stretch/2) makes a cinch too long, a large one too short;
 * even odds at the runs ruled out.
 */
export function giveLearning(evidence: readonly Evidence[], model: Model): Learning {
  const used = evidence.flatMap(({ result }, i) => (isAboutLength(result) ? [i, i] : []));
  const trials = used.map((i, at): Trial => {
    const { result, days } = evidence[i] as Evidence;
    const complaint = at % 2 === 0 ? 'too-long' : 'too-short';
    return { happened: result === complaint, seen: seenAfter(days, learning('days-to-slack')) };
  });
  const softness = learning('run-softness');
  return {
    key: 'stretch',
    of: used,
    alike: used.map((i) => alikeKey(evidence[i] as Evidence)),
    prior: { mean: [defaultModel.stretch], sd: [learning('give-sd')] },
    odds: {
      trials,
      at: (i, [give = 0], gradient) => {
        const { slack } = evidence[used[i] ?? 0] as Evidence;
        const run = slack.value - give / 2;
        const tooLong = i % 2 === 0;
        const over = tooLong ? model['run-least'] - run : run - model['run-most'];
        const { logOdds, perMiddle } = averaged(over / softness, slack.sd / softness);
        gradient[0] = ((tooLong ? 0.5 : -0.5) * perMiddle) / softness;
        return logOdds;
      },
    },
  };
}

const isAboutLength = (result: Evidence['result']): boolean =>
  result === 'good' || result === 'too-long' || result === 'too-short';
