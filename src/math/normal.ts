/** The normal distribution and its inverse. */

const SQRT_2_PI = Math.sqrt(2 * Math.PI);
/** Above this the continued fraction is quicker and exact in the tail. */
const TAIL = 2.5;
const FRACTIONS = 80;

/** About 13 digits, also in the lower tail. */
export function normalCdf(x: number): number {
  const density = Math.exp((-x * x) / 2) / SQRT_2_PI;
  const size = Math.abs(x);
  if (size < TAIL) {
    let [sum, term] = [x, x];
    for (let k = 3; sum + term !== sum; k += 2) {
      term *= (x * x) / k;
      sum += term;
    }
    return 0.5 + density * sum; // A&S 26.2.11
  }
  let fraction = size;
  for (let k = FRACTIONS; k > 0; k -= 1) fraction = size + k / fraction;
  const tail = density / fraction; // A&S 26.2.14
  return x < 0 ? tail : 1 - tail;
}

/**
 * Inverse of normalCdf; infinite at 0 and 1.
 * @throws RangeError when p is outside 0 to 1
 */
export function normalInverse(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`chance ${p} must lie between 0 and 1`);
  if (p > 0.5) return -normalInverse(1 - p);
  if (p === 0) return -Infinity;
  const t = Math.sqrt(-2 * Math.log(p));
  const over = 2.515517 + t * (0.802853 + t * 0.010328);
  const under = 1 + t * (1.432788 + t * (0.189269 + t * 0.001308));
  let x = over / under - t; // A&S 26.2.23, within 4.5e-4; each Halley step triples the digits
  for (let step = 0; step < 2; step += 1) {
    const miss = (normalCdf(x) - p) * SQRT_2_PI * Math.exp((x * x) / 2);
    x -= miss / (1 + (x * miss) / 2);
  }
  return x;
}
