/** Where a photo and a tape, or a word, disagree by more than both may be off: told, never averaged. */
import type { Seen } from '../photo/read.ts';
import { dist, say, type Phrase } from '../units/phrase.ts';
import type { Facts } from './facts.ts';
import { stationSeen } from './ring.ts';

/** Beyond this many spreads of the difference it is told. */
const TELLING = 2;

interface Pair {
  readonly what: string;
  /** From the order, with its spread. */
  readonly told: number;
  readonly toldSd: number;
  readonly seen: Pick<Seen, 'value' | 'sd'>;
  readonly by: 'tape' | 'order';
}

/** Remarks in plain words; none without a photo. */
export function photoRemarks(facts: Facts): Phrase[] {
  const { photo } = facts;
  if (photo === undefined) return [];
  return pairsOf(facts, photo.seen)
    .filter(({ told, toldSd, seen }) => Math.abs(told - seen.value) > TELLING * Math.hypot(toldSd, seen.sd))
    .map(({ what, told, seen, by }) =>
      by === 'tape'
        ? say`The tape says ${dist(told)} of ${what}, the photo ${dist(seen.value)}, give or take ${dist(seen.sd)}: the tape is used. Measure again, and look at the clicks.`
        : say`By the rigging's name the ${what} is ${dist(told)}, by the photo ${dist(seen.value)}, give or take ${dist(seen.sd)}: look where the ring hangs, and at the clicks.`,
    );
}

function pairsOf(
  { order, room, ring, barrel, model }: Facts,
  seen: NonNullable<Facts['photo']>['seen'],
): Pair[] {
  const { horse, saddle } = order;
  const pairs: (Pair | undefined)[] = [
    horse.elbowRoom === undefined
      ? undefined
      : { what: 'elbow room', told: horse.elbowRoom, toldSd: room.sd, seen: seen.room, by: 'tape' },
    setBackPair(order.saddle, seen, model),
    ring.station.kind === 'measured'
      ? {
          what: 'skin from the midline up to the ring',
          told: ring.station.value,
          toldSd: ring.station.sd,
          seen: stationSeen(seen.ringHeight, barrel),
          by: 'tape',
        }
      : undefined,
    typeof horse.barrel === 'object'
      ? { what: "the barrel's depth", told: horse.barrel.depth, toldSd: TAPE, seen: seen.depth, by: 'tape' }
      : undefined,
    saddle.barSpan === undefined || seen.barSpan === undefined
      ? undefined
      : { what: 'bar span', told: saddle.barSpan, toldSd: TAPE, seen: seen.barSpan, by: 'tape' },
  ];
  return pairs.filter((pair) => pair !== undefined);
}

/** Spread of a taped depth or bar span, inches [choice]. */
const TAPE = 0.5;

/** Fork and ring on the photo against what was measured, or what the position's name means on these bars. */
function setBackPair(
  { rigging, barSpan }: Facts['order']['saddle'],
  seen: NonNullable<Facts['photo']>['seen'],
  model: Facts['model'],
): Pair | undefined {
  if (seen.setBack === undefined) return undefined;
  if (rigging.kind === 'measured') {
    return {
      what: 'set-back',
      told: rigging.setBack,
      toldSd: model['measured-position-sd'],
      seen: seen.setBack,
      by: 'tape',
    };
  }
  const span = barSpan ?? seen.barSpan?.value;
  if (span === undefined) return undefined;
  const told = (1 - rigging.fraction) * span;
  return { what: 'set-back', told, toldSd: model['named-position-sd'], seen: seen.setBack, by: 'order' };
}
