/** How much correlation raises the chance that two normal values stay below bounds. */
import { normalCdf } from './normal.ts';

/** Gauss-Legendre, twenty points, positive half with weights (A&S table 25.4). */
const POINTS = [
  [0.0765265211334973, 0.1527533871307258],
  [0.2277858511416451, 0.1491729864726037],
  [0.3737060887154195, 0.1420961093183821],
  [0.5108670019508271, 0.1316886384491766],
  [0.636053680726515, 0.1181945319615184],
  [0.7463319064601508, 0.1019301198172404],
  [0.8391169718222188, 0.0832767415767048],
  [0.9122344282513259, 0.0626720483341091],
  [0.9639719272779138, 0.0406014298003869],
  [0.9931285991850949, 0.0176140071391521],
] as const;

/** Above this a correlation counts as one, at most 0.0023 off. */
const AS_ONE = 0.9999;

/**
 * P(X <= h and Y <= k) less the product of both chances, to about seven digits: Drezner & Wesolowsky 1990, J.
 * Stat. Comput. Simul. 35:101, over u = tan(t / 2), which is smoother.
 */
export function gainedTogether(h: number, k: number, rho: number): number {
  if (rho > AS_ONE) return normalCdf(Math.min(h, k)) - normalCdf(h) * normalCdf(k);
  const r = Math.max(-AS_ONE, rho);
  const half = r / (1 + Math.sqrt(1 - r * r)) / 2;
  const squares = (h * h + k * k) / 2;
  let sum = 0;
  for (const [node, weight] of POINTS) {
    const step = half * node;
    sum += weight * (bell(squares, h * k, half - step) + bell(squares, h * k, half + step));
  }
  return (half * sum) / Math.PI;
}

function bell(squares: number, product: number, u: number): number {
  const q = 1 + u * u;
  const sine = (2 * u) / q;
  const cosine = (1 - u * u) / q;
  return Math.exp((product * sine - squares) / (cosine * cosine)) / q;
}
