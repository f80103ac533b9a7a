/** The worth of knowing: what it gains, on average, to learn something before one of some choices is made. */

/** One answer that may come: how likely it is, and what each choice is expected to gain once it has come. */
export interface Answer {
  /** 0 to 1; the chances of all answers add up to 1. */
  readonly chance: number;
  readonly gains: readonly number[];
}

const expected = (answers: readonly Answer[], choice: number): number =>
  answers.reduce((sum, { chance, gains }) => sum + chance * (gains[choice] ?? 0), 0);

/** The choice that gains most when nothing is asked; of several the first. */
export function bestUnasked(answers: readonly Answer[]): number {
  const count = answers[0]?.gains.length ?? 0;
  let best = 0;
  for (let choice = 1; choice < count; choice++)
    if (expected(answers, choice) > expected(answers, best)) best = choice;
  return best;
}

/**
 * Expected value of sample information (Raiffa & Schlaifer 1961): what choosing after the answer gains over choosing before it. With
 * states of the world as answers it is that of perfect information. Never negative, since an answer may be ignored.
 * @param unasked the choice that is made when nothing is asked; by default the one that gains most
 */
export function worthOf(answers: readonly Answer[], unasked = bestUnasked(answers)): number {
  return answers.reduce((sum, { chance, gains }) => sum + chance * gainOver(gains, unasked), 0);
}

/** What the best choice gains over this one. */
export const gainOver = (gains: readonly number[], choice: number): number =>
  Math.max(...gains) - (gains[choice] ?? 0);

/**
 * Answers of a test by Bayes' rule.
 * @param states what may be true, with its chance and what each choice gains then
 * @param likelihoods for each answer, its chance in each of the states
 */
export function answersOf(states: readonly Answer[], likelihoods: readonly (readonly number[])[]): Answer[] {
  return likelihoods.map((given) => {
    const joint = states.map(({ chance }, i) => chance * (given[i] ?? 0));
    const chance = joint.reduce((sum, share) => sum + share, 0);
    const gains = (states[0]?.gains ?? []).map((_, choice) =>
      chance === 0
        ? 0
        : states.reduce((sum, s, i) => sum + (joint[i] ?? 0) * (s.gains[choice] ?? 0), 0) / chance,
    );
    return { chance, gains };
  });
}

/** A mean and its own standard error. */
export interface Mean {
  readonly mean: number;
  readonly error: number;
}

/**
 * Mean of stratified draws, two a stratum, all strata equally likely. The two of a stratum are independent, so a
 * quarter of their squared difference estimates the variance of their mean; the strata's variances add up.
 * @param values both draws of the first stratum, then both of the second, and so on
 */
export function pairedMean(values: readonly number[]): Mean {
  const strata = values.length / 2;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i + 1 < values.length; i += 2) {
    const [a = 0, b = 0] = [values[i], values[i + 1]];
    sum += a + b;
    squares += (a - b) ** 2;
  }
  return { mean: sum / values.length, error: Math.sqrt(squares) / (2 * strata) };
}

/** Weighed mean of answers that were all looked at: nothing was drawn, so there is no error. */
export const fullMean = (chances: readonly number[], values: readonly number[]): Mean => ({
  mean: chances.reduce((sum, chance, i) => sum + chance * (values[i] ?? 0), 0),
  error: 0,
});
