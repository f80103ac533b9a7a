/** Accent cord of the bars: which bar takes which color, and how many feet of each. */
import type { Shop, Style } from '../order/types.ts';
import { bench } from '../sources/bench-numbers.ts';
import type { Model } from '../sources/numbers.ts';
import type { Bar } from './bars.ts';
import { accentFeetAnInch } from './cord.ts';
import { flatOf, type Flat, type Laid } from './flat.ts';
import { fullWidth, pinchedWidth } from './outline.ts';
import { styleIds } from './styles.ts';

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
    accent: colors.length === 0 ? undefined : colors[i % colors.length],
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

/**
 * Whole feet of accent cord of one cinch in so many colors, all colors together. The sum of `accentNeeds`, without its
 * objects: where cord is short it is asked of hundreds of candidates.
 */
export function accentFeet(laid: Laid, colors: number): number {
  const { bars, widthFrom, half } = flatOf(laid);
  const turns = Math.max(1, colors);
  let all = 0;
  for (let color = 0; color < turns; color++) {
    let sum = 0;
    for (let i = color; i < bars.length; i += turns) {
      const bar = bars[i] as Bar;
      sum += feetOf(bar, widthFrom(middleOf(bar, half)));
    }
    all += wholeFeet(sum);
  }
  return all;
}

/** What decides roughly how much accent cord a cinch takes. */
interface Rough {
  readonly style: Style;
  readonly strands: number;
  readonly length: number;
}

/** It takes no more feet than this in so many colors: as many rows as there is room for. Much cheaper than counting them. */
export function accentAtMost({ style, strands, length }: Rough, colors: number, model: Model): number {
  const full = accentFeetAnInch(fullWidth(strands, model));
  if (style === 'straight') return colors + (2 * bench('end-bar') + bench('center-bar')) * full;
  const row = bench('weave-row');
  // The pinched part ends where the flare begins: below the buckle, or no lower than the flare is long.
  const low = style === 'low-flare';
  const reach = low ? length / 2 - model['flare-length'] : model['high-flare-start'];
  const room = reach - row - bench('first-row-from');
  const rows = 1 + Math.max(low ? 2 : 1, Math.ceil(room / (row + bench('row-gap'))));
  return colors + row * (2 * rows * accentFeetAnInch(pinchedWidth(strands, model)) + full);
}

/** No cinch of the shop takes more feet than this in so many colors. */
export const mostAccentFeet = ({ strands, lengths, model }: Shop, colors: number): number =>
  Math.max(
    ...styleIds.map((style) =>
      accentAtMost({ style, strands: strands.max, length: lengths.max }, colors, model),
    ),
  );
