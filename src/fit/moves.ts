/** How far the uncertain inputs move a gap: the first-order part of its spread, added up over all inputs once an order. */
import type { Facts } from '../facts/facts.ts';
import type { Gap } from './gap.ts';

/** How far a gap moves with each thing that the inputs move. */
export interface Follows {
  /** Per inch of elbow room. */
  room: number;
  /** Per inch that the centre line leans further forward in an inch of station. */
  slope: number;
  /** Per share by which cords are wider than thought. */
  width: number;
  /** Per share by which the corners of the elbow line move away from the room's edge. */
  grown: number;
}

/** Of each two of these things, how far all inputs move them together: the sum of the products of what one sd of each does. */
export interface Moves {
  readonly roomRoom: number;
  readonly roomSlope: number;
  readonly roomGrown: number;
  readonly slopeSlope: number;
  readonly slopeGrown: number;
  readonly grownGrown: number;
  readonly widthWidth: number;
  /** The room's edge. */
  readonly roomAt: number;
}

/** Moves of one order. */
export function movesOf({ spread, ring, centreLine, room, k }: Facts): Moves {
  const station = ring.station.value;
  let roomRoom = 0;
  let roomSlope = 0;
  let roomGrown = 0;
  let slopeSlope = 0;
  let slopeGrown = 0;
  let grownGrown = 0;
  let widthWidth = 0;
  for (const row of spread) {
    const slope =
      row.ringX / station -
      (ring.x * row.ringStation) / (station * station) +
      row.push / centreLine.pushStation;
    const grown = row.k / k;
    roomRoom += row.room * row.room;
    roomSlope += row.room * slope;
    roomGrown += row.room * grown;
    slopeSlope += slope * slope;
    slopeGrown += slope * grown;
    grownGrown += grown * grown;
    // One input alone moves widths, the width of a strand, and it moves nothing else.
    widthWidth += row.width * row.width;
  }
  return {
    roomRoom,
    roomSlope,
    roomGrown,
    slopeSlope,
    slopeGrown,
    grownGrown,
    widthWidth,
    roomAt: room.value,
  };
}

/**
 * Writes how a gap follows. By the envelope theorem the nearest points may be held where they are on their segments: only
 * the points themselves move.
 * @param bodyWidth the cinch's width at the gap, 0 on the buckle
 */
export function followInto(
  follows: Follows,
  { distance, px, ps, qx, qs }: Gap,
  { moves, bodyWidth }: { moves: Moves; bodyWidth: number },
): void {
  // Over the elbow line the gap is an overlap along x.
  const alongX = distance > 0 ? (qx - px) / distance : 1;
  const alongS = distance > 0 ? (qs - ps) / distance : 0;
  follows.room = alongX;
  follows.slope = -alongX * ps;
  follows.width = (-alongX * bodyWidth) / 2;
  follows.grown = alongX * (qx - moves.roomAt) + alongS * qs;
}

/** How far two gaps move together: their covariance, or of a gap with itself the square of its sd. */
export const together = (a: Follows, b: Follows, moves: Moves): number =>
  a.room * (moves.roomRoom * b.room + moves.roomSlope * b.slope + moves.roomGrown * b.grown) +
  a.slope * (moves.roomSlope * b.room + moves.slopeSlope * b.slope + moves.slopeGrown * b.grown) +
  a.grown * (moves.roomGrown * b.room + moves.slopeGrown * b.slope + moves.grownGrown * b.grown) +
  a.width * moves.widthWidth * b.width;
