/** The gap to an order's elbow line, by that line's form: it bulges towards the cinch, so heights and slants tell what is nearest. */
import type { ElbowLine } from '../facts/elbow-line.ts';
import { gapBetween, type Gap } from './gap.ts';

/* The elbow line's corners in its array: upright between these two, it opens away from the cinch below and above. */
const ARMPIT = 2;
const ELBOW = 4;

// Hundreds of gaps are measured for one order and none is kept. The distance is squared until all pieces were looked at.
const gap: Gap = { distance: 0.5, px: 0.5, ps: 0.5, qx: 0.5, qs: 0.5 };

/**
 * As `gapBetween`, several times faster; valid until the next call. Only for edges whose corners lie no lower than the
 * midline, and for an elbow line as an order has it.
 */
export function elbowGap(edge: Float64Array, elbow: ElbowLine): Gap {
  gap.distance = Infinity;
  for (let i = 0; i + 3 < edge.length; i += 2)
    if (!nearestOfPiece(edge, i, elbow)) return gapBetween(edge, elbow);
  gap.distance = Math.sqrt(gap.distance);
  return gap;
}

/** Nearer to upright than this, places all along the middle are equally near but for rounding: `gapBetween` takes the first. */
const UPRIGHT = 1e-12;

/**
 * Keeps where the piece that begins at index i comes nearest, if that is nearer than the pieces before; false where it
 * does not tell. Along a straight piece the distance from a bulging line falls and then rises, and is least at the foot
 * of the corner that bulges furthest towards the piece: so the nearest is that foot, or the end that is nearer to it.
 */
function nearestOfPiece(edge: Float64Array, i: number, elbow: ElbowLine): boolean {
  const x = edge[i] as number;
  const s = edge[i + 1] as number;
  const ux = (edge[i + 2] as number) - x;
  const us = (edge[i + 3] as number) - s;
  const low = i;
  const high = i + 2;
  if (us <= 0) return nearestAtEnd(edge, high, elbow); // the underside of a frame
  if (Math.abs(ux) <= UPRIGHT * us) return false;
  const back = elbow[ARMPIT] as number;
  // It leans more than the line opens, and so comes nearer and nearer.
  if (ux * ((elbow[7] as number) - (elbow[5] as number)) >= us * ((elbow[6] as number) - back))
    return nearestAtEnd(edge, high, elbow);
  if (ux * (elbow[3] as number) <= us * (back - (elbow[0] as number))) return nearestAtEnd(edge, low, elbow);
  const corner = ux > 0 ? ELBOW : ARMPIT;
  const cx = back - x;
  const cs = (elbow[corner + 1] as number) - s;
  if (cx * us > cs * ux) {
    const dot = cx * ux + cs * us;
    const length = ux * ux + us * us;
    if (dot <= 0) return nearestAtEnd(edge, low, elbow);
    if (dot >= length) return nearestAtEnd(edge, high, elbow);
    const t = dot / length;
    const dx = cx - t * ux;
    const ds = cs - t * us;
    const squared = dx * dx + ds * ds;
    if (squared >= gap.distance) return true;
    gap.distance = squared;
    gap.px = x + t * ux;
    gap.ps = s + t * us;
    gap.qx = back;
    gap.qs = elbow[corner + 1] as number;
    return true;
  }
  // Made longer it would run over the elbow line, beyond the end that is nearer to the corner.
  if (cs <= 0) return nearestAtEnd(edge, low, elbow);
  return cs >= us && nearestAtEnd(edge, high, elbow);
}

/** The same for the end of a piece at index i; false where it lies over the elbow line. */
function nearestAtEnd(edge: Float64Array, i: number, elbow: ElbowLine): boolean {
  const x = edge[i] as number;
  const s = edge[i + 1] as number;
  const back = elbow[ARMPIT] as number;
  if (s < 0 || s > (elbow[7] as number)) return false;
  let qx = back;
  let qs = s;
  const below = s < (elbow[3] as number);
  if (below || s > (elbow[5] as number)) {
    const far = below ? 0 : 6;
    const cs = elbow[below ? 3 : 5] as number;
    const ux = (elbow[far] as number) - back;
    const us = (elbow[far + 1] as number) - cs;
    const dx = x - back;
    const ds = s - cs;
    if (dx * Math.abs(us) >= ux * Math.abs(ds)) return false;
    const dot = dx * ux + ds * us;
    const t = dot > 0 ? dot / (ux * ux + us * us) : 0;
    qx = back + t * ux;
    qs = cs + t * us;
  } else if (x >= back) return false;
  const squared = (x - qx) * (x - qx) + (s - qs) * (s - qs);
  if (squared < gap.distance) {
    gap.distance = squared;
    gap.px = x;
    gap.ps = s;
    gap.qx = qx;
    gap.qs = qs;
  }
  return true;
}
