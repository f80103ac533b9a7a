/** Seeded Monte Carlo of the elbow clearance: the whole geometry again for every draw, as a check on the first-order spread. */
import type { Candidate } from '../fit/candidate.ts';
import { bodyEdge, frameEdge } from '../fit/edges.ts';
import { gapBetween } from '../fit/gap.ts';
import { elbowLineOf } from '../facts/elbow-line.ts';
import type { Facts } from '../facts/facts.ts';
import { seededRandom } from '../geometry/random.ts';

export interface Simulated {
  readonly mean: number;
  readonly sd: number;
  /** Share of draws that clear the floor. */
  readonly chance: number;
  readonly draws: number;
  readonly seed: number;
}

/** Draws every uncertain input independently from a normal distribution and lays the finished cinch on each horse. */
export function simulateClearance(
  candidate: Candidate,
  facts: Facts,
  { draws, seed }: { draws: number; seed: number },
): Simulated {
  const random = seededRandom(seed);
  let sum = 0;
  let squares = 0;
  let clear = 0;
  for (let i = 0; i < draws; i++) {
    const inches = drawClearance(candidate, facts, () => random.normal());
    sum += inches;
    squares += inches * inches;
    if (inches >= facts.floor) clear++;
  }
  const mean = sum / draws;
  return {
    mean,
    sd: Math.sqrt(Math.max(0, squares / draws - mean * mean)),
    chance: clear / draws,
    draws,
    seed,
  };
}

function drawClearance(candidate: Candidate, facts: Facts, normal: () => number): number {
  const { model, girth, room, ring, centreLine } = facts;
  const { own, station: withStation, drop } = girth.moved;
  const stationOff = normal();
  const girthOff = own * normal() + withStation * stationOff + (drop === 0 ? 0 : drop * normal());
  const girthNow = Math.max(girth.value / 2, girth.value + girthOff);
  const roomNow = room.value + room.perGirth * (girthNow - girth.value) + room.sd * normal();
  const byGirth = ring.setBackPerGirth * (girthNow - girth.value);
  const setBack = ring.setBack.value + byGirth + ring.setBack.sd * normal();
  const x = roomNow - model['ring-behind-elbow'] * (girthNow / model['average-girth']) - setBack;
  const station =
    ring.station.value + ring.stationPerGirth * (girthNow - girth.value) + ring.station.sd * stationOff;
  const push = (centreLine.push.value * girthNow) / girth.value + centreLine.push.sd * normal();
  const slope = x / Math.max(1, station) + push / (girthNow / 4);
  const wider = 1 + (model['strand-pitch-sd'] / model['strand-pitch']) * normal();
  const { shape, buckle } = candidate;
  const elbow = elbowLineOf(roomNow, girthNow, model);
  const widened = { ...shape, full: shape.full * wider, pinched: shape.pinched * wider };
  const body = gapBetween(bodyEdge(widened, slope), elbow).distance;
  const frame = gapBetween(frameEdge(buckle, shape.top, slope), elbow).distance;
  return Math.min(body, frame);
}
