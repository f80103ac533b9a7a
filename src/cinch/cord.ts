/** How many feet of cord a cinch takes. */
import { bench } from '../numbers/bench-numbers.ts';

/** Bar to bar, inches [derived]. */
export const strungLength = (length: number): number => length - bench('hardware-off');

/** Inches: twice around every strand [derived], but enough to sew. */
export const tailOf = (passes: number): number =>
  Math.max(bench('least-tail'), 2 * passes * Math.PI * bench('tail-radius'));

/**
 * Feet of one 8-ply piece: (n s + (n-1) 0.6 + 2 t)/12 plus 15%, s = length - 5 in, t = 2 n pi 0.2 in [derived]. A
 * craft how-to's 50 ft for 17 strands agrees.
 */
export function bodyCordFeet(passes: number, length: number): number {
  const strung = passes * strungLength(length) + (passes - 1) * bench('turn-at-buckle');
  return ((strung + 2 * tailOf(passes)) / 12) * (1 + bench('cord-over'));
}

/** Per inch of bar: nine passes of one and a half widths [derived]. */
export const accentFeetAnInch = (width: number): number =>
  (bench('accent-passes') * bench('accent-slack') * width) / 12;
