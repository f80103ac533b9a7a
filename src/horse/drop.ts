/** How far rings hang below the spine, along the skin. */
import type { Saddle } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';

/** Inches; `perGirth` only when not measured. */
export interface Drop {
  readonly fixed: number;
  readonly perGirth: number;
  readonly sd: number;
  readonly measured: boolean;
  readonly basis: string;
}

/** Measured, or usual for the rigging; one side. */
export function dropOf({ ringDrop, style }: Pick<Saddle, 'ringDrop' | 'style'>, model: Model): Drop {
  const sd = model['drop-sd'];
  if (ringDrop !== undefined) {
    const sure = Math.min(sd, model['drop-measured-sd']);
    return { fixed: ringDrop, perGirth: 0, sd: sure, measured: true, basis: 'measured drop' };
  }
  const of = style === undefined ? 'ring rigging, style not given' : `${style} rigging`;
  const perGirth = model[`drop-${style ?? 'ring'}`] / model['average-girth'];
  return { fixed: 0, perGirth, sd, measured: false, basis: `usual drop of ${of}` };
}

/** Spread of half a taped ring to ring. */
export const halfTapeSd = (model: Model): number => Math.min(model['drop-sd'], model['ring-to-ring-sd'] / 2);
