/** The chance that two bell-curved values that move together both stay below their bounds. */
import { normalCdf } from './normal.ts';

/** The positive half of a Gauss-Legendre rule. */
interface Rule {
  readonly nodes: readonly number[];
  readonly weights: readonly number[];
}

// Abramowitz & Stegun 1964, table 25.4.
const EIGHT: Rule = {
  nodes: [0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363],
  weights: [0.362683783378362, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763],
};
const TWELVE: Rule = {
  nodes: [
    0.1252334085114689, 0.3678314989981802, 0.5873179542866175, 0.7699026741943047, 0.9041172563704749,
    0.9815606342467192,
  ],
  weights: [
    0.2491470458134028, 0.2334925365383548, 0.2031674267230659, 0.1600783285433462, 0.1069393259953184,
    0.0471753363865118,
  ],
};
const TWENTY: Rule = {
  nodes: [
    0.0765265211334973, 0.2277858511416451, 0.3737060887154195, 0.5108670019508271, 0.636053680726515,
    0.7463319064601508, 0.8391169718222188, 0.9122344282513259, 0.9639719272779138, 0.9931285991850949,
  ],
  weights: [
    0.1527533871307258, 0.1491729864726037, 0.1420961093183821, 0.1316886384491766, 0.1181945319615184,
    0.1019301198172404, 0.0832767415767048, 0.0626720483341091, 0.0406014298003869, 0.0176140071391521,
  ],
};

/** Up to here eight points are good to seven digits, and twelve. */
const GENTLE = 0.95;
const STEEP = 0.99;
/** Closer to one than this the two are taken as one, up to 0.0023 too much. */
const AS_ONE = 0.9999;

/**
 * P(X <= h and Y <= k) for standard normal X and Y of correlation rho, to about seven digits from -0.9999 to 0.9999.
 * Phi(h) Phi(k) + 1/(2 pi) times the integral of exp(-(h^2 + k^2 - 2 h k sin t) / (2 cos^2 t)) over t from 0 to asin rho
 * (Drezner & Wesolowsky 1990, J. Stat. Comput. Simul. 35:101), here over u = tan(t / 2): then it is gentler towards its end, and needs
 * no sine.
 */
export function bothBelow(h: number, k: number, rho: number): number {
  if (rho > AS_ONE) return normalCdf(Math.min(h, k));
  const r = Math.max(-AS_ONE, rho);
  const { nodes, weights } = ruleFor(Math.abs(r));
  const half = r / (1 + Math.sqrt(1 - r * r)) / 2;
  const squares = (h * h + k * k) / 2;
  const product = h * k;
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const step = half * (nodes[i] as number);
    sum +=
      (weights[i] as number) * (bell(squares, product, half - step) + bell(squares, product, half + step));
  }
  return Math.min(1, Math.max(0, normalCdf(h) * normalCdf(k) + (half * sum) / Math.PI));
}

const ruleFor = (size: number): Rule => (size <= GENTLE ? EIGHT : size <= STEEP ? TWELVE : TWENTY);

/** Half of the integrand over u. */
function bell(squares: number, product: number, u: number): number {
  const q = 1 + u * u;
  const sine = (2 * u) / q;
  const cosine = (1 - u * u) / q;
  return Math.exp((product * sine - squares) / (cosine * cosine)) / q;
}
