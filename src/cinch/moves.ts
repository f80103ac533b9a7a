/** How uncertain inputs move a gap at the elbow, to first order. */
import type { Facts } from '../horse/facts.ts';
import type { Spot } from './spots.ts';

export interface Follows {
  /** Per inch of elbow room. */
  readonly room: number;
  /** Per unit of the center line's slope. */
  readonly slope: number;
  /** Per share of width. */
  readonly width: number;
  /** Per share by which the elbow line's corners move away. */
  readonly grown: number;
  /** Per inch per inch of opening above the elbow. */
  readonly opening: number;
}

/** Sums of products of what one sd of each input moves. */
export interface Moves {
  readonly roomRoom: number;
  readonly roomSlope: number;
  readonly roomGrown: number;
  readonly slopeSlope: number;
  readonly slopeGrown: number;
  readonly grownGrown: number;
  /** Each depends on one input. */
  readonly widthWidth: number;
  readonly openingOpening: number;
  readonly roomAt: number;
  readonly elbowAt: number;
}

/** Computed once per order. */
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

/** By the envelope theorem, holds the nearest elbow point fixed. */
export function followsOf({ gap: { distance, elbowX, elbowS }, x, s, width }: Spot, moves: Moves): Follows {
  // Over the elbow line, the gap runs along x.
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

/** Covariance of two gaps. */
export const together = (a: Follows, b: Follows, moves: Moves): number =>
  a.room * (moves.roomRoom * b.room + moves.roomSlope * b.slope + moves.roomGrown * b.grown) +
  a.slope * (moves.roomSlope * b.room + moves.slopeSlope * b.slope + moves.slopeGrown * b.grown) +
  a.grown * (moves.roomGrown * b.room + moves.slopeGrown * b.slope + moves.grownGrown * b.grown) +
  a.width * moves.widthWidth * b.width +
  a.opening * moves.openingOpening * b.opening;
