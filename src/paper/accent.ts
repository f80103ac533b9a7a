/** Accent cord of the bars: which bar takes which color, and how many feet of each. */
import { accentFeetAnInch } from '../stock/cord.ts';
import type { Bar } from '../stock/bars.ts';
import type { Flat } from './flat.ts';

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
    width: widthFrom(Math.min(half, bar.from + bar.length / 2)),
    accent: colors.length === 0 ? undefined : colors[i % colors.length],
  }));

export interface AccentNeed {
  readonly color: string | undefined;
  /** Whole feet of one cinch, up: nothing over is in it. */
  readonly feet: number;
}

/** Feet of each color, both halves, the centre bar once. */
export function accentNeeds(bars: readonly PlacedBar[]): AccentNeed[] {
  const feet = new Map<string | undefined, number>();
  for (const { kind, length, width, accent } of bars) {
    const both = (kind === 'centre' ? 1 : 2) * length * accentFeetAnInch(width);
    feet.set(accent, (feet.get(accent) ?? 0) + both);
  }
  return [...feet].map(([color, sum]) => ({ color, feet: Math.ceil(sum - 1e-9) }));
}
