/** How many feet of body cord a cinch takes. */

/** Length that buckles and bars take off the strands [derived]. */
const HARDWARE = 5;
/** Half the wrap of one strand around a bar, per strand, inches [derived]. */
const TAIL_RADIUS = 0.2;
const TURN = 0.6;
const MARGIN = 1.15;

/**
 * Feet of 8-ply body cord: (n s + (n-1) 0.6 + 2 t)/12 with s = length - 5 in, t = 2 n pi 0.2 in, and 15 % over.
 * Derived; agrees with the 50 ft for 17 strands of a craft how-to.
 */
export function bodyCordFeet(strands: number, length: number): number {
  const tail = 2 * strands * Math.PI * TAIL_RADIUS;
  return ((strands * (length - HARDWARE) + (strands - 1) * TURN + 2 * tail) / 12) * MARGIN;
}
