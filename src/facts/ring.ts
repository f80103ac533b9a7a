/** Where the front ring hangs: how far forward of the groove, how high up the side. */
import type { Saddle } from '../order/types.ts';
import type { Model } from '../sources/numbers.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { sizeFactor } from './girth.ts';

export interface Ring {
  /** Inches back from full position. */
  readonly setBack: Estimate;
  /** Inches forward of the girth groove; negative behind it. */
  readonly x: number;
  /** Station of the ring; its sd is that of half the distance from ring to ring. */
  readonly station: Estimate;
  /** Whether the distance from ring to ring was taped. */
  readonly taped: boolean;
  /** How the three move with the girth, for the spread: per inch of girth. */
  readonly setBackPerGirth: number;
  readonly stationPerGirth: number;
}

interface RingInput {
  readonly saddle: Saddle;
  readonly girth: number;
  readonly room: number;
}

/** Ring position from rigging and tape; `x = E - ring-behind-elbow k - set-back`. */
export function ringOf({ saddle, girth, room }: RingInput, model: Model): Ring {
  const k = sizeFactor(girth, model);
  const { setBack, perGirth } = setBackOf(saddle, k, model);
  const { station, perGirth: stationPerGirth } = ringStation(saddle, girth, model);
  return {
    setBack,
    station,
    stationPerGirth,
    taped: saddle.ringToRing !== undefined,
    x: room - model['ring-behind-elbow'] * k - setBack.value,
    setBackPerGirth: perGirth,
  };
}

function setBackOf(
  { rigging, barSpan }: Saddle,
  k: number,
  model: Model,
): { setBack: Estimate; perGirth: number } {
  const namedSd = model['named-position-sd'];
  if (rigging.kind === 'measured') {
    const sd = Math.min(namedSd, model['measured-position-sd']);
    return { setBack: { value: rigging.setBack, sd, kind: 'measured', basis: 'measured' }, perGirth: 0 };
  }
  const share = 1 - rigging.fraction;
  const spanText = barSpan === undefined ? 'usual bars' : 'measured bars';
  const value = share * (barSpan ?? model['bar-span'] * k);
  return {
    setBack: { value, sd: namedSd, kind: 'told', basis: `${rigging.name} position on ${spanText}` },
    perGirth: barSpan === undefined ? (share * model['bar-span']) / model['average-girth'] : 0,
  };
}

function ringStation(saddle: Saddle, girth: number, model: Model): { station: Estimate; perGirth: number } {
  const k = sizeFactor(girth, model);
  const assumedSd = model['drop-sd'];
  if (saddle.ringToRing !== undefined) {
    const sd = Math.min(assumedSd, model['ring-to-ring-sd'] / 2);
    return {
      station: { value: saddle.ringToRing / 2, sd, kind: 'measured', basis: 'half the taped ring to ring' },
      perGirth: 0,
    };
  }
  if (saddle.ringDrop !== undefined) {
    const sd = Math.min(assumedSd, model['drop-measured-sd']);
    const basis = 'half the girth less the measured drop';
    return { station: { value: girth / 2 - saddle.ringDrop, sd, kind: 'measured', basis }, perGirth: 0.5 };
  }
  const style = saddle.style ?? 'ring';
  const drop = model[`drop-${style}`];
  const told =
    saddle.style === undefined
      ? 'usual drop of ring rigging, style not given'
      : `usual drop of ${style} rigging`;
  return {
    station: { value: girth / 2 - drop * k, sd: assumedSd, kind: 'assumed', basis: told },
    perGirth: 0.5 - drop / model['average-girth'],
  };
}

/** How the ring's place came about. */
export function ringWorking(
  ring: Ring,
  { room, girth }: { room: number; girth: number },
  model: Model,
): Working[] {
  const k = sizeFactor(girth, model);
  const back = short(model['ring-behind-elbow'] * k);
  return [
    {
      symbol: 'x_ring',
      sum: `${short(room)} - ${back} - ${short(ring.setBack.value)}`,
      result: `${short(ring.x)} in forward of the groove`,
    },
    { symbol: 's_ring', sum: ring.station.basis, result: `${short(ring.station.value)} in up the side` },
  ];
}
