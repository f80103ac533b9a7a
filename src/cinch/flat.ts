/** A cinch flat on the bench, not yet stretched. */
import type { Buckle, Style } from '../order/types.ts';
import { bench } from '../numbers/bench-numbers.ts';
import { barInches, barsOf, type Bar } from './bars.ts';
import { widthAt, type Shape } from './outline.ts';

export interface Laid {
  readonly style: Style;
  readonly shape: Shape;
  readonly length: number;
  readonly buckle: Pick<Buckle, 'frameHeight'>;
  readonly flareStart: number | undefined;
}

export interface Flat {
  /** Buckle's low edge to the middle. */
  readonly half: number;
  /** Where a roper starts to widen and is at full width. */
  readonly flare: { readonly start: number; readonly whole: number } | undefined;
  /** Where the edge turns. */
  readonly turns: readonly number[];
  readonly bars: readonly Bar[];
  /** Whole cinch. */
  readonly barInches: number;
  readonly widthFrom: (distance: number) => number;
}

/** Shorter than on the horse, by the share the cord stretches. */
export function flatOf({ style, shape, length, buckle, flareStart }: Laid): Flat {
  // A tall frame leaves nothing to tie.
  const half = Math.max(0.25, length / 2 - buckle.frameHeight);
  const share = half / shape.top;
  const start = flareStart === undefined ? undefined : flareStart * share;
  const bars = barsOf(style, { half, flareStart: start });
  return {
    half,
    bars,
    barInches: barInches(bars),
    flare: start === undefined ? undefined : { start, whole: (shape.top - shape.fullUpTo) * share },
    turns:
      shape.pinched === shape.full
        ? []
        : [(shape.top - shape.pinchedFrom) * share, (shape.top - shape.fullUpTo) * share],
    widthFrom: (distance) => widthAt(shape, shape.top - distance / share),
  };
}

/** Widths along one half; strands gather on the buckle bar. */
export function profileOf({ half, widthFrom }: Flat, bar: number): { at: number; width: number }[] {
  const step = bench('profile-step');
  const stops = Array.from({ length: Math.ceil(half / step - 1e-9) }, (_, i) => i * step);
  return [...stops, half].map((at) => ({
    at,
    width: at === 0 ? Math.min(bar, widthFrom(0)) : widthFrom(at),
  }));
}
