/** Monte Carlo of the elbow clearance, to check the first-order spread. */
import { elbowLineOf } from '../horse/elbow-line.ts';
import type { Facts } from '../horse/facts.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { cordSpots, frameSpots, type Spot, type Unrolled } from '../cinch/spots.ts';
import { seededRandom } from '../math/random.ts';

export interface Simulated {
  /** At the reported spot. */
  readonly mean: number;
  readonly sd: number;
  /** Share of draws in which every spot keeps its floor, capped. */
  readonly chance: number;
  readonly draws: number;
  readonly seed: number;
}

/** Draws every input from a normal distribution. */
export function simulateClearance(
  candidate: Candidate,
  facts: Facts,
  { draws, seed }: { draws: number; seed: number },
): Simulated {
  const random = seededRandom(seed);
  const normal = (): number => random.normal();
  let sum = 0;
  let squares = 0;
  let clear = 0;
  for (let i = 0; i < draws; i++) {
    const { inches, clears } = drawClearance(candidate, facts, normal);
    sum += inches;
    squares += inches * inches;
    if (clears) clear++;
  }
  const mean = sum / draws;
  const sd = Math.sqrt(Math.max(0, squares / draws - mean * mean));
  return { mean, sd, chance: Math.min(facts.model['chance-most'], clear / draws), draws, seed };
}

function drawClearance({ shape, buckle, clearance }: Candidate, facts: Facts, normal: () => number) {
  const { model } = facts;
  const side = drawSide(facts, normal);
  const wider = 1 + (model['strand-pitch-sd'] / model['strand-pitch']) * normal();
  const widened = { ...shape, full: shape.full * wider, pinched: shape.pinched * wider };
  const spots = [...cordSpots(widened, side), ...frameSpots(buckle, shape.top, side)];
  const floorOf = (skin: boolean): number => (skin ? facts.floor : model['muscle-floor'] * facts.k);
  const where = clearance.where === 'buckle' ? 'frame' : 'cords';
  const off = ({ part, s }: Spot): number =>
    Math.abs(s - clearance.station) + (part === where ? 0 : Infinity);
  const told = spots.reduce((best, spot) => (off(spot) < off(best) ? spot : best));
  return {
    inches: told.gap.distance,
    clears: spots.every(({ gap, skin }) => gap.distance >= floorOf(skin)),
  };
}

function drawSide(facts: Facts, normal: () => number): Unrolled {
  const { model, girth, room, ring, centreLine, spread } = facts;
  const { own, station: withStation, drop } = girth.moved;
  const stationOff = normal();
  const girthOff = own * normal() + withStation * stationOff + (drop === 0 ? 0 : drop * normal());
  const girthNow = Math.max(girth.value / 2, girth.value + girthOff);
  const k = girthNow / model['average-girth'];
  const grown = girthNow - girth.value;
  const roomNow = room.value + room.perGirth * grown + room.sd * normal();
  const setBack = ring.setBack.value + ring.setBackPerGirth * grown + ring.setBack.sd * normal();
  const placeSd = spread.find(({ input }) => input === 'saddle-place')?.ringX ?? 0;
  const x = roomNow - model['ring-behind-elbow'] * k - setBack + placeSd * normal();
  const station = ring.station.value + ring.stationPerGirth * grown + ring.station.sd * stationOff;
  const push = (centreLine.push.value * girthNow) / girth.value + centreLine.push.sd * normal();
  const opening = model['opening-above'] + model['opening-above-sd'] * normal();
  return {
    line: elbowLineOf(roomNow, girthNow, { ...model, 'opening-above': opening }),
    slope: x / Math.max(1, station) + push / (girthNow / 4),
    armpit: model['armpit-station'] * k,
    elbow: model['elbow-station'] * k,
  };
}
