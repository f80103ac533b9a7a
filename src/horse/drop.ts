/** How far the rings hang below the spine along the skin: measured, else what is usual for the rigging. */
import type { Saddle } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';

/** A drop grows with the girth where nobody measured it: inches, and inches per inch of girth. */
export interface Drop {
  readonly fixed: number;
  readonly perGirth: number;
  readonly sd: number;
  readonly measured: boolean;
  /** In plain words, behind "usual" or "measured". */
  readonly basis: string;
}

/** The drop on one side. */
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

/** Spread of half of a taped ring to ring. */
export const halfTapeSd = (model: Model): number => Math.min(model['drop-sd'], model['ring-to-ring-sd'] / 2);
