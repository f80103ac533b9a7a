/** The chance that two bell-curved values that move together both stay below their bounds. */
import { normalCdf } from './normal.ts';

// Gauss-Legendre, twenty points: Abramowitz & Stegun 1964, table 25.4, the ten positive nodes and their weights.
const NODES = [
  0.0765265211334973, 0.2277858511416451, 0.3737060887154195, 0.5108670019508271, 0.636053680726515,
  0.7463319064601508, 0.8391169718222188, 0.9122344282513259, 0.9639719272779138, 0.9931285991850949,
];
const WEIGHTS = [
  0.1527533871307258, 0.1491729864726037, 0.1420961093183821, 0.1316886384491766, 0.1181945319615184,
  0.1019301198172404, 0.0832767415767048, 0.0626720483341091, 0.0406014298003869, 0.0176140071391521,
];

/** Closer to one than this the two are taken as one: the integrand grows too steep for twenty points. */
const AS_ONE = 0.995;

/**
 * P(X <= h and Y <= k) for standard normal X and Y of correlation rho, to about six digits.
 * Phi(h) Phi(k) + 1/(2 pi) times the integral of exp(-(h^2 + k^2 - 2 h k sin t) / (2 cos^2 t)) over t from 0 to asin rho
 * (Drezner & Wesolowsky 1990, J. Stat. Comput. Simul. 35:101).
 */
export function bothBelow(h: number, k: number, rho: number): number {
  if (rho > AS_ONE) return normalCdf(Math.min(h, k));
  const half = Math.asin(Math.max(-AS_ONE, rho)) / 2;
  const squares = h * h + k * k;
  const at = (t: number): number => {
    const sine = Math.sin(t);
    return Math.exp(-(squares - 2 * h * k * sine) / (2 * (1 - sine * sine)));
  };
  let sum = 0;
  for (let i = 0; i < NODES.length; i++) {
    const step = half * (NODES[i] as number);
    sum += (WEIGHTS[i] as number) * (at(half - step) + at(half + step));
  }
  return Math.min(1, Math.max(0, normalCdf(h) * normalCdf(k) + (half * sum) / (2 * Math.PI)));
}
