/** How far each uncertain input moves a gap: the first-order part of its spread, laid out for hundreds of gaps. */
import type { Facts } from '../facts/facts.ts';
import type { Gap } from './gap.ts';

/** For one sd of each input, inches: of the centre line per inch of station, of the elbow line, of half a cinch's width. */
export interface Moves {
  readonly count: number;
  readonly slope: readonly number[];
  readonly room: readonly number[];
  /** Share by which the corners of the elbow line move away from the room's edge. */
  readonly grown: readonly number[];
  readonly halfWidth: readonly number[];
  readonly roomAt: number;
}

/** Moves of one order. */
export function movesOf({ spread, ring, centreLine, room, k }: Facts): Moves {
  const station = ring.station.value;
  return {
    count: spread.length,
    slope: spread.map(
      (row) =>
        row.ringX / station -
        (ring.x * row.ringStation) / (station * station) +
        row.push / centreLine.pushStation,
    ),
    room: spread.map((row) => row.room),
    grown: spread.map((row) => row.k / k),
    halfWidth: spread.map((row) => row.width / 2),
    roomAt: room.value,
  };
}

/**
 * Writes how far one sd of each input moves the gap, and returns the gap's sd. By the envelope theorem the nearest
 * points may be held where they are on their segments: only the points themselves move.
 * @param shifts one number an input, written
 * @param bodyWidth the cinch's width at the gap, 0 on the buckle
 */
export function shiftsInto(
  shifts: number[],
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
