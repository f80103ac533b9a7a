/** Fails unless a number is close enough to the expected one. */

function miss(actual: number, expected: number, allowed: number): void {
  // Also fails for NaN.
  if (Math.abs(actual - expected) <= allowed || (actual === expected && allowed >= 0)) return;
  throw new Error(
    `expected ${expected} within ${allowed}, found ${actual}: off by ${Math.abs(actual - expected)}`,
  );
}

/** Absolute, in their unit. @throws Error with all three numbers and the difference */
export function within(actual: number, expected: number, tolerance: number): void {
  miss(actual, expected, tolerance);
}

/** Relative to `expected` (1e-3: a thousandth); 0 must be exact. @throws Error with the numbers and the difference */
export function withinRelative(actual: number, expected: number, tolerance: number): void {
  miss(actual, expected, tolerance * Math.abs(expected));
}
