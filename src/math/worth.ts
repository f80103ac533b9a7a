/** What learning something gains before one of some choices is made, averaged over what may be learned. */

/** What the best choice gains over this one. */
export const gainOver = (gains: readonly number[], choice: number): number =>
  Math.max(...gains) - (gains[choice] ?? 0);

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
  let [sum, squares] = [0, 0];
  for (let i = 0; i + 1 < values.length; i += 2) {
    const [a = 0, b = 0] = [values[i], values[i + 1]];
    sum += a + b;
    squares += (a - b) ** 2;
  }
  return { mean: sum / values.length, error: Math.sqrt(squares) / values.length };
}

/** Weighed mean of answers that were all looked at: nothing was drawn, so there is no error. */
export const fullMean = (chances: readonly number[], values: readonly number[]): Mean => ({
  mean: chances.reduce((sum, chance, i) => sum + chance * (values[i] ?? 0), 0),
  error: 0,
});
