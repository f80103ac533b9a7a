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
const shifts = new Float64Array(MOST_INPUTS);
const flareShifts = new Float64Array(MOST_INPUTS);
const pinchedShifts = new Float64Array(MOST_INPUTS);

/**
 * Clearance of one leading edge of one width.
 * @param bodyWidth the cinch's width along this edge, 0 on a buckle: how far it moves when strands are wider than thought
 */
export function clearanceOf(edge: Float64Array, bodyWidth: number, field: Field): Clearance {
  const gap = gapBetween(edge, field.elbowLine);
  const { distance, ps } = gap;
  const sd = gapSd(gap, bodyWidth, field);
  const chance = normalCdf((distance - field.floor) / sd);
  return { inches: distance, sd, chance, station: ps, where: bodyWidth === 0 ? 'buckle' : 'cinch' };
}

/** First-order sd of a gap over all inputs. */
export const gapSd = (gap: Gap, bodyWidth: number, { moves }: Field): number =>
  shiftsInto(shifts, gap, { moves, bodyWidth });

/**
 * Clearance of a roper's cords. Its flare and its pinched part come near the elbow at different places, a low flare's
 * often equally near, since it is solved for that: so the chance is that both clear, not that the nearer one does.
 */
export function roperClearance(shape: Shape, field: Field): Clearance {
  const { elbowLine, slope, moves } = field;
  const flare = gapBetween(flareEdge(shape, slope), elbowLine);
  const { distance: flareGap, ps: flareAt } = flare;
  const flareSd = shiftsInto(flareShifts, flare, { moves, bodyWidth: widthAt(shape, flareAt) });
  const pinched = gapBetween(pinchedEdge(shape, slope), elbowLine);
  const { distance: pinchedGap, ps: pinchedAt } = pinched;
  const pinchedSd = shiftsInto(pinchedShifts, pinched, { moves, bodyWidth: widthAt(shape, pinchedAt) });
  const flareIsNearer = flareGap <= pinchedGap;
  return {
    inches: flareIsNearer ? flareGap : pinchedGap,
    sd: flareIsNearer ? flareSd : pinchedSd,
    chance: bothClear((flareGap - field.floor) / flareSd, (pinchedGap - field.floor) / pinchedSd, () =>
      correlation(moves.count, flareSd, pinchedSd),
    ),
    station: flareIsNearer ? flareAt : pinchedAt,
    where: 'cinch',
  };
}

/** Further from the floor than this many spreads, a front adds less than a thousandth to the risk. */
const OUT_OF_REACH = 3.1;

function bothClear(flare: number, pinched: number, together: () => number): number {
  if (flare > OUT_OF_REACH || pinched > OUT_OF_REACH) return normalCdf(Math.min(flare, pinched));
  return bothBelow(flare, pinched, together());
}

/** How far the two fronts move together. */
function correlation(count: number, flareSd: number, pinchedSd: number): number {
  let common = 0;
  for (let i = 0; i < count; i++) common += (flareShifts[i] as number) * (pinchedShifts[i] as number);
  return common / (flareSd * pinchedSd);
}
