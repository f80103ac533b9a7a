/** Accent cord of the bars: which bar takes which color, and how many feet of each. */
import type { Shop } from '../order/types.ts';
import { bench } from '../sources/bench-numbers.ts';
import type { Bar } from './bars.ts';
import { accentFeetAnInch } from './cord.ts';
import { flatOf, type Flat, type Laid } from './flat.ts';
import { fullWidth, pinchedWidth } from './outline.ts';

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

/** Whole feet of accent cord of one cinch in so many colors, all colors together. */
export const accentFeet = (laid: Laid, colors: readonly string[]): number =>
  accentNeeds(placedBars(flatOf(laid), colors)).reduce((sum, { feet }) => sum + feet, 0);

/** No cinch of the shop takes more feet than this in so many colors: the most strands, with as many rows as the longest has room for. */
export function mostAccentFeet({ strands, lengths, model }: Shop, colors: number): number {
  const row = bench('weave-row');
  const rows = 2 + Math.ceil(lengths.max / 2 / (row + bench('row-gap')));
  const full = accentFeetAnInch(fullWidth(strands.max, model));
  const pinched = accentFeetAnInch(pinchedWidth(strands.max, model));
  const straight = (2 * bench('end-bar') + bench('centre-bar')) * full;
  return colors + Math.max(straight, 2 * rows * row * pinched + row * full);
}
