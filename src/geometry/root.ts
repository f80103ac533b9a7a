/** Finds where a rising or falling function crosses zero, in few evaluations and never outside its bracket. */

const EPS = Number.EPSILON;
/** Bisection alone needs at most about 1075 halvings of any double bracket; the rest is never reached. */
const MOST_STEPS = 1100;

/**
 * Root of a continuous function between two ends where it has opposite signs: inverse quadratic interpolation
 * where it can be trusted, bisection where not (Chandrupatla 1997, Adv. Eng. Software 28:145).
 * @param f the function; called once at each end, then about six to ten times
 * @param bracket the two ends, in any order
 * @param tolerance absolute error allowed in the root; 0 asks for the last digit
 * @returns the root, or undefined when f has the same sign at both ends (or is not a number there)
 */
export function findRoot(
  f: (x: number) => number,
  bracket: readonly [number, number],
  tolerance = 0,
): number | undefined {
  let b = bracket[0];
  let a = bracket[1];
  let fb = f(b);
  if (fb === 0) return b;
  let fa = f(a);
  if (fa === 0) return a;
  if (!(fa < 0 !== fb < 0) || Number.isNaN(fa + fb)) return undefined;
  let c = b;
  let fc = fb;
  let t = 0.5;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const x = a + t * (b - a);
    const fx = f(x);
    if (fx < 0 === fa < 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      fc = fb;
      b = a;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    const least = (2 * EPS * Math.abs(best) + tolerance / 2) / Math.abs(b - a);
    if (fx === 0 || !(least <= 0.5)) return fx === 0 ? x : best;
    t = Math.min(1 - least, Math.max(least, interpolate([a, b, c], [fa, fb, fc])));
  }
  return a;
}

type Three = readonly [number, number, number];

/** Fraction of the way from a to b where the next trial goes: interpolated when the points allow it, else half. */
function interpolate([a, b, c]: Three, [fa, fb, fc]: Three): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5; // Chandrupatla 1997, criterion
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb)); // ibid.
}
