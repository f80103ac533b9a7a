/** The spots of a cinch that can be nearest the elbow. */
import type { ElbowLine } from '../horse/elbow-line.ts';
import type { Buckle } from '../order/types.ts';
import { widthAt, type Shape } from './outline.ts';
import { elbowGap, type ElbowGap } from './elbow-gap.ts';

export interface Unrolled {
  readonly line: ElbowLine;
  /** The center line is `x = slope s`. */
  readonly slope: number;
  /** Stations. */
  readonly armpit: number;
  readonly elbow: number;
}

export interface Spot {
  readonly part: 'cords' | 'frame';
  /** Up to the point of the elbow. */
  readonly skin: boolean;
  readonly x: number;
  readonly s: number;
  /** Of the strands; 0 on the frame. */
  readonly width: number;
  readonly gap: ElbowGap;
}

/** Straight between its corners. */
interface Edge {
  readonly xAt: (s: number) => number;
  readonly spotAt: (s: number) => Spot;
}

/** Of the strands. */
export function cordSpots(shape: Shape, side: Unrolled): Spot[] {
  const { slope, line, armpit, elbow } = side;
  const xAt = (s: number): number => slope * s + widthAt(shape, s) / 2;
  const spotAt = (s: number): Spot => {
    const x = xAt(s);
    return { part: 'cords', skin: s <= elbow, x, s, width: widthAt(shape, s), gap: elbowGap(x, s, line) };
  };
  const { fullUpTo, pinchedFrom, top } = shape;
  const spots = [spotAt(0), spotAt(pinchedFrom), spotAt(top)];
  if (armpit < top) spots.push(spotAt(armpit));
  if (elbow < top) spots.push(spotAt(elbow));
  if (fullUpTo > 0) spots.push(spotAt(fullUpTo));
  addSquare(spots, { xAt, spotAt, from: 0, to: fullUpTo }, side);
  addSquare(spots, { xAt, spotAt, from: fullUpTo, to: pinchedFrom }, side);
  addSquare(spots, { xAt, spotAt, from: pinchedFrom, to: top }, side);
  return spots;
}

/** Of a frame with its low edge at `low`. */
export function frameSpots(
  { frameWidth, frameHeight }: Pick<Buckle, 'frameWidth' | 'frameHeight'>,
  low: number,
  side: Unrolled,
): Spot[] {
  const { slope, line, armpit, elbow } = side;
  const xAt = (s: number): number => slope * s + frameWidth / 2;
  const spotAt = (s: number): Spot => {
    const x = xAt(s);
    return { part: 'frame', skin: false, x, s, width: 0, gap: elbowGap(x, s, line) };
  };
  const high = low + frameHeight;
  const spots = [spotAt(low), spotAt(high)];
  if (armpit > low && armpit < high) spots.push(spotAt(armpit));
  if (elbow > low && elbow < high) spots.push(spotAt(elbow));
  addSquare(spots, { xAt, spotAt, from: low, to: high }, side);
  return spots;
}

/** Points square to a corner of the elbow line. */
function addSquare(
  spots: Spot[],
  { xAt, spotAt, from, to }: Edge & { readonly from: number; readonly to: number },
  { line, armpit, elbow }: Unrolled,
): void {
  const room = line[2] as number;
  const x = xAt(from);
  const [ux, us] = [xAt(to) - x, to - from];
  for (const corner of [armpit, elbow]) {
    const t = ((room - x) * ux + (corner - from) * us) / (ux * ux + us * us);
    if (t > 0 && t < 1) spots.push(spotAt(from + t * us));
  }
}
