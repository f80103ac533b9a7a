/** The leading edges of a laid cinch on the unrolled side: of the cords, and of the buckle's frame. */
import type { Buckle } from '../order/types.ts';
import type { Shape } from '../stock/outline.ts';

/*
 * Hundreds of edges are measured for one order and none is kept, so each kind is written into one array that the next
 * call writes again: making typed arrays would cost more than measuring them.
 */
const plain = new Float64Array(4);
const flared = new Float64Array(8);
const flare = new Float64Array(6);
const frame = new Float64Array(6);

/** Leading edge of the cords on a centre line `x = slope s`: flat [x, s, ...] from the midline up; valid until the next call. */
export function bodyEdge({ full, pinched, fullUpTo, pinchedFrom, top }: Shape, slope: number): Float64Array {
  const wide = full / 2;
  const narrow = pinched / 2;
  const edge = pinchedFrom <= fullUpTo ? plain : flared;
  edge[0] = wide;
  edge[1] = 0;
  if (edge === flared) {
    edge[2] = slope * fullUpTo + wide;
    edge[3] = fullUpTo;
    edge[4] = slope * pinchedFrom + narrow;
    edge[5] = pinchedFrom;
  }
  edge[edge.length - 2] = slope * top + narrow;
  edge[edge.length - 1] = top;
  return edge;
}

/** The part of a roper's leading edge up to where it is pinched; valid until the next call. */
export function flareEdge({ full, pinched, fullUpTo, pinchedFrom }: Shape, slope: number): Float64Array {
  flare[0] = full / 2;
  flare[1] = 0;
  flare[2] = slope * fullUpTo + full / 2;
  flare[3] = fullUpTo;
  flare[4] = slope * pinchedFrom + pinched / 2;
  flare[5] = pinchedFrom;
  return flare;
}

/** The pinched part of a roper's leading edge, up to the buckle; valid until the next call. */
export function pinchedEdge({ pinched, pinchedFrom, top }: Shape, slope: number): Float64Array {
  plain[0] = slope * pinchedFrom + pinched / 2;
  plain[1] = pinchedFrom;
  plain[2] = slope * top + pinched / 2;
  plain[3] = top;
  return plain;
}

/** Lower and leading edge of a buckle's frame whose low edge lies at station `low`; valid until the next call. */
export function frameEdge({ frameWidth, frameHeight }: Buckle, low: number, slope: number): Float64Array {
  const high = low + frameHeight;
  const half = frameWidth / 2;
  frame[0] = slope * low;
  frame[1] = low;
  frame[2] = slope * low + half;
  frame[3] = low;
  frame[4] = slope * high + half;
  frame[5] = high;
  return frame;
}
