/** How far the uncertain inputs move a gap: the first-order part of its spread, added up over all inputs once an order. */
import type { Facts } from '../horse/facts.ts';
import type { Spot } from './spots.ts';

/** How far a gap moves with each thing that the inputs move. */
export interface Follows {
  /** Per inch of elbow room. */
  readonly room: number;
  /** Per inch that the center line leans further forward in an inch of station. */
  readonly slope: number;
  /** Per share by which cords are wider than thought. */
  readonly width: number;
  /** Per share by which the corners of the elbow line move away from the room's edge. */
  readonly grown: number;
  /** Per inch an inch by which the elbow line opens further above the elbow. */
  readonly opening: number;
}

/** Of each two of these things, how far all inputs move them together: the sum of the products of what one sd of each does. */
export interface Moves {
  readonly roomRoom: number;
  readonly roomSlope: number;
  readonly roomGrown: number;
  readonly slopeSlope: number;
  readonly slopeGrown: number;
  readonly grownGrown: number;
  /** One input alone moves widths, and one alone the opening; they move nothing else. */
  readonly widthWidth: number;
  readonly openingOpening: number;
  /** The room's edge, and the station of the elbow. */
  readonly roomAt: number;
  readonly elbowAt: number;
}

/** Moves of one order. */
export function movesOf({ spread, ring, centreLine, room, k, elbowStation }: Facts): Moves {
  const station = ring.station.value;
  const rows = spread.map((row) => ({
    room: row.room,
    slope:
      row.ringX / station -
      (ring.x * row.ringStation) / (station * station) +
      row.push / centreLine.pushStation,
    grown: row.k / k,
    width: row.width,
    opening: row.opening,
  }));
  type Thing = keyof (typeof rows)[number];
  const sum = (a: Thing, b: Thing): number => rows.reduce((all, row) => all + row[a] * row[b], 0);
  return {
    roomRoom: sum('room', 'room'),
    roomSlope: sum('room', 'slope'),
    roomGrown: sum('room', 'grown'),
    slopeSlope: sum('slope', 'slope'),
    slopeGrown: sum('slope', 'grown'),
    grownGrown: sum('grown', 'grown'),
    widthWidth: sum('width', 'width'),
    openingOpening: sum('opening', 'opening'),
    roomAt: room.value,
    elbowAt: elbowStation,
  };
}

/** How a spot's gap follows. By the envelope theorem the nearest point of the elbow line may be held: only the points themselves move. */
export function followsOf({ gap: { distance, elbowX, elbowS }, x, s, width }: Spot, moves: Moves): Follows {
  // Over the elbow line the gap is an overlap along x.
  const alongX = distance > 0 ? (elbowX - x) / distance : 1;
  const alongS = distance > 0 ? (elbowS - s) / distance : 0;
  return {
    room: alongX,
    slope: -alongX * s,
    width: (-alongX * width) / 2,
    grown: alongX * (elbowX - moves.roomAt) + alongS * elbowS,
    opening: alongX * Math.max(0, elbowS - moves.elbowAt),
  };
}

/** How far two gaps move together: their covariance, or of a gap with itself the square of its sd. */
export const together = (a: Follows, b: Follows, moves: Moves): number =>
  a.room * (moves.roomRoom * b.room + moves.roomSlope * b.slope + moves.roomGrown * b.grown) +
  a.slope * (moves.roomSlope * b.room + moves.slopeSlope * b.slope + moves.slopeGrown * b.grown) +
  a.grown * (moves.roomGrown * b.room + moves.slopeGrown * b.slope + moves.grownGrown * b.grown) +
  a.width * moves.widthWidth * b.width +
  a.opening * moves.openingOpening * b.opening;
