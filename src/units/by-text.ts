/** An order of texts that is the same on every machine. */

/** Compares by code units, for `sort`; no language has a say. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
