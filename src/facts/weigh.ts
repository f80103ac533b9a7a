/** What a photo shows and what would have been assumed, weighed by their spreads. */
import type { Seen } from '../photo/read.ts';
import type { Estimate } from './estimate.ts';

/** Share that the photo has in the weighed value: 1 when nothing else is known. */
export const photoShare = (usual: Estimate, { sd }: Pick<Seen, 'sd'>): number =>
  usual.sd ** 2 / (usual.sd ** 2 + sd ** 2);

/** The mean of both, each weighed by one over the square of its spread. */
export function weighed(usual: Estimate, seen: Pick<Seen, 'value' | 'sd'>, basis: string): Estimate {
  const share = photoShare(usual, seen);
  return {
    value: share * seen.value + (1 - share) * usual.value,
    sd: (usual.sd ** -2 + seen.sd ** -2) ** -0.5,
    kind: 'photo',
    basis,
  };
}
