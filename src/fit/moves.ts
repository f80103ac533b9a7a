/** How far each uncertain input moves a gap: the first-order part of its spread, laid out for hundreds of gaps. */
import type { Facts } from '../facts/facts.ts';
import type { Gap } from './gap.ts';

/** For one sd of each input, inches: of the centre line per inch of station, of the elbow line, of half a cinch's width. */
export interface Moves {
  readonly count: number;
  readonly slope: Float64Array;
  readonly room: Float64Array;
  /** Share by which the corners of the elbow line move away from the room's edge. */
  readonly grown: Float64Array;
  readonly halfWidth: Float64Array;
  readonly roomAt: number;
}

/** Moves of one order. */
export function movesOf({ spread, ring, centreLine, room, k }: Facts): Moves {
  const station = ring.station.value;
  const count = spread.length;
  const moves = {
    count,
    slope: new Float64Array(count),
    room: new Float64Array(count),
    grown: new Float64Array(count),
    halfWidth: new Float64Array(count),
    roomAt: room.value,
  };
  for (let i = 0; i < count; i++) {
    const row = spread[i] as (typeof spread)[number];
    moves.slope[i] =
      row.ringX / station -
      (ring.x * row.ringStation) / (station * station) +
      row.push / centreLine.pushStation;
    moves.room[i] = row.room;
    moves.grown[i] = row.k / k;
    moves.halfWidth[i] = row.width / 2;
  }
  return moves;
}

/**
 * Writes how far one sd of each input moves the gap, and returns the gap's sd. By the envelope theorem the nearest
 * points may be held where they are on their segments: only the points themselves move.
 * @param shifts one number an input, written
 * @param bodyWidth the cinch's width at the gap, 0 on the buckle
 */
export function shiftsInto(
  shifts: Float64Array,
  { distance, px, ps, qx, qs }: Gap,
  { moves, bodyWidth }: { moves: Moves; bodyWidth: number },
): number {
  const { count, slope, room, grown, halfWidth, roomAt } = moves;
  // Over the elbow line the gap is an overlap along x.
  const alongX = distance > 0 ? (qx - px) / distance : 1;
  const alongS = distance > 0 ? (qs - ps) / distance : 0;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const more = grown[i] as number;
    const edge = ps * (slope[i] as number) + bodyWidth * (halfWidth[i] as number);
    const elbow = (room[i] as number) + (qx - roomAt) * more;
    const shift = alongX * (elbow - edge) + alongS * qs * more;
    shifts[i] = shift;
    sum += shift * shift;
  }
  return Math.sqrt(sum);
}
