/** Accent cord of the bars: which bar takes which color, and how many feet of each. */
import type { Bar } from './bars.ts';
import { accentFeetAnInch } from './cord.ts';
import { flatOf, type Flat, type Laid } from './flat.ts';

export interface PlacedBar extends Bar {
  /** Width of the cinch at the middle of the bar. */
  readonly width: number;
  /** Undefined when the order does not say. */
  readonly accent: string | undefined;
}

/** Bars of one half with their width and color; colors take turns from the buckle down [choice]. */
export const placedBars = ({ bars, widthFrom, half }: Flat, colors: readonly string[]): PlacedBar[] =>
  bars.map((bar, i) => ({
    ...bar,
    width: widthFrom(middleOf(bar, half)),
    accent: colors[i % colors.length],
  }));

const middleOf = ({ from, length }: Bar, half: number): number => Math.min(half, from + length / 2);

/** Feet of a bar so wide, in both halves. */
const feetOf = ({ kind, length }: Bar, width: number): number =>
  (kind === 'centre' ? 1 : 2) * length * accentFeetAnInch(width);

const wholeFeet = (sum: number): number => Math.ceil(sum - 1e-9);

export interface AccentNeed {
  readonly color: string | undefined;
  /** Whole feet of one cinch, up: nothing over is in it. */
  readonly feet: number;
}

/** Feet of each color, both halves, the center bar once. */
export function accentNeeds(bars: readonly PlacedBar[]): AccentNeed[] {
  const feet = new Map<string | undefined, number>();
  for (const bar of bars) feet.set(bar.accent, (feet.get(bar.accent) ?? 0) + feetOf(bar, bar.width));
  return [...feet].map(([color, sum]) => ({ color, feet: wholeFeet(sum) }));
}

/** Whole feet of accent cord of one cinch in these colors, all colors together. */
export const accentFeet = (laid: Laid, colors: readonly string[]): number =>
  accentNeeds(placedBars(flatOf(laid), colors)).reduce((sum, { feet }) => sum + feet, 0);
