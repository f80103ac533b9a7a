/** Where woven bars sit, on straights and ropers. */
import type { Style } from '../order/types.ts';
import { bench } from '../numbers/bench-numbers.ts';

export interface Bar {
  /** `end` closes, `further` pinches farther down. */
  readonly kind: 'end' | 'pinch' | 'further' | 'centre';
  /** Inches from the buckle's low edge, flat, in quarters. */
  readonly from: number;
  readonly length: number;
}

export interface Half {
  readonly half: number;
  readonly flareStart: number | undefined;
}

const quarter = (inches: number): number => Math.round(inches * 4) / 4;

/** From the buckle down; the center bar is last. */
export function barsOf(style: Style, { half, flareStart }: Half): Bar[] {
  if (flareStart === undefined) {
    const end: Bar = { kind: 'end', from: bench('end-bar-from'), length: bench('end-bar') };
    return [end, center(half, bench('center-bar'))];
  }
  return [...rowsOf(style, flareStart), center(half, bench('weave-row'))];
}

const center = (half: number, length: number): Bar => ({
  kind: 'centre',
  from: Math.max(0, quarter(half - length / 2)),
  length,
});

/** Two rows, at least three on a low flare, close enough to keep the strands together. */
function rowsOf(style: Style, flareStart: number): Bar[] {
  const row = bench('weave-row');
  const last = Math.max(0, flareStart - row);
  const first = Math.min(bench('first-row-from'), last);
  const room = last - first;
  const wanted = Math.max(style === 'low-flare' ? 2 : 1, Math.ceil(room / (row + bench('row-gap'))));
  const steps = Math.min(wanted, Math.floor(room / row));
  const rows = Array.from({ length: steps + 1 }, (_, i): Bar => {
    const kind = i === 0 ? 'end' : i === steps && style === 'low-flare' ? 'further' : 'pinch';
    return { kind, from: quarter(steps === 0 ? last : first + (room * i) / steps), length: row };
  });
  return rows;
}

/** Both halves, the center bar once. */
export const barInches = (bars: readonly Bar[]): number =>
  bars.reduce((sum, { kind, length }) => sum + (kind === 'centre' ? 1 : 2) * length, 0);
