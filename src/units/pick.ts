/** What must be there in lists and maps, and places in sorted lists. */

/**
 * Element `i`.
 * @throws RangeError when there is none: our bug
 */
export function pick<T>(list: readonly T[], i: number): T {
  const found = list[i];
  if (found === undefined) throw new RangeError(`no element ${i} in a list of ${list.length}`);
  return found;
}

/**
 * The value of a key.
 * @throws RangeError when there is none: our bug
 */
export function valueOf<K, V>(map: ReadonlyMap<K, V>, key: K): V {
  const found = map.get(key);
  if (found === undefined) throw new RangeError(`no ${String(key)} in a map of ${map.size}`);
  return found;
}

/** 0 to `count` - 1. */
export function upTo(count: number): number[] {
  return Array.from({ length: count }, (_, i) => i);
}

/** First number below `count` that holds, else `count`; all later ones must hold. */
export function firstFrom(count: number, holds: (i: number) => boolean): number {
  let [low, high] = [0, count];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}
