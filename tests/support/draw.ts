/** Seeded draws. */
import type { Random } from '../../src/math/random.ts';

/** All equally likely. */
export function pick<const T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random.uniform() * from.length)] as T;
}

export const happens = (random: Random, chance: number): boolean => random.uniform() < chance;

export const maybe = <T>(random: Random, chance: number, value: () => T): T | undefined =>
  happens(random, chance) ? value() : undefined;

/** Both ends included. */
export const whole = (random: Random, low: number, high: number): number =>
  low + Math.floor(random.uniform() * (high - low + 1));

/** The shares need not add up to one. */
export function byShare<K extends string>(random: Random, shares: Readonly<Partial<Record<K, number>>>): K {
  const entries = Object.entries(shares) as [K, number][];
  let left = random.uniform() * entries.reduce((sum, [, share]) => sum + share, 0);
  for (const [key, share] of entries) {
    left -= share;
    if (left < 0) return key;
  }
  return entries[0]![0];
}

export interface Spread {
  readonly mean: number;
  readonly sd: number;
}

/** Normal, at most 2.5 spreads from the mean. */
export const around = (random: Random, { mean, sd }: Spread): number =>
  mean + sd * Math.max(-2.5, Math.min(2.5, random.normal()));
