/** The bell curve: chance below a value, and the value for a chance. */

/** Value of the polynomial with these coefficients, highest power first (Horner). */
function polynomial(x: number, coefficients: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < coefficients.length; i++) sum = sum * x + (coefficients[i] as number);
  return sum;
}

// Rational approximations of W. J. Cody, Math. Comp. 23 (1969) 631, as given for the normal distribution in his
// Algorithm 715 (ACM TOMS 19 (1993) 22). Highest power first; relative error below 1e-17 before rounding.
const CENTRE_P = [
  0.065682337918207449113, 2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582,
  18154.981253343561249,
];
const CENTRE_Q = [
  1, 47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956,
];
const MIDDLE_P = [
  1.0765576773720192317e-8, 0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979,
  597.27027639480026226, 2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124,
  9842.7148383839780218,
];
const MIDDLE_Q = [
  1, 22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755,
  18615.571640885098091, 34900.952721145977266, 38912.003286093271411, 19685.429676859990727,
];
const FAR_P = [
  0.02307344176494017303, 0.21589853405795699, 0.1274011611602473639, 0.022235277870649807,
  0.001421619193227893466, 2.9112874951168792e-5,
];
const FAR_Q = [
  1, 1.28426009614491121, 0.468238212480865118, 0.0659881378689285515, 0.00378239633202758244,
  7.29751555083966205e-5,
];

const SQRT_2_PI = 2.5066282746310005024;
/** Beyond this the lower tail is below the least positive double. */
const VANISHES = 38.6;

/** exp(-x^2 / 2) at every sixteenth. */
const sixteenths = Float64Array.from({ length: 16 * 39 }, (_, i) => Math.exp((-(i / 16) * (i / 16)) / 2));

/** exp(-x^2 / 2) for x of 0 to 38.6 without losing digits to the rounding of x^2: x is split at a sixteenth (Cody 1969). */
function bell(x: number): number {
  const whole = Math.floor(x * 16);
  const coarse = whole / 16;
  return (sixteenths[whole] as number) * Math.exp((-(x - coarse) * (x + coarse)) / 2);
}

/** Chance above x for x of at least 0.66, in full relative precision. */
function upperTail(x: number): number {
  if (x > VANISHES) return 0;
  if (x < Math.sqrt(32)) return (bell(x) * polynomial(x, MIDDLE_P)) / polynomial(x, MIDDLE_Q);
  const inverse = 1 / (x * x);
  const rest = (inverse * polynomial(inverse, FAR_P)) / polynomial(inverse, FAR_Q);
  return (bell(x) * (1 / SQRT_2_PI - rest)) / x;
}

/** Where the approximation of the center ends (Cody 1993). */
const CENTRE = 0.67448975;

/** Chance that a standard normal value is at most x, in double precision, the lower tail relatively so. */
export function normalCdf(x: number): number {
  if (Math.abs(x) <= CENTRE) {
    const square = x * x;
    return 0.5 + (x * polynomial(square, CENTRE_P)) / polynomial(square, CENTRE_Q);
  }
  return x > 0 ? 1 - upperTail(x) : upperTail(-x);
}

// M. J. Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37 (1988) 477. Highest power first.
const NEAR_A = [
  2509.0809287301226727, 33430.575583588128105, 67265.770927008700853, 45921.953931549871457,
  13731.693765509461125, 1971.5909503065514427, 133.14166789178437745, 3.387132872796366608,
];
const NEAR_B = [
  5226.495278852854561, 28729.085735721942674, 39307.89580009271061, 21213.794301586595867,
  5394.1960214247511077, 687.1870074920579083, 42.313330701600911252, 1,
];
const TAIL_C = [
  7.7454501427834140764e-4, 0.0227238449892691845833, 0.24178072517745061177, 1.27045825245236838258,
  3.64784832476320460504, 5.7694972214606914055, 4.6303378461565452959, 1.42343711074968357734,
];
const TAIL_D = [
  1.05075007164441684324e-9, 5.475938084995344946e-4, 0.0151986665636164571966, 0.14810397642748007459,
  0.68976733498510000455, 1.6763848301838038494, 2.05319162663775882187, 1,
];
const DEEP_E = [
  2.01033439929228813265e-7, 2.71155556874348757815e-5, 0.0012426609473880784386, 0.026532189526576123093,
  0.29656057182850489123, 1.7848265399172913358, 5.4637849111641143699, 6.6579046435011037772,
];
const DEEP_F = [
  2.04426310338993978564e-15, 1.4215117583164458887e-7, 1.8463183175100546818e-5, 7.868691311456132591e-4,
  0.0148753612908506148525, 0.13692988092273580531, 0.59983220655588793769, 1,
];

/**
 * The standard normal value that is not exceeded with chance p (about 16 digits).
 * @param p 0 to 1; the ends give -Infinity and Infinity
 * @throws RangeError when p is outside 0 to 1 or not a number
 */
export function normalInverse(p: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`chance ${p} must lie between 0 and 1`);
  const q = p - 0.5;
  if (Math.abs(q) <= 0.425) {
    const r = 0.180625 - q * q;
    return (q * polynomial(r, NEAR_A)) / polynomial(r, NEAR_B);
  }
  const tail = q < 0 ? p : 1 - p;
  if (tail === 0) return q < 0 ? -Infinity : Infinity;
  const r = Math.sqrt(-Math.log(tail));
  const size =
    r <= 5
      ? polynomial(r - 1.6, TAIL_C) / polynomial(r - 1.6, TAIL_D)
      : polynomial(r - 5, DEEP_E) / polynomial(r - 5, DEEP_F);
  return q < 0 ? -size : size;
}
