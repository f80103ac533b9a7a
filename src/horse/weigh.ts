/** What a photo or another tape shows and what would have been assumed, weighed by their spreads. */
import type { Estimate } from './estimate.ts';

type Shown = Pick<Estimate, 'value' | 'sd'>;

/** Share that what is shown has in the weighed value: 1 when nothing else is known. */
export const shareOf = (usual: Estimate, { sd }: Pick<Shown, 'sd'>): number =>
  usual.sd ** 2 / (usual.sd ** 2 + sd ** 2);

/** Beyond this many spreads of their difference two values are not the same thing seen twice [choice]. */
export const TELLING = 2;

/** Beyond this many a mark was set wrong, or the word is: it must not earn a wider cinch [choice]. */
const CONTRADICTS = 3;

/** How many spreads of their difference two values lie apart. */
export const spreadsApart = (a: Pick<Estimate, 'value' | 'sd'>, b: Pick<Estimate, 'value' | 'sd'>): number =>
  Math.abs(a.value - b.value) / Math.hypot(a.sd, b.sd);

/**
 * The mean of both, each weighed by one over the square of its spread. Where they lie too far apart the spread grows with how far
 * (Birge 1932, Phys Rev 40:207): one of them is wrong, and it is not known which.
 */
export function weighed(usual: Estimate, seen: Shown, basis: string): Estimate {
  const share = shareOf(usual, seen);
  const apart = spreadsApart(usual, seen);
  const sd = (usual.sd ** -2 + seen.sd ** -2) ** -0.5;
  return {
    value: share * seen.value + (1 - share) * usual.value,
    sd: apart > TELLING ? sd * apart : sd,
    kind: 'photo',
    basis: apart > TELLING ? `${basis}; the two are far apart` : basis,
  };
}

/** Whether two values lie so far apart that one of them is a mistake. */
export const contradicts = (usual: Pick<Estimate, 'value' | 'sd'>, seen: Shown): boolean =>
  spreadsApart(usual, seen) > CONTRADICTS;

export interface Weighed {
  readonly estimate: Estimate;
  /** Share that the photo has in the value. */
  readonly share: number;
}

/**
 * The same for a length of which less is more cautious: of two that contradict each other the smaller is taken, with the spread grown
 * as above.
 */
export function weighedCautiously(
  usual: Estimate,
  seen: Shown,
  { basis, words }: { readonly basis: string; readonly words: string },
): Weighed {
  const both = weighed(usual, seen, basis);
  if (!contradicts(usual, seen)) return { estimate: both, share: shareOf(usual, seen) };
  const bySeen = seen.value < usual.value;
  const value = bySeen ? seen.value : usual.value;
  const told = bySeen
    ? `by photo alone, the more cautious: it disagrees with ${words}`
    : `${usual.basis}; the photo disagrees and is less cautious`;
  return {
    estimate: { value, sd: both.sd, kind: bySeen ? 'photo' : usual.kind, basis: told },
    share: bySeen ? 1 : 0,
  };
}
