/** How far pieces fill a spool. */
import type { Material } from './material.ts';

/** The last piece of each sum up to `longest`; -1 where none adds up. */
export function sumsOf(lengths: readonly number[], longest: number): Int32Array {
  const last = new Int32Array(longest + 1).fill(-1);
  let reached = 0;
  lengths.forEach((length, i) => {
    for (let sum = Math.min(longest, reached + length); sum >= length; sum--) {
      if (last[sum] === -1 && (sum === length || last[sum - length] !== -1)) last[sum] = i;
    }
    reached += length;
  });
  return last;
}

/** The longest sum up to a length. */
export function fullest(last: Int32Array, length: number): number {
  let sum = length;
  while (sum > 0 && last[sum] === -1) sum--;
  return sum;
}

/** Most length that pieces take of each kind. */
export function fillsOf({ kinds, pieces }: Material): number[] {
  const longest = Math.max(0, ...kinds.map(({ length }) => length));
  const last = sumsOf(
    pieces.map(({ length }) => length),
    longest,
  );
  return kinds.map(({ length }) => fullest(last, length));
}
