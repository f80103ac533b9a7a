/** Elbow clearance: true least distance between leading edge and elbow line, signed, with its first-order spread. */
import { nearestInto, newNearest } from '../geometry/polyline.ts';
import type { Facts } from '../facts/facts.ts';
import { bothBelow } from '../geometry/normal-pair.ts';
import { normalCdf } from '../geometry/normal.ts';
import { widthAt, type Shape } from '../stock/outline.ts';
import { flareEdge, pinchedEdge } from './edges.ts';
import type { SpreadRow } from '../facts/spread.ts';
import type { Clearance } from './candidate.ts';

/** Nearest pair of points: p on the leading edge, q on the elbow line; `distance` is negative where the cinch lies over it. */
export interface Gap {
  distance: number;
  px: number;
  ps: number;
  qx: number;
  qs: number;
}

const scratch = newNearest();

/**
 * Signed gap between a leading edge and an elbow line, both flat [x, s, ...] with rising stations (frame corners share one).
 * Where they overlap: minus the greatest overlap along x, so that the gap passes smoothly through zero.
 */
export function gapBetween(edge: Float64Array, elbow: Float64Array): Gap {
  const over = overlap(edge, elbow);
  if (over.distance < 0) return over;
  nearestInto(scratch, edge, elbow);
  return {
    distance: scratch.distance,
    px: scratch.ax,
    ps: scratch.ay,
    qx: scratch.bx,
    qs: scratch.by,
  };
}

/** Greatest overlap along x at the corners of either line: between corners both are straight, so it is greatest there. */
function overlap(edge: Float64Array, elbow: Float64Array): Gap {
  const worst: Gap = { distance: 0, px: 0, ps: 0, qx: 0, qs: 0 };
  for (let i = 0; i < edge.length; i += 2) {
    const s = edge[i + 1] as number;
    keep(worst, { x: edge[i] as number, at: forwardAt(elbow, s), s });
  }
  for (let i = 2; i < edge.length; i += 2) overlapOnSegment(worst, i, { edge, elbow });
  return worst;
}

/** Corners of the elbow line beside the edge's segment that ends at index `i`. */
function overlapOnSegment(
  worst: Gap,
  i: number,
  { edge, elbow }: { edge: Float64Array; elbow: Float64Array },
): void {
  const low = edge[i - 1] as number;
  const high = edge[i + 1] as number;
  if (high === low) return;
  const from = edge[i - 2] as number;
  const slope = ((edge[i] as number) - from) / (high - low);
  for (let j = 0; j < elbow.length; j += 2) {
    const s = elbow[j + 1] as number;
    if (s >= low && s <= high) keep(worst, { x: from + slope * (s - low), at: elbow[j] as number, s });
  }
}

function keep(gap: Gap, { x, at, s }: { x: number; at: number; s: number }): void {
  if (at - x >= gap.distance) return;
  gap.distance = at - x;
  gap.px = x;
  gap.qx = at;
  gap.ps = s;
  gap.qs = s;
}

/** x of a line with rising stations at station s, held level beyond its ends. */
function forwardAt(line: Float64Array, s: number): number {
  for (let i = 3; i < line.length; i += 2) {
    const high = line[i] ?? 0;
    if (s > high && i < line.length - 2) continue;
    const low = line[i - 2] ?? 0;
    const from = line[i - 3] ?? 0;
    return from + (((line[i - 1] ?? 0) - from) * (s - low)) / (high - low);
  }
  return line[0] ?? 0;
}

/**
 * How far one sd of an input moves the gap. By the envelope theorem the nearest points may be held where they are on
 * their segments: only the points themselves move. `bodyWidth` is the cinch's width at p, 0 on the buckle.
 */
function gapShift(
  gap: Gap,
  row: SpreadRow,
  { facts, bodyWidth }: { facts: Facts; bodyWidth: number },
): number {
  const { ring, centreLine, room, k } = facts;
  const station = ring.station.value;
  const slope =
    row.ringX / station -
    (ring.x * row.ringStation) / (station * station) +
    row.push / centreLine.pushStation;
  const px = gap.ps * slope + (bodyWidth / 2) * row.width;
  const qx = row.room + ((gap.qx - room.value) / k) * row.k;
  const qs = (gap.qs / k) * row.k;
  if (gap.distance <= 0) return qx - px;
  return ((gap.qx - gap.px) * (qx - px) + (gap.qs - gap.ps) * qs) / gap.distance;
}

/** First-order sd of the gap over all inputs. */
export function gapSd(gap: Gap, facts: Facts, bodyWidth: number): number {
  let sum = 0;
  const at = { facts, bodyWidth };
  for (const row of facts.spread) sum += gapShift(gap, row, at) ** 2;
  return Math.sqrt(sum);
}

interface EdgeOf {
  readonly facts: Facts;
  readonly where: Clearance['where'];
  /** Width of the cinch along this edge, 0 on a buckle: how far it moves when strands are wider than thought. */
  readonly bodyWidth: number;
}

/** Clearance of one leading edge of one width, with its spread and the chance that it is at least the floor. */
export function clearanceOf(edge: Float64Array, { facts, where, bodyWidth }: EdgeOf): Clearance {
  const gap = gapBetween(edge, facts.elbowLine);
  const sd = gapSd(gap, facts, bodyWidth);
  const chance = normalCdf((gap.distance - facts.floor) / sd);
  return { inches: gap.distance, sd, chance, station: gap.ps, where };
}

/**
 * Clearance of a roper's cords. Its flare and its pinched part come near the elbow at different places, a low flare's
 * often equally near, since it is solved for that: so the chance is that both clear, not that the nearer one does.
 */
export function roperClearance(shape: Shape, facts: Facts): Clearance {
  const { slope } = facts.centreLine;
  const flare = frontOf(flareEdge(shape, slope), shape, facts);
  const pinched = frontOf(pinchedEdge(shape, slope), shape, facts);
  const { gap, sd } = flare.gap.distance <= pinched.gap.distance ? flare : pinched;
  return {
    inches: gap.distance,
    sd,
    chance: bothClear(flare, pinched, facts),
    station: gap.ps,
    where: 'cinch',
  };
}

interface Front {
  readonly gap: Gap;
  readonly sd: number;
  /** How far one sd of each input moves the gap. */
  readonly shifts: Float64Array;
}

function frontOf(edge: Float64Array, shape: Shape, facts: Facts): Front {
  const gap = gapBetween(edge, facts.elbowLine);
  const at = { facts, bodyWidth: widthAt(shape, gap.ps) };
  const shifts = new Float64Array(facts.spread.length);
  let sum = 0;
  for (let i = 0; i < shifts.length; i++) {
    const shift = gapShift(gap, facts.spread[i] as SpreadRow, at);
    shifts[i] = shift;
    sum += shift * shift;
  }
  return { gap, shifts, sd: Math.sqrt(sum) };
}

/** Further from the floor than this many spreads, a front adds less than a thousandth to the risk. */
const OUT_OF_REACH = 3.1;

function bothClear(a: Front, b: Front, { floor }: Facts): number {
  const first = (a.gap.distance - floor) / a.sd;
  const second = (b.gap.distance - floor) / b.sd;
  if (first > OUT_OF_REACH || second > OUT_OF_REACH) return normalCdf(Math.min(first, second));
  let common = 0;
  for (let i = 0; i < a.shifts.length; i++) common += (a.shifts[i] as number) * (b.shifts[i] as number);
  return bothBelow(first, second, common / (a.sd * b.sd));
}
