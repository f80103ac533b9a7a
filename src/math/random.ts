/** Repeatable random numbers, the same on every machine. */
import { normalInverse } from './normal.ts';

export interface Random {
  /** 0 to 2^32 - 1. */
  next(): number;
  /** Strictly between 0 and 1: 52 bits, two draws. */
  uniform(): number;
  /** Increases with its `uniform` value. */
  normal(): number;
}

/**
 * PCG32, variant XSH-RR 64/32 (M. E. O'Neill, HMC-CS-2014-0905). Streams are independent.
 * @throws RangeError unless both are whole numbers from 0 to 2^53 - 1
 */
export function seededRandom(seed: number, stream = 54): Random {
  if (!Number.isSafeInteger(seed) || seed < 0 || !Number.isSafeInteger(stream) || stream < 0) {
    throw new RangeError(`seed ${seed} and stream ${stream} must be whole numbers from 0 to 2^53 - 1`);
  }
  const increment = 2n * BigInt(stream) + 1n;
  const after = (state: bigint): bigint => BigInt.asUintN(64, state * 6364136223846793005n + increment);
  let state = after(increment + BigInt(seed));
  const next = (): number => {
    // low word, rotated right by the top five bits
    const word = Number(BigInt.asUintN(32, ((state >> 18n) ^ state) >> 27n));
    const turn = Number(state >> 59n);
    state = after(state);
    return ((word >>> turn) | (word << (-turn & 31))) >>> 0;
  };
  const uniform = (): number => {
    const top = next() >>> 6;
    return (top * 2 ** 26 + (next() >>> 6) + 0.5) / 2 ** 52; // (k + 1/2) / 2^52, k of 52 bits
  };
  // One draw per value, so runs can be compared.
  return { next, uniform, normal: () => normalInverse(uniform()) };
}
