/** Straps: how long, how hard they grip round a post, how hard they press. Units only need to agree. */

/**
 * Length of a taut strap on a cylinder: a straight line on the unrolled surface (a geodesic).
 * @param along distance between its ends along the cylinder's axis
 * @param across distance between its ends along the skin round the axis, same unit
 */
export function strapLength(along: number, across: number): number {
  return Math.hypot(along, across); // Pythagoras on the unrolled surface
}

/**
 * How many times the holding force a rope round a post can resist before it slips.
 * @param friction coefficient of friction, no unit
 * @param angle angle of contact in radians; one turn is 2 pi
 */
export function capstanRatio(friction: number, angle: number): number {
  return Math.exp(friction * angle); // Euler-Eytelwein
}

/**
 * Mean pressure of a strap on a round body: newtons and meters give pascals, pounds-force and inches give psi.
 * Sensors under real straps read up to 42 % away from this law, so use it to compare, never as a promise.
 * @param tension pull in the strap
 * @param width width of the strap
 * @param radius radius of curvature of the body below it; Infinity (flat) gives no pressure
 * @throws RangeError when width or radius is not above zero
 */
export function hoopPressure(tension: number, width: number, radius: number): number {
  if (!(width > 0 && radius > 0))
    throw new RangeError(`width ${width} and radius ${radius} must be above zero`);
  return tension / (width * radius); // thin-wall hoop, Laplace
}
