/** Two questions put to outcomes: at which clearance do rubs become unlikely, and how much does new cord give? */
import type { Odds, Prior, Trial } from '../math/logistic.ts';
import { learning } from '../numbers/learning-numbers.ts';
import { defaultModel, type Model } from '../numbers/numbers.ts';
import { alikeKey } from './alike.ts';
import type { Evidence, Known } from './evidence.ts';

/** A question with what is thought of it before any outcome; the number looked for comes first. */
export interface Learning {
  readonly key: 'required-clearance' | 'stretch';
  readonly prior: Prior;
  readonly odds: Odds;
  /** For each trial, the place of its outcome in the evidence. */
  readonly of: readonly number[];
  /** For each trial, what is the same for like cinches. */
  readonly alike: readonly string[];
}

/** Chance that trouble which is going to come has come after so many days: the same share of what is left comes every day. */
export const seenAfter = (days: number, average: number): number => 1 - Math.exp(-days / average);

/**
 * Log odds, where what they hang on is only known with a spread: averaged over that spread they are as many times smaller
 * (MacKay 1992, Neural Computation 4:720, the approximation with pi/8; within 0.02 of the chance).
 * @returns the factor, and how it changes with the logarithm of the softness
 */
function dulled(sd: number, softness: number): { factor: number; turn: number } {
  const more = (Math.PI / 8) * (sd / softness) ** 2;
  const factor = 1 / Math.sqrt(1 + more);
  return { factor, turn: (factor * more) / (1 + more) };
}

/** Log odds of the chance of a rub at which the clearance is enough. */
const enough = Math.log(learning('rub-chance') / (1 - learning('rub-chance')));

/**
 * Rubs by clearance c (over k): log odds = (required - c) / softness + log odds at the required clearance, dulled by the spread of c.
 * Numbers: the required clearance, and the logarithm of the softness.
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

/** Log odds of a rub at a clearance that is known with a spread; writes its gradient by both numbers. */
export function rubOdds(
  { value, sd }: Known,
  { required, logSoftness }: RubCurve,
  gradient: number[],
): number {
  const softness = Math.exp(logSoftness);
  const { factor, turn } = dulled(sd, softness);
  const short = (required - value) / softness;
  const plain = short + enough;
  gradient[0] = factor / softness;
  gradient[1] = turn * plain - factor * short;
  return factor * plain;
}

/**
 * Complaints by latigo run r = slack - give/2: too long where r is little, too short where it is much; half complain at the runs that
 * are refused. Two trials an outcome. The number: the give of new cord.
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
        const { factor } = dulled(slack.sd, softness);
        const run = slack.value - give / 2;
        const tooLong = i % 2 === 0;
        gradient[0] = ((tooLong ? 0.5 : -0.5) * factor) / softness;
        const over = tooLong ? model['run-least'] - run : run - model['run-most'];
        return (factor * over) / softness;
      },
    },
  };
}

const isAboutLength = (result: Evidence['result']): boolean =>
  result === 'good' || result === 'too-long' || result === 'too-short';
