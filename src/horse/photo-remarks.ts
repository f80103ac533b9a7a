/** Remarks where a photo disagrees with what else we know. */
import type { PhotoReading, Seen } from '../photo/read/reading.ts';
import { dist, say, type Phrase } from '../units/phrase.ts';
import { usualRoom } from './room.ts';
import { contradicts, spreadsApart, TELLING } from './weigh.ts';
import type { Facts } from './facts.ts';
import { namedSetBackSd, stationSeen } from './ring.ts';

interface Pair {
  readonly what: string;
  readonly told: number;
  readonly toldSd: number;
  readonly seen: Pick<Seen, 'value' | 'sd'>;
  readonly by: 'tape' | 'name' | 'habit';
  /** Use the smaller when they contradict each other. */
  readonly cautious?: true;
}

/** None without a photo. */
export function photoRemarks(facts: Facts): Phrase[] {
  const { photo } = facts;
  if (photo === undefined) return [];
  return pairsOf(facts, photo.seen)
    .filter(({ told, toldSd, seen }) => spreadsApart({ value: told, sd: toldSd }, seen) > TELLING)
    .map((pair) => words[pair.by](pair));
}

const words: Readonly<Record<Pair['by'], (pair: Pair) => Phrase>> = {
  tape: ({ what, told, seen }) =>
    say`Tape and photo disagree on ${what}: ${dist(told)} by tape, ${dist(seen.value)} by photo, give or take ${dist(seen.sd)}. We used the tape. Measure again, and check the clicks.`,
  name: (pair) =>
    say`Rigging and photo disagree on ${pair.what}: ${dist(pair.told)} by the rigging's name, ${dist(pair.seen.value)} by photo, give or take ${dist(pair.seen.sd)}. ${taken(pair)}Check where the ring hangs, and the clicks.`,
  habit: (pair) =>
    say`Usual ${pair.what} for this girth is ${dist(pair.told)}; the photo shows ${dist(pair.seen.value)}, give or take ${dist(pair.seen.sd)}. ${taken(pair)}Check the clicks, or tape it.`,
};

/** Names the one used when they contradict each other. */
function taken({ told, toldSd, seen, by, cautious }: Pair): string {
  if (cautious === undefined || !contradicts({ value: told, sd: toldSd }, seen)) return '';
  const which = seen.value < told ? "the photo's" : by === 'name' ? "the name's" : 'the usual one';
  return `We used ${which}, the more cautious. `;
}

function pairsOf(facts: Facts, seen: PhotoReading['seen']): Pair[] {
  const { order, k, room, model } = facts;
  const { horse, saddle } = order;
  const usual = usualRoom(k, model);
  const pairs: (Pair | undefined)[] = [
    horse.elbowRoom === undefined
      ? {
          what: 'elbow room',
          told: usual.value,
          toldSd: usual.sd,
          seen: seen.room,
          by: 'habit',
          cautious: true,
        }
      : { what: 'elbow room', told: horse.elbowRoom, toldSd: room.sd, seen: seen.room, by: 'tape' },
    ringPair(order.saddle, { seen, k }, model),
    heightPair(facts, seen),
    typeof horse.barrel === 'object' && seen.depth !== undefined
      ? { what: 'barrel depth', told: horse.barrel.depth, toldSd: TAPE, seen: seen.depth, by: 'tape' }
      : undefined,
    saddle.barSpan === undefined || seen.barSpan === undefined
      ? undefined
      : { what: 'bar span', told: saddle.barSpan, toldSd: TAPE, seen: seen.barSpan, by: 'tape' },
  ];
  return pairs.filter((pair) => pair !== undefined);
}

/** Spread of a taped depth or bar span, inches [choice]. */
const TAPE = 0.5;

/** Measured set-back against fork to ring; a named position against elbow to ring. */
function ringPair(
  { rigging, barSpan }: Facts['order']['saddle'],
  { seen, k }: { seen: PhotoReading['seen']; k: number },
  model: Facts['model'],
): Pair | undefined {
  if (rigging.kind === 'named') {
    const span = barSpan ?? seen.barSpan?.value ?? model['bar-span'];
    const told = model['ring-behind-elbow'] * k + (1 - rigging.fraction) * span;
    const what = 'elbow to ring';
    const toldSd = namedSetBackSd({ fraction: rigging.fraction, barSpan, seen: seen.barSpan }, model);
    return { what, told, toldSd, seen: seen.ringBehindElbow, by: 'name', cautious: true };
  }
  if (seen.setBack === undefined) return undefined;
  const toldSd = model['measured-position-sd'];
  return { what: 'set-back', told: rigging.setBack, toldSd, seen: seen.setBack, by: 'tape' };
}

/** Against half of ring to ring, the taped drop or the usual. */
function heightPair({ order, ring, barrel, girth, k, model }: Facts, seen: PhotoReading['seen']): Pair {
  const what = 'ring height along the skin';
  const station = stationSeen(seen.ringHeight, barrel);
  if (ring.station.kind === 'measured') {
    return { what, told: ring.station.value, toldSd: ring.station.sd, seen: station, by: 'tape' };
  }
  const told = girth.value / 2 - model[`drop-${order.saddle.style ?? 'ring'}`] * k;
  return { what, told, toldSd: model['drop-sd'], seen: station, by: 'habit' };
}
