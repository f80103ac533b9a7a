/** One horse's side with the saddle on, ready for cinches to be laid on: what all candidates of an order share. */
import type { Facts } from '../horse/facts.ts';
import { movesOf, type Moves } from './moves.ts';
import type { Unrolled } from './spots.ts';

export interface Side extends Unrolled {
  readonly facts: Facts;
  readonly moves: Moves;
  /** Least clearance in the thin skin of armpit and elbow, and where the cinch lies against muscle. */
  readonly skinFloor: number;
  readonly muscleFloor: number;
  /** No chance is told as more than this. */
  readonly mostSure: number;
  /** Spread of the latigo run: of half the ring to ring, and of half the give. */
  readonly runSd: number;
  /** Where a low flare of so many strands and layers may begin: solved once each. */
  readonly lowFlares: Map<string, number>;
}

/** The side of an order. */
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
