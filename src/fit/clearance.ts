/** Elbow clearance of a leading edge, with its first-order spread and the chance that it keeps the floor. */
import { bothBelow } from '../geometry/normal-pair.ts';
import { normalCdf } from '../geometry/normal.ts';
import type { Facts } from '../facts/facts.ts';
import { widthAt, type Shape } from '../stock/outline.ts';
import type { Clearance } from './candidate.ts';
import { flareEdge, pinchedEdge } from './edges.ts';
import { elbowGap } from './elbow-gap.ts';
import type { Gap } from './gap.ts';
import { followInto, movesOf, together, type Follows, type Moves } from './moves.ts';

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

/** One part of a leading edge against the elbow line: how near, where, and how it follows what the inputs move. */
export interface Front extends Follows {
  distance: number;
  /** Station of its nearest point. */
  station: number;
  sd: number;
}

const newFront = (): Front => ({
  distance: 0.5,
  station: 0.5,
  sd: 0.5,
  room: 0.5,
  slope: 0.5,
  width: 0.5,
  grown: 0.5,
});

// Hundreds of fronts are measured for one order and few are kept.
const lone = newFront();
const flareFront = newFront();
const pinchedFront = newFront();

/** Measures a front; `bodyWidth` is the cinch's width where it comes nearest. */
function measure(front: Front, gap: Gap, by: { bodyWidth: number; moves: Moves }): Front {
  front.distance = gap.distance;
  front.station = gap.ps;
  followInto(front, gap, by);
  front.sd = Math.sqrt(together(front, front, by.moves));
  return front;
}

/** How many spreads one front and the other lie above the floor, and how far they move together: the correlation. */
interface Risk {
  first: number;
  second: number;
  together: number;
}
const riskOfOne: Risk = { first: 0.5, second: Infinity, together: 1 };
const riskOfBoth: Risk = { first: 0.5, second: 0.5, together: 0.5 };

/** Not reckoned yet. */
const OPEN = -1;

/** What was measured; the chance is reckoned when somebody asks, as what is refused has none to tell. */
class Measured implements Clearance {
  readonly inches: number;
  readonly sd: number;
  readonly station: number;
  readonly where: 'cinch' | 'buckle';
  private readonly first: number;
  private readonly second: number;
  private readonly together: number;
  private reckoned = OPEN;

  constructor({ distance, sd, station }: Front, where: 'cinch' | 'buckle', risk: Risk) {
    this.inches = distance;
    this.sd = sd;
    this.station = station;
    this.where = where;
    this.first = risk.first;
    this.second = risk.second;
    this.together = risk.together;
  }

  get chance(): number {
    if (this.reckoned === OPEN) this.reckoned = bothClear(this.first, this.second, this.together);
    return this.reckoned;
  }
}

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
  riskOfOne.first = (front.distance - floor) / front.sd;
  return new Measured(front, bodyWidth === 0 ? 'buckle' : 'cinch', riskOfOne);
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
  riskOfBoth.first = (flare.distance - floor) / flare.sd;
  riskOfBoth.second = (pinched.distance - floor) / pinched.sd;
  riskOfBoth.together = together(flare, pinched, moves) / (flare.sd * pinched.sd);
  return new Measured(flare.distance <= pinched.distance ? flare : pinched, 'cinch', riskOfBoth);
}
