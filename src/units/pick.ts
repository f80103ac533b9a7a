/** Elements of lists that are known to be there. */

/**
 * Element `i` of a list.
 * @throws RangeError when there is none: an error of the program, never of its input
 */
export function pick<T>(list: readonly T[], i: number): T {
  const found = list[i];
  if (found === undefined) throw new RangeError(`no element ${i} in a list of ${list.length}`);
  return found;
}

/** Whole numbers from 0 up to, but without, `count`. */
export function upTo(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i);
}
