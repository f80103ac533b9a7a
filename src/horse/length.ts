/** Finished length: ring to ring less latigo runs and stretch. */
import type { Saddle } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { sizeFactor } from './girth.ts';
import type { Ring } from './ring.ts';

export interface LengthNeed {
  readonly ringToRing: Estimate;
  /** Each side. */
  readonly runTarget: number;
  readonly stretch: number;
  /** Finished length. */
  readonly target: Estimate;
  readonly crossCheck: number;
  readonly measured: boolean;
}

/** Inches, not rounded. */
export function lengthNeed(ring: Ring, girth: number, model: Model): LengthNeed {
  const k = sizeFactor(girth, model);
  const runTarget = Math.min(model['run-high'], Math.max(model['run-low'], model['run-target'] * k));
  const { value, sd } = ring.station;
  const target = 2 * value - 2 * runTarget - model.stretch;
  return {
    ringToRing: ringToRingOf(ring),
    runTarget,
    stretch: model.stretch,
    target: {
      value: target,
      sd: 2 * sd,
      kind: 'computed',
      basis: 'ring to ring less two latigo runs and the stretch in new cord',
    },
    crossCheck: lengthFromGirth(girth),
    measured: ring.taped,
  };
}

/** A measured drop gives a computed value, so the length stays provisional. */
function ringToRingOf({ station, taped }: Ring): Estimate {
  const { kind } = station;
  const value = 2 * station.value;
  const sd = 2 * station.sd;
  if (taped) return { value, sd, kind, basis: 'measured' };
  if (kind === 'photo') {
    // The photo shows ring height; the barrel's shape is assumed.
    const basis = "worked out from the ring's height in the photo; do not cut by it";
    return { value, sd, kind: 'computed', basis };
  }
  if (kind !== 'measured') return { value, sd, kind, basis: station.basis };
  return { value, sd, kind: 'computed', basis: 'girth less the measured drop on both sides' };
}

/** Half the girth less 3 [university extension], up to even [choice]. */
export const lengthFromGirth = (girth: number): number => 2 * Math.ceil((girth / 2 - 3) / 2 - 1e-9);

/** Latigo run each side, inches. */
export const runFor = (length: number, need: LengthNeed): number =>
  (need.ringToRing.value - length - need.stretch) / 2;

/** The shop's even lengths around this one, with latigo runs. */
export function evenNeighbors(
  length: number,
  need: LengthNeed,
  { min, max }: { readonly min: number; readonly max: number },
): { length: number; run: number }[] {
  const below = 2 * Math.floor(need.target.value / 2);
  const around = length % 2 === 0 ? [length - 2, length + 2] : [below, below + 2];
  return around
    .filter((each) => each >= min && each <= max)
    .map((each) => ({ length: each, run: runFor(each, need) }));
}

/** Working of the target length. */
export function lengthWorking(need: LengthNeed, saddle: Saddle, girth: number): Working[] {
  const rr = short(need.ringToRing.value);
  const from = saddle.ringToRing === undefined ? `2 x ${short(need.ringToRing.value / 2)}` : 'taped';
  return [
    { symbol: 'ring to ring', sum: from, result: `${rr} in` },
    {
      symbol: 'L',
      sum: `${rr} - 2 x ${short(need.runTarget)} - ${short(need.stretch)}`,
      result: `${short(need.target.value)} in`,
    },
    { symbol: 'L by girth', sum: `${short(girth)} / 2 - 3, up to even`, result: `${need.crossCheck} in` },
  ];
}
