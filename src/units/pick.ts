/** Elements of lists that are known to be there, and places in lists that are in order. */

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

/** First whole number from 0 up to, but without, `count` that holds, else `count`. What holds must hold for all that follow. */
export function firstFrom(count: number, holds: (i: number) => boolean): number {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
