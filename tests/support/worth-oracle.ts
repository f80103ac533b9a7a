/** The worth of an answer the slow way: every rule "when this is answered, choose that" is tried. */

/** A decision in numbers: chances of states, gain of each choice in each state, chance of each answer in each state. */
export interface Decision {
  readonly chances: readonly number[];
  /** By choice, then state. */
  readonly gains: readonly (readonly number[])[];
  /** By answer, then state. */
  readonly likelihoods: readonly (readonly number[])[];
}

/** Best expected gain over all rules from answers to choices, less the best of a single choice. No Bayes' rule is needed. */
export function worthByEveryRule({ chances, gains, likelihoods }: Decision): number {
  const answers = likelihoods.length;
  const choices = gains.length;
  let best = -Infinity;
  let bestPlain = -Infinity;
  for (let code = 0; code < choices ** answers; code++) {
    const rule = Array.from({ length: answers }, (_, a) => Math.floor(code / choices ** a) % choices);
    let total = 0;
    for (let s = 0; s < chances.length; s++)
      for (let a = 0; a < answers; a++) total += chances[s]! * likelihoods[a]![s]! * gains[rule[a]!]![s]!;
    best = Math.max(best, total);
    if (new Set(rule).size === 1) bestPlain = Math.max(bestPlain, total);
  }
  return best - bestPlain;
}
