/** Fails unless a number is close enough. */

function miss(actual: number, expected: number, allowed: number): void {
  // Also fails for NaN.
  if (Math.abs(actual - expected) <= allowed || (actual === expected && allowed >= 0)) return;
  throw new Error(
    `expected ${expected} within ${allowed}, found ${actual}: off by ${Math.abs(actual - expected)}`,
  );
}

/** Absolute tolerance, in the numbers' unit. */
export function within(actual: number, expected: number, tolerance: number): void {
  miss(actual, expected, tolerance);
}

/** Relative tolerance (1e-3: a thousandth); 0 must be exact. */
export function withinRelative(actual: number, expected: number, tolerance: number): void {
  miss(actual, expected, tolerance * Math.abs(expected));
}
