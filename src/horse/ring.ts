/** Where the front ring hangs: how far forward of the groove, how high up the side. */
import { ellipsePerimeter, solveEllipse, stationAtHeight } from '../math/ellipse.ts';
import type { Saddle } from '../order/types.ts';
import type { PhotoReading, Seen } from '../photo/read.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Barrel } from './barrel.ts';
import { dropOf, halfTapeSd } from './drop.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { sizeFactor } from './girth.ts';
import type { Girth } from './girth-by-ring.ts';
import { shareOf, weighed, weighedCautiously } from './weigh.ts';

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

/** Spread of the station of the ring, with what an unsure girth does to it. */
export const stationSd = ({ station, stationPerGirth: per }: Ring, { moved }: Girth): number =>
  Math.hypot(station.sd + per * moved.station, per * moved.own, per * moved.drop);

interface RingInput {
  readonly saddle: Saddle;
  readonly girth: number;
  readonly room: number;
  readonly barrel: Barrel;
  /** What a photo shows, if there is one. */
  readonly seen: PhotoReading['seen'] | undefined;
}

/** Ring position from rigging, tape and photo; `x = E - ring-behind-elbow k - set-back`. */
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

/** `span` is the bar span that a photo shows. A tree does not grow with the horse, so bars nobody measured are the same on all. */
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

/** Spread of what a position's name means: that of the name, and of the bars when a photo alone shows them. */
export function namedSetBackSd(
  { fraction, barSpan, seen }: { fraction: number; barSpan: number | undefined; seen: Seen | undefined },
  model: Model,
): number {
  const named = model['named-position-sd'];
  return barSpan === undefined && seen !== undefined ? Math.hypot(named, (1 - fraction) * seen.sd) : named;
}

/**
 * A photo shows where the ring hangs behind the elbow, which is what the set-back is for. That is surer than how far it hangs behind
 * the fork, since elbow and ring lie almost equally deep in the picture and the fork does not.
 */
function withPhotoPlace(
  told: Estimate,
  { seen, k }: { seen: PhotoReading['seen']; k: number },
  model: Model,
): SetBack {
  if (told.kind === 'measured') return { setBack: told, perGirth: 0 };
  const { value, sd } = seen.ringBehindElbow;
  const back = { value: value - model['ring-behind-elbow'] * k, sd };
  const basis = `measured by photo from the elbow, averaged with ${told.basis}`;
  // Less set-back hangs the ring further forward, nearer to the elbow.
  const { estimate, share } = weighedCautiously(told, back, { basis, words: told.basis });
  return {
    setBack: estimate,
    // What the photo shows stays where it is when the girth is another.
    perGirth: (-share * model['ring-behind-elbow']) / model['average-girth'],
  };
}

interface Station {
  readonly station: Estimate;
  readonly perGirth: number;
}

/** A height on the photo is a station on the barrel; both the height and the barrel's shape may be off. */
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

/** Station at a height, on the barrel itself or one of another ratio or girth. */
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
