/** How many feet of cord a cinch takes. */
import { bench } from '../numbers/bench-numbers.ts';

/** Length of one strand, bar to bar, inches: what buckles and bars leave of the finished length [derived]. */
export const strungLength = (length: number): number => length - bench('hardware-off');

/** Tail at either end of a piece of cord, inches: twice round every strand of the piece [derived], never too short to sew. */
export const tailOf = (passes: number): number =>
  Math.max(bench('least-tail'), 2 * passes * Math.PI * bench('tail-radius'));

/**
 * Feet of one continuous piece of 8-ply body cord: (n s + (n-1) 0.6 + 2 t)/12 with s = length - 5 in, t = 2 n pi 0.2 in,
 * and 15 % over. Derived; for a whole cinch it agrees with the 50 ft for 17 strands of a craft how-to.
 */
export function bodyCordFeet(passes: number, length: number): number {
  const strung = passes * strungLength(length) + (passes - 1) * bench('turn-at-buckle');
  return ((strung + 2 * tailOf(passes)) / 12) * (1 + bench('cord-over'));
}

/** Feet of 2-ply accent cord for an inch of bar so many inches wide: nine passes of one and a half widths [derived]. */
export const accentFeetAnInch = (width: number): number =>
  (bench('accent-passes') * bench('accent-slack') * width) / 12;
