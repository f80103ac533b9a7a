/** Elbow clearance of a leading edge, with its first-order spread and the chance that it keeps the floor. */
import { bothBelow } from '../geometry/normal-pair.ts';
import { normalCdf } from '../geometry/normal.ts';
import type { Facts } from '../facts/facts.ts';
import { widthAt, type Shape } from '../stock/outline.ts';
import type { Clearance } from './candidate.ts';
import { flareEdge, pinchedEdge } from './edges.ts';
import { gapBetween, type Gap } from './gap.ts';
import { movesOf, shiftsInto, type Moves } from './moves.ts';

/** What every gap of one order is measured against. */
export interface Field {
  readonly elbowLine: Float64Array;
  readonly slope: number;
  readonly floor: number;
  readonly moves: Moves;
}

/** The field of an order. */
export const fieldOf = (facts: Facts): Field => ({
  elbowLine: facts.elbowLine,
  slope: facts.centreLine.slope,
  floor: facts.floor,
  moves: movesOf(facts),
});

// More inputs than the spread has.
const MOST_INPUTS = 16;

/** One part of a leading edge against the elbow line: how near, where, and what one sd of each input does to it. */
export interface Front {
  distance: number;
  /** Station of its nearest point. */
  station: number;
  sd: number;
  readonly shifts: number[];
}

const newFront = (): Front => ({
  distance: 0.5,
  station: 0.5,
  sd: 0.5,
  shifts: new Array<number>(MOST_INPUTS).fill(0.5),
});

// Hundreds of fronts are measured for one order and few are kept.
const lone = newFront();
const flareFront = newFront();
const pinchedFront = newFront();

/** Measures a front; `bodyWidth` is the cinch's width where it comes nearest. */
function measure(front: Front, gap: Gap, { bodyWidth, moves }: { bodyWidth: number; moves: Moves }): Front {
  front.distance = gap.distance;
  front.station = gap.ps;
  front.sd = shiftsInto(front.shifts, gap, { moves, bodyWidth });
  return front;
}

/**
 * Clearance of one leading edge of one width.
 * @param bodyWidth the cinch's width along this edge, 0 on a buckle: how far it moves when strands are wider than thought
 */
export function clearanceOf(edge: Float64Array, bodyWidth: number, field: Field): Clearance {
  const { distance, station, sd } = measure(lone, gapBetween(edge, field.elbowLine), {
    bodyWidth,
    moves: field.moves,
  });
  const chance = normalCdf((distance - field.floor) / sd);
  return { inches: distance, sd, chance, station, where: bodyWidth === 0 ? 'buckle' : 'cinch' };
}

/** First-order sd of a gap over all inputs. */
export const gapSd = (gap: Gap, bodyWidth: number, { moves }: Field): number =>
  measure(lone, gap, { bodyWidth, moves }).sd;

/** The front of a roper's pinched part as if it were pinched down to the midline; to be kept for all ropers of those strands. */
export function pinchedThroughout(width: number, top: number, field: Field): Front {
  return pinchedInto(newFront(), { full: width, pinched: width, fullUpTo: 0, pinchedFrom: 0, top }, field);
}

function pinchedInto(front: Front, shape: Shape, { elbowLine, slope, moves }: Field): Front {
  const gap = gapBetween(pinchedEdge(shape, slope), elbowLine);
  return measure(front, gap, { bodyWidth: shape.pinched, moves });
}

/**
 * Clearance of a roper's cords. Its flare and its pinched part come near the elbow at different places, a low flare's
 * often equally near, since it is solved for that: so the chance is that both clear, not that the nearer one does.
 * @param whole front of the same strands pinched throughout: where that comes nearest on the pinched part, it is its front
 */
export function roperClearance(shape: Shape, whole: Front, field: Field): Clearance {
  const { elbowLine, slope, moves } = field;
  const gap = gapBetween(flareEdge(shape, slope), elbowLine);
  const flare = measure(flareFront, gap, { bodyWidth: widthAt(shape, gap.ps), moves });
  const same = whole.station >= shape.pinchedFrom && whole.station <= shape.top;
  const pinched = same ? whole : pinchedInto(pinchedFront, shape, field);
  const { distance: inches, sd, station } = flare.distance <= pinched.distance ? flare : pinched;
  return { inches, sd, chance: bothClear(flare, pinched, field), station, where: 'cinch' };
}

/** Further from the floor than this many spreads, a front adds less than a thousandth to the risk. */
const OUT_OF_REACH = 3.1;

function bothClear(flare: Front, pinched: Front, { floor, moves }: Field): number {
  const first = (flare.distance - floor) / flare.sd;
  const second = (pinched.distance - floor) / pinched.sd;
  if (first > OUT_OF_REACH || second > OUT_OF_REACH) return normalCdf(Math.min(first, second));
  return bothBelow(first, second, correlation(flare, pinched, moves.count));
}

/** How far the two fronts move together. */
function correlation(flare: Front, pinched: Front, count: number): number {
  let common = 0;
  for (let i = 0; i < count; i++) common += (flare.shifts[i] as number) * (pinched.shifts[i] as number);
  return common / (flare.sd * pinched.sd);
}
