/** One side of the saddled horse: what all cinches of an order share. */
import type { Facts } from '../horse/facts.ts';
import { movesOf, type Moves } from './moves.ts';
import type { Unrolled } from './spots.ts';

export interface Side extends Unrolled {
  readonly facts: Facts;
  readonly moves: Moves;
  /** Least clearances. */
  readonly skinFloor: number;
  readonly muscleFloor: number;
  /** Highest chance we state. */
  readonly mostSure: number;
  /** Spread of the latigo run. */
  readonly runSd: number;
  /** By strands and layers, each solved once. */
  readonly lowFlares: Map<string, number>;
}

/** Computed once per order. */
export function sideOf(facts: Facts): Side {
  const { model, k, elbowLine, centreLine, elbowStation, lengthNeed } = facts;
  return {
    facts,
    line: elbowLine,
    slope: centreLine.slope,
    armpit: model['armpit-station'] * k,
    elbow: elbowStation,
    moves: movesOf(facts),
    skinFloor: facts.floor,
    muscleFloor: model['muscle-floor'] * k,
    mostSure: model['chance-most'],
    runSd: Math.hypot(lengthNeed.target.sd, lengthNeed.stretch / 2) / 2,
    lowFlares: new Map(),
  };
}
