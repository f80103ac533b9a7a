/** Sorts text the same way on every machine. */

/** Compares by code units, for `sort`. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
