/** Elbow clearance of a leading edge, with its first-order spread and the chance that it keeps the floor. */
import { bothBelow } from '../geometry/normal-pair.ts';
import { normalCdf } from '../geometry/normal.ts';
import type { Facts } from '../facts/facts.ts';
import { widthAt, type Shape } from '../stock/outline.ts';
import type { Clearance } from './candidate.ts';
import { flareEdge, pinchedEdge } from './edges.ts';
import { elbowGap } from './elbow-gap.ts';
import type { Gap } from './gap.ts';
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

/** Not reckoned yet. */
const OPEN = -1;

/** What was measured; the chance is reckoned when somebody asks, as what is refused has none to tell. */
class Measured implements Clearance {
  readonly inches: number;
  readonly sd: number;
  readonly station: number;
  readonly where: 'cinch' | 'buckle';
  /** How many spreads one front and the other lie above the floor, and how far they move together. */
  private readonly first: number;
  private readonly second: number;
  private readonly together: number;
  private reckoned = OPEN;

  constructor(
    { distance, sd, station }: Front,
    where: 'cinch' | 'buckle',
    [first, second, together]: Fronts,
  ) {
    this.inches = distance;
    this.sd = sd;
    this.station = station;
    this.where = where;
    this.first = first;
    this.second = second;
    this.together = together;
  }

  get chance(): number {
    if (this.reckoned === OPEN) this.reckoned = bothClear(this.first, this.second, this.together);
    return this.reckoned;
  }
}

type Fronts = readonly [first: number, second: number, together: number];

/** Further above the floor than this many spreads, a front adds less than a thousandth to the risk. */
const OUT_OF_REACH = 3.1;

const bothClear = (first: number, second: number, together: number): number =>
  first > OUT_OF_REACH || second > OUT_OF_REACH
    ? normalCdf(Math.min(first, second))
    : bothBelow(first, second, together);

/**
 * Clearance of one leading edge of one width.
 * @param bodyWidth the cinch's width along this edge, 0 on a buckle: how far it moves when strands are wider than thought
 */
export function clearanceOf(
  edge: Float64Array,
  bodyWidth: number,
  { elbowLine, floor, moves }: Field,
): Clearance {
  const front = measure(lone, elbowGap(edge, elbowLine), { bodyWidth, moves });
  const spreads = (front.distance - floor) / front.sd;
  return new Measured(front, bodyWidth === 0 ? 'buckle' : 'cinch', [spreads, Infinity, 1]);
}

/** First-order sd of a gap over all inputs. */
export const gapSd = (gap: Gap, bodyWidth: number, { moves }: Field): number =>
  measure(lone, gap, { bodyWidth, moves }).sd;

/** The front of a roper's pinched part as if it were pinched down to the midline; to be kept for all ropers of those strands. */
export function pinchedThroughout(width: number, top: number, field: Field): Front {
  return pinchedInto(newFront(), { full: width, pinched: width, fullUpTo: 0, pinchedFrom: 0, top }, field);
}

function pinchedInto(front: Front, shape: Shape, { elbowLine, slope, moves }: Field): Front {
  const gap = elbowGap(pinchedEdge(shape, slope), elbowLine);
  return measure(front, gap, { bodyWidth: shape.pinched, moves });
}

/**
 * Clearance of a roper's cords. Its flare and its pinched part come near the elbow at different places, a low flare's
 * often equally near, since it is solved for that: so the chance is that both clear, not that the nearer one does.
 * @param whole front of the same strands pinched throughout: where that comes nearest on the pinched part, it is its front
 */
export function roperClearance(shape: Shape, whole: Front, field: Field): Clearance {
  const { elbowLine, slope, floor, moves } = field;
  const gap = elbowGap(flareEdge(shape, slope), elbowLine);
  const flare = measure(flareFront, gap, { bodyWidth: widthAt(shape, gap.ps), moves });
  const same = whole.station >= shape.pinchedFrom && whole.station <= shape.top;
  const pinched = same ? whole : pinchedInto(pinchedFront, shape, field);
  return new Measured(flare.distance <= pinched.distance ? flare : pinched, 'cinch', [
    (flare.distance - floor) / flare.sd,
    (pinched.distance - floor) / pinched.sd,
    correlation(flare, pinched, moves.count),
  ]);
}

/** How far the two fronts move together. */
function correlation(flare: Front, pinched: Front, count: number): number {
  let common = 0;
  for (let i = 0; i < count; i++) common += (flare.shifts[i] as number) * (pinched.shifts[i] as number);
  return common / (flare.sd * pinched.sd);
}
