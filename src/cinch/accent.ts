/** Accent cord: which bar takes which color, and how many feet. */
import type { Bar } from './bars.ts';
import { accentFeetAnInch } from './cord.ts';
import { flatOf, type Flat, type Laid } from './flat.ts';

export interface PlacedBar extends Bar {
  /** At the middle of the bar. */
  readonly width: number;
  readonly accent: string | undefined;
}

/** Of one half; colors alternate from the buckle down [choice]. */
export const placedBars = ({ bars, widthFrom, half }: Flat, colors: readonly string[]): PlacedBar[] =>
  bars.map((bar, i) => ({
    ...bar,
    width: widthFrom(middleOf(bar, half)),
    accent: colors[i % colors.length],
  }));

const middleOf = ({ from, length }: Bar, half: number): number => Math.min(half, from + length / 2);

/** Both halves. */
const feetOf = ({ kind, length }: Bar, width: number): number =>
  (kind === 'centre' ? 1 : 2) * length * accentFeetAnInch(width);

const wholeFeet = (sum: number): number => Math.ceil(sum - 1e-9);

export interface AccentNeed {
  readonly color: string | undefined;
  /** One cinch, rounded up, without extra. */
  readonly feet: number;
}

/** Both halves, the center bar once. */
export function accentNeeds(bars: readonly PlacedBar[]): AccentNeed[] {
  const feet = new Map<string | undefined, number>();
  for (const bar of bars) feet.set(bar.accent, (feet.get(bar.accent) ?? 0) + feetOf(bar, bar.width));
  return [...feet].map(([color, sum]) => ({ color, feet: wholeFeet(sum) }));
}

/** All colors together. */
export const accentFeet = (laid: Laid, colors: readonly string[]): number =>
  accentNeeds(placedBars(flatOf(laid), colors)).reduce((sum, { feet }) => sum + feet, 0);
