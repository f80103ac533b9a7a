/** Elliptic integrals: how long an arc of an ellipse is, to the last digits a double holds. */

/*
 * Conventions, because the tables differ: m = k^2 is the parameter (k the modulus, sin of the modular angle in
 * A&S), and phi is the ECCENTRIC angle (the amplitude), not the angle at the center of the ellipse.
 * F(phi, m) = integral 0..phi of (1 - m sin^2 t)^(-1/2) dt    (A&S 17.2.7)
 * E(phi, m) = integral 0..phi of (1 - m sin^2 t)^(1/2) dt     (A&S 17.2.9)
 */

function demandParameter(m: number): void {
  if (!(m <= 1)) throw new RangeError(`elliptic parameter m = ${m} must not exceed 1`);
}

/** Half a unit in the last place ends the mean: the next step squares an error this small away. */
const MEAN_IS_SETTLED = 1e-8;

/**
 * Complete integral of the first kind.
 * @param m parameter k^2, at most 1; negative is fine; 1 gives Infinity
 * @throws RangeError when m is above 1 or not a number
 */
export function completeF(m: number): number {
  demandParameter(m);
  if (m === 1) return Infinity;
  let x = 1;
  let y = Math.sqrt(1 - m);
  while (Math.abs(x - y) > MEAN_IS_SETTLED * x) {
    const mean = (x + y) / 2;
    y = Math.sqrt(x * y);
    x = mean;
  }
  return Math.PI / (x + y); // A&S 17.6.3, DLMF 19.8.5; (x + y) / 2 is the next mean
}

/**
 * Complete integral of the second kind E(1 - r^2), from the complementary modulus r. An ellipse with half-axes 1
 * and r has the perimeter 4 times this. Taking r instead of m keeps a nearly flat ellipse exact.
 * @param r short half-axis over long half-axis, 0 to 1
 */
export function completeEOfAxes(r: number): number {
  if (r === 0) return 1;
  let x = 1;
  let y = r;
  let sum = ((1 - r) * (1 + r)) / 2;
  let weight = 1;
  while (Math.abs(x - y) > MEAN_IS_SETTLED * x) {
    const half = (x - y) / 2;
    const mean = (x + y) / 2;
    y = Math.sqrt(x * y);
    x = mean;
    sum += weight * half * half;
    weight *= 2;
  }
  return (Math.PI * (1 - sum)) / (x + y); // E = K (1 - sum 2^(n-1) c_n^2): A&S 17.6.4, DLMF 19.8.6
}

/**
 * Complete integral of the second kind.
 * @param m parameter k^2, at most 1; negative is fine
 * @throws RangeError when m is above 1 or not a number
 */
export function completeE(m: number): number {
  demandParameter(m);
  const r = Math.sqrt(1 - m);
  return r <= 1 ? completeEOfAxes(r) : r * completeEOfAxes(1 / r); // A&S 17.4.17, 17.4.18 at phi = pi/2
}

/** Scale at which the seventh-order series below is exact to double precision: (eps / 4)^(1/8) (Carlson 1995). */
const SERIES_REACH = 0.009;

/**
 * Carlson's R_F(x, y, 1) and, with it, R_D(x, y, 1), by duplication with both sharing their square roots.
 * Returns R_F + factor R_D: the integrals asked for here are just such sums.
 */
function carlsonSum(x: number, y: number, factor: number): number {
  let z = 1;
  let scale = 1;
  let sum = 0;
  let mean3 = (x + y + z) / 3;
  let mean5 = (x + y + 3 * z) / 5;
  for (;;) {
    const reach = SERIES_REACH * mean5;
    const far = Math.max(Math.abs(mean5 - x), Math.abs(mean5 - y), Math.abs(mean5 - z));
    if (!(far >= reach)) break; // also when something is no number
    const rx = Math.sqrt(x);
    const ry = Math.sqrt(y);
    const rz = Math.sqrt(z);
    const lambda = rx * (ry + rz) + ry * rz; // DLMF 19.26.18 (R_F), 19.26.20 (R_D)
    sum += scale / (rz * (z + lambda));
    scale /= 4;
    x = (x + lambda) / 4;
    y = (y + lambda) / 4;
    z = (z + lambda) / 4;
    mean3 = (mean3 + lambda) / 4;
    mean5 = (mean5 + lambda) / 4;
  }
  const first = seriesRF((mean3 - x) / mean3, (mean3 - y) / mean3) / Math.sqrt(mean3);
  if (factor === 0) return first;
  const tail = seriesRD((mean5 - x) / mean5, (mean5 - y) / mean5) / (mean5 * Math.sqrt(mean5));
  return first + factor * (3 * sum + scale * tail);
}

/** R_F near equal arguments, which deviate from their mean by X, Y and -(X + Y). */
function seriesRF(X: number, Y: number): number {
  const Z = -(X + Y);
  const e2 = X * Y - Z * Z;
  const e3 = X * Y * Z;
  return (
    1 -
    e2 / 10 +
    e3 / 14 +
    (e2 * e2) / 24 -
    (3 * e2 * e3) / 44 -
    (5 * e2 * e2 * e2) / 208 +
    (3 * e3 * e3) / 104 +
    (e2 * e2 * e3) / 16
  ); // DLMF 19.36.1
}

/** R_D near equal arguments, which deviate from their mean by X, Y and three times -(X + Y) / 3. */
function seriesRD(X: number, Y: number): number {
  const Z = -(X + Y) / 3;
  const xy = X * Y;
  const z2 = Z * Z;
  const e2 = xy - 6 * z2;
  const e3 = (3 * xy - 8 * z2) * Z;
  const e4 = 3 * (xy - z2) * z2;
  const e5 = xy * z2 * Z;
  const low =
    1 - (3 * e2) / 14 + e3 / 6 + (9 * e2 * e2) / 88 - (3 * e4) / 22 - (9 * e2 * e3) / 52 + (3 * e5) / 26;
  const high = (-e2 * e2 * e2) / 16 + (3 * e3 * e3) / 40 + (3 * e2 * e4) / 20 + (45 * e2 * e2 * e3) / 272;
  return low + high - (9 * (e3 * e4 + e2 * e5)) / 68; // DLMF 19.36.2
}

/**
 * Incomplete integral of the first kind, for any amplitude.
 * @param phi eccentric angle, radians
 * @param m parameter k^2, at most 1; negative is fine
 * @throws RangeError when m is above 1 or not a number
 */
export function incompleteF(phi: number, m: number): number {
  demandParameter(m);
  const turns = Math.round(phi / Math.PI);
  const rest = phi - turns * Math.PI;
  const s = Math.sin(rest);
  const c = Math.cos(rest);
  const part = s * carlsonSum(c * c, c * c + (1 - m) * s * s, 0); // DLMF 19.25.5
  return turns === 0 ? part : 2 * turns * completeF(m) + part; // A&S 17.4.3
}

/**
 * Incomplete integral of the second kind, for any amplitude.
 * @param phi eccentric angle, radians
 * @param m parameter k^2, at most 1; negative is fine
 * @throws RangeError when m is above 1 or not a number
 */
export function incompleteE(phi: number, m: number): number {
  demandParameter(m);
  const turns = Math.round(phi / Math.PI);
  const rest = phi - turns * Math.PI;
  const s = Math.sin(rest);
  const c = Math.cos(rest);
  const s2 = s * s;
  const part = s * carlsonSum(c * c, c * c + (1 - m) * s2, (-m * s2) / 3); // DLMF 19.25.9
  return turns === 0 ? part : 2 * turns * completeE(m) + part; // A&S 17.4.3
}
