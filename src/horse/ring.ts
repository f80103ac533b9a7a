/** Where the front ring hangs: forward of the groove, and up the side. */
import { ellipsePerimeter, solveEllipse, stationAtHeight } from '../math/ellipse.ts';
import type { Saddle } from '../order/types.ts';
import type { PhotoReading, Seen } from '../photo/read/reading.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Barrel } from './barrel.ts';
import { dropOf, halfTapeSd } from './drop.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { sizeFactor } from './girth.ts';
import type { Girth } from './girth-by-ring.ts';
import { shareOf, weighed, weighedCautiously } from './weigh.ts';

export interface Ring {
  /** Back from full position, inches. */
  readonly setBack: Estimate;
  /** Forward of the groove, inches. */
  readonly x: number;
  /** Up the side; sd leaves out the girth. */
  readonly station: Estimate;
  readonly taped: boolean;
  /** Per inch of girth. */
  readonly setBackPerGirth: number;
  readonly stationPerGirth: number;
}

/** Spread of the station, the girth's included. */
export const stationSd = ({ station, stationPerGirth: per }: Ring, { moved }: Girth): number =>
  Math.hypot(station.sd + per * moved.station, per * moved.own, per * moved.drop);

interface RingInput {
  readonly saddle: Saddle;
  readonly girth: number;
  readonly room: number;
  readonly barrel: Barrel;
  readonly seen: PhotoReading['seen'] | undefined;
}

/** `x = E - ring-behind-elbow k - set-back`. */
export function ringOf({ saddle, girth, room, barrel, seen }: RingInput, model: Model): Ring {
  const k = sizeFactor(girth, model);
  const told = setBackOf(saddle, seen?.barSpan, model);
  const usual = ringStation(saddle, girth, model);
  const { setBack, perGirth } =
    seen === undefined ? { setBack: told, perGirth: 0 } : withPhotoPlace(told, { seen, k }, model);
  const { station, perGirth: stationPerGirth } =
    seen === undefined ? usual : withPhotoHeight(usual, seen.ringHeight, barrel);
  return {
    setBack,
    station,
    stationPerGirth,
    taped: saddle.ringToRing !== undefined,
    x: room - model['ring-behind-elbow'] * k - setBack.value,
    setBackPerGirth: perGirth,
  };
}

interface SetBack {
  readonly setBack: Estimate;
  readonly perGirth: number;
}

/** `span` is by photo. Trees do not grow with the horse. */
function setBackOf({ rigging, barSpan }: Saddle, span: Seen | undefined, model: Model): Estimate {
  const namedSd = model['named-position-sd'];
  if (rigging.kind === 'measured') {
    const sd = Math.min(namedSd, model['measured-position-sd']);
    return { value: rigging.setBack, sd, kind: 'measured', basis: 'measured' };
  }
  const spanText =
    barSpan !== undefined ? 'measured bars' : span === undefined ? 'usual bars' : 'bars measured by photo';
  const value = (1 - rigging.fraction) * (barSpan ?? span?.value ?? model['bar-span']);
  const sd = namedSetBackSd({ fraction: rigging.fraction, barSpan, seen: span }, model);
  return { value, sd, kind: 'told', basis: `${rigging.name} position on ${spanText}` };
}

/** Adds the spread of bars measured by photo. */
export function namedSetBackSd(
  { fraction, barSpan, seen }: { fraction: number; barSpan: number | undefined; seen: Seen | undefined },
  model: Model,
): number {
  const named = model['named-position-sd'];
  return barSpan === undefined && seen !== undefined ? Math.hypot(named, (1 - fraction) * seen.sd) : named;
}

/** Goes by elbow to ring: the fork lies deeper in the picture. */
function withPhotoPlace(
  told: Estimate,
  { seen, k }: { seen: PhotoReading['seen']; k: number },
  model: Model,
): SetBack {
  if (told.kind === 'measured') return { setBack: told, perGirth: 0 };
  const { value, sd } = seen.ringBehindElbow;
  const back = { value: value - model['ring-behind-elbow'] * k, sd };
  const basis = `measured by photo from the elbow, averaged with ${told.basis}`;
  // Less set-back is nearer the elbow, so more cautious.
  const { estimate, share } = weighedCautiously(told, back, { basis, words: told.basis });
  return {
    setBack: estimate,
    // The photo's part does not change with girth.
    perGirth: (-share * model['ring-behind-elbow']) / model['average-girth'],
  };
}

interface Station {
  readonly station: Estimate;
  readonly perGirth: number;
}

/** Station at a photo height; spreads of height and barrel shape. */
export function stationSeen(
  { value, sd }: Pick<Seen, 'value' | 'sd'>,
  barrel: Barrel,
): Pick<Seen, 'value' | 'sd'> {
  const at = stationOn(barrel);
  const byHeight = (at(value + sd) - at(value - sd)) / 2;
  const { ratio } = barrel;
  const byRatio =
    (at(value, { ratio: ratio.value + ratio.sd }) - at(value, { ratio: ratio.value - ratio.sd })) / 2;
  return { value: at(value), sd: Math.hypot(byHeight, byRatio) };
}

/** On this barrel, or one of other ratio or girth. */
function stationOn({ ratio, ellipse }: Barrel) {
  const own = ellipsePerimeter(ellipse.halfWidth, ellipse.halfDepth);
  return (height: number, other: { ratio?: number; more?: number } = {}): number =>
    stationAtHeight(solveEllipse(own + (other.more ?? 0), other.ratio ?? ratio.value), height);
}

function withPhotoHeight(usual: Station, height: Seen, barrel: Barrel): Station {
  if (usual.station.kind === 'measured') return usual;
  const seen = stationSeen(height, barrel);
  const share = shareOf(usual.station, seen);
  const at = stationOn(barrel);
  const grown = at(height.value, { more: 0.5 }) - at(height.value, { more: -0.5 });
  const basis = `height measured by photo, averaged with the ${usual.station.basis}`;
  return {
    station: weighed(usual.station, seen, basis),
    perGirth: (1 - share) * usual.perGirth + share * grown,
  };
}

function ringStation(saddle: Saddle, girth: number, model: Model): Station {
  if (saddle.ringToRing !== undefined) {
    const value = saddle.ringToRing / 2;
    const basis = 'half the taped ring to ring';
    return { station: { value, sd: halfTapeSd(model), kind: 'measured', basis }, perGirth: 0 };
  }
  const { fixed, perGirth, sd, measured, basis } = dropOf(saddle, model);
  return {
    station: {
      value: girth / 2 - fixed - perGirth * girth,
      sd,
      kind: measured ? 'measured' : 'assumed',
      basis: measured ? 'half the girth less the measured drop' : basis,
    },
    perGirth: 0.5 - perGirth,
  };
}

/** Working of the ring's position. */
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
