/** How hard a strap presses on a round body. */

/**
 * Newtons and meters give pascals; pounds-force and inches give psi. Only to compare: sensors under real straps read up to 42% off.
 * @param radius of curvature; Infinity gives no pressure
 * @throws RangeError when width or radius is not above zero
 */
export function hoopPressure(tension: number, width: number, radius: number): number {
  if (!(width > 0 && radius > 0))
    throw new RangeError(`width ${width} and radius ${radius} must be above zero`);
  return tension / (width * radius); // thin-wall hoop, Laplace
}
