/** Chance that can be repeated: the same seed gives the same numbers on every machine. */
import { normalInverse } from './normal.ts';

export interface Random {
  /** A whole number from 0 to 2^32 - 1. */
  next(): number;
  /** A number above 0 and below 1, never either of them (52 bits; two draws of `next`). */
  uniform(): number;
  /** A standard normal value, rising with the `uniform` value it is made from. */
  normal(): number;
}

const TWO_32 = 4294967296;
// The multiplier 6364136223846793005 of PCG32 (O'Neill 2014), as high and low halves.
const MULTIPLIER_HIGH = 0x5851f42d;
const MULTIPLIER_LOW = 0x4c957f2d;

/** High 32 bits of the product of two unsigned 32-bit numbers, by 16-bit halves (a double holds only 53 bits). */
function multiplyHigh(a: number, b: number): number {
  const aHigh = a >>> 16;
  const aLow = a & 0xffff;
  const bHigh = b >>> 16;
  const bLow = b & 0xffff;
  const middle = aHigh * bLow + ((aLow * bLow) >>> 16);
  const carry = aLow * bHigh + (middle & 0xffff);
  return (aHigh * bHigh + Math.floor(middle / 65536) + Math.floor(carry / 65536)) >>> 0;
}

/** PCG32, variant XSH-RR 64/32: M. E. O'Neill, HMC-CS-2014-0905. */
class Pcg32 implements Random {
  private high = 0;
  private low = 0;
  private readonly incrementHigh: number;
  private readonly incrementLow: number;

  constructor(seed: number, stream: number) {
    const streamHigh = Math.floor(stream / TWO_32);
    this.incrementHigh = ((streamHigh << 1) | (stream % TWO_32 >= TWO_32 / 2 ? 1 : 0)) >>> 0;
    this.incrementLow = (((stream % TWO_32) << 1) | 1) >>> 0;
    this.next();
    this.add(Math.floor(seed / TWO_32), seed % TWO_32);
    this.next();
  }

  private add(high: number, low: number): void {
    const sum = this.low + low;
    this.low = sum >>> 0;
    this.high = (this.high + high + (sum >= TWO_32 ? 1 : 0)) >>> 0;
  }

  next(): number {
    const { high, low } = this;
    this.high =
      multiplyHigh(low, MULTIPLIER_LOW) + Math.imul(low, MULTIPLIER_HIGH) + Math.imul(high, MULTIPLIER_LOW);
    this.low = Math.imul(low, MULTIPLIER_LOW) >>> 0;
    this.add(this.incrementHigh, this.incrementLow);
    // Output: the low word of ((state >> 18) ^ state) >> 27, turned right by the top five bits.
    const mixedHigh = (high >>> 18) ^ high;
    const mixedLow = ((high << 14) | (low >>> 18)) ^ low;
    const word = (mixedHigh << 5) | (mixedLow >>> 27);
    const turn = high >>> 27;
    return ((word >>> turn) | (word << (-turn & 31))) >>> 0;
  }

  uniform(): number {
    const top = this.next() >>> 6;
    const rest = this.next() >>> 6;
    return (top * 67108864 + rest + 0.5) / 4503599627370496; // (k + 1/2) / 2^52, k of 52 bits
  }

  normal(): number {
    return normalInverse(this.uniform()); // inversion keeps one value to one draw, so runs can be compared
  }
}

/**
 * A seeded generator.
 * @param seed whole number, 0 to 2^53 - 1
 * @param stream which of its independent sequences, 0 to 2^53 - 1
 * @throws RangeError when either is not such a number
 */
export function seededRandom(seed: number, stream = 54): Random {
  if (!Number.isSafeInteger(seed) || seed < 0 || !Number.isSafeInteger(stream) || stream < 0) {
    throw new RangeError(`seed ${seed} and stream ${stream} must be whole numbers from 0 to 2^53 - 1`);
  }
  return new Pcg32(seed, stream);
}
