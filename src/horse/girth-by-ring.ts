/** A girth nobody taped, made surer by ring tapes. */
import type { Saddle } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import { dropOf, halfTapeSd } from './drop.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { shareOf, weighed } from './weigh.ts';

/** A girth, and how far each input's sd moves it, inches. */
export interface Girth extends Estimate {
  readonly moved: Moved;
}

interface Moved {
  /** The first estimate alone. */
  readonly own: number;
  /** A ring tape one sd too high. */
  readonly station: number;
  /** This horse's drop against the usual. */
  readonly drop: number;
}

interface Pointed extends Omit<Moved, 'own'> {
  readonly value: number;
  readonly sd: number;
  readonly from: string;
  readonly sum: () => string;
}

function pointedTo(saddle: Saddle, model: Model): Pointed | undefined {
  const { ringToRing, ringDrop, style } = saddle;
  if (ringToRing !== undefined) return byRingToRing(ringToRing, saddle, model);
  return ringDrop === undefined ? undefined : byDrop(ringDrop, style, model);
}

/** Three decimals, since it multiplies a length. */
const factorText = (factor: number): string => String(Math.round(factor * 1000) / 1000);

/** g / 2 - drop = tape / 2; a usual drop grows with g. */
function byRingToRing(ringToRing: number, saddle: Saddle, model: Model): Pointed {
  const { fixed, perGirth, sd, basis } = dropOf(saddle, model);
  const per = 1 / (0.5 - perGirth);
  const station = halfTapeSd(model) * per;
  const drop = sd * per;
  return {
    value: (ringToRing / 2 + fixed) * per,
    sd: Math.hypot(station, drop),
    station,
    drop,
    from: `the taped ring to ring and the ${basis}`,
    sum: () =>
      perGirth === 0
        ? `${short(ringToRing)} + 2 x ${short(fixed)}`
        : `${short(ringToRing)} x ${factorText(per / 2)}`,
  };
}

/** A drop read too long puts the ring too low. */
function byDrop(ringDrop: number, style: Saddle['style'], model: Model): Pointed {
  const usual = dropOf({ style }, model);
  const per = 1 / usual.perGirth;
  const station = -dropOf({ ringDrop }, model).sd * per;
  const drop = usual.sd * per;
  return {
    value: ringDrop * per,
    sd: Math.hypot(station, drop),
    station,
    drop,
    from: `the measured drop, by the ${usual.basis}`,
    sum: () => `${short(ringDrop)} x ${factorText(per)}`,
  };
}

/**
 * Leaves a taped girth alone. Without this, ring tapes would make clearance less sure, since girth and rings err
 * together.
 */
export function withRingTapes(girth: Estimate, saddle: Saddle, model: Model): Girth {
  const pointed = girth.kind === 'measured' ? undefined : pointedTo(saddle, model);
  if (pointed === undefined) {
    const { value, sd, kind, basis } = girth;
    return { value, sd, kind, basis, moved: { own: sd, station: 0, drop: 0 } };
  }
  const { value, sd, basis } = weighed(girth, pointed, `${girth.basis}, averaged with ${pointed.from}`);
  const share = shareOf(girth, pointed);
  const own = (1 - share) * girth.sd;
  const station = share * pointed.station;
  const drop = share * pointed.drop;
  // `weighed` widens the spread when values are far apart.
  const grown = sd / Math.hypot(own, station, drop);
  const moved = { own: grown * own, station: grown * station, drop: grown * drop };
  return { value, sd, kind: girth.kind, basis, moved };
}

/** Empty without such a tape. */
export function ringTapesWorking(girth: Girth, saddle: Saddle, model: Model): Working[] {
  const pointed = girth.moved.drop === 0 ? undefined : pointedTo(saddle, model);
  if (pointed === undefined) return [];
  return [
    { symbol: 'G by the rings', sum: pointed.sum(), result: `${short(pointed.value)} in` },
    { symbol: 'G', sum: 'average of both, the surer counting more', result: `${short(girth.value)} in` },
  ];
}
