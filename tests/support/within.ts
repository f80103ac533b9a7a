/** Says whether a number is as near to the expected one as it has to be. */

function miss(actual: number, expected: number, allowed: number): void {
  // Written so that a NaN anywhere fails.
  if (Math.abs(actual - expected) <= allowed || (actual === expected && allowed >= 0)) return;
  throw new Error(
    `expected ${expected} within ${allowed}, found ${actual}: off by ${Math.abs(actual - expected)}`,
  );
}

/**
 * Fails unless `actual` is at most `tolerance` away from `expected`, in their own unit.
 * @throws Error that names all three numbers and the difference
 */
export function within(actual: number, expected: number, tolerance: number): void {
  miss(actual, expected, tolerance);
}

/**
 * Fails unless `actual` is at most the part `tolerance` of `expected` away from it (1e-3: a thousandth).
 * An expected 0 must be met exactly.
 * @throws Error that names the numbers and the difference
 */
export function withinRelative(actual: number, expected: number, tolerance: number): void {
  miss(actual, expected, tolerance * Math.abs(expected));
}
