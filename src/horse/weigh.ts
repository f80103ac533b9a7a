/** Averages two values by their spreads. */
import type { Estimate } from './estimate.ts';

type Shown = Pick<Estimate, 'value' | 'sd'>;

/** Weight of what is seen. */
export const shareOf = (usual: Estimate, { sd }: Pick<Shown, 'sd'>): number =>
  usual.sd ** 2 / (usual.sd ** 2 + sd ** 2);

/** Spreads apart that count as disagreement [choice]. */
export const TELLING = 2;

/** Beyond this, one is a mistake and earns no wider cinch [choice]. */
const CONTRADICTS = 3;

/** Difference in spreads of the difference. */
export const spreadsApart = (a: Pick<Estimate, 'value' | 'sd'>, b: Pick<Estimate, 'value' | 'sd'>): number =>
  Math.abs(a.value - b.value) / Math.hypot(a.sd, b.sd);

/** Weights are 1 over sd squared; disagreement widens the spread (Birge 1932, Phys Rev 40:207). */
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

/** One of them is a mistake. */
export const contradicts = (usual: Pick<Estimate, 'value' | 'sd'>, seen: Shown): boolean =>
  spreadsApart(usual, seen) > CONTRADICTS;

export interface Weighed {
  readonly estimate: Estimate;
  /** The photo's weight. */
  readonly share: number;
}

/** Where less is more cautious: takes the smaller when they contradict each other. */
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
