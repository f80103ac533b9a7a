/** What learning something is worth, averaged over what may be learned. */

/** What the best choice gains over this one. */
export const gainOver = (gains: readonly number[], choice: number): number =>
  Math.max(...gains) - (gains[choice] ?? 0);

/** `error` is the standard error. */
export interface Mean {
  readonly mean: number;
  readonly error: number;
}

/**
 * For equally likely strata of two draws each, in sequence: a quarter of a pair's squared difference
 * estimates its mean's variance.
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

/** No draws, so no error. */
export const fullMean = (chances: readonly number[], values: readonly number[]): Mean => ({
  mean: chances.reduce((sum, chance, i) => sum + chance * (values[i] ?? 0), 0),
  error: 0,
});
