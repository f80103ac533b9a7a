/** How hard a strap presses on a round body. */

/**
 * Newtons and meters give pascals; pounds-force and inches give psi. Only to compare: under real straps,
 * sensors read up to 42% off.
 * @param radius of curvature
 * @throws RangeError unless width and radius are above zero
 */
export function hoopPressure(tension: number, width: number, radius: number): number {
  if (!(width > 0 && radius > 0))
    throw new RangeError(`width ${width} and radius ${radius} must be above zero`);
  return tension / (width * radius); // thin-wall hoop, Laplace
}
