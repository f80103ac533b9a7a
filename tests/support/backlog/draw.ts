/** Draws from a seeded generator: one of a list, by shares, between bounds, around a mean. */
import type { Random } from '../../../src/math/random.ts';

/** One entry, all alike. */
export function pick<const T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random.uniform() * from.length)] as T;
}

/** Whether something happens that happens with this chance. */
export const happens = (random: Random, chance: number): boolean => random.uniform() < chance;

/** A value with this chance, else nothing. */
export const maybe = <T>(random: Random, chance: number, value: () => T): T | undefined =>
  happens(random, chance) ? value() : undefined;

/** A whole number between two, both included. */
export const whole = (random: Random, low: number, high: number): number =>
  low + Math.floor(random.uniform() * (high - low + 1));

/** One key by its share; the shares need not add up to one. */
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

/** A normal value, never further than two and a half spreads from the mean. */
export const around = (random: Random, { mean, sd }: Spread): number =>
  mean + sd * Math.max(-2.5, Math.min(2.5, random.normal()));
