/** The flat outline of a cinch: how wide it is at which station, from the chest midline up to the buckle. */
import type { Style } from '../order/types.ts';
import type { Model } from '../sources/numbers.ts';

/** Stations rising from 0 and the full width there, inches; straight lines in between. */
export interface Outline {
  readonly stations: readonly number[];
  readonly widths: readonly number[];
}

export interface OutlineShape {
  readonly style: Style;
  readonly strands: number;
  /** Station where a roper begins to widen, going down; not used for a straight. */
  readonly flareStart: number;
  /** Station of the buckle's low edge, where the cords end. */
  readonly top: number;
}

/** Width of the body at full spread, inches. */
export const fullWidth = (strands: number, model: Model): number => strands * model['strand-pitch'];

/** Width where weaves pinch it, inches. */
export const pinchedWidth = (strands: number, model: Model): number => strands * model['pinch-pitch'];

/** Width at the buckle: pinched on a roper, full on a straight. */
export const widthAtBuckle = (style: Style, strands: number, model: Model): number =>
  style === 'straight' ? fullWidth(strands, model) : pinchedWidth(strands, model);

/** The outline of one half; the other half is its mirror. */
export function outlineOf({ style, strands, flareStart, top }: OutlineShape, model: Model): Outline {
  const full = fullWidth(strands, model);
  if (style === 'straight') return { stations: [0, top], widths: [full, full] };
  const pinched = pinchedWidth(strands, model);
  const start = Math.min(flareStart, top);
  const spread = start - model['flare-length'];
  if (spread > 0) return { stations: [0, spread, start, top], widths: [full, full, pinched, pinched] };
  // A short cinch runs out of side before the flare is complete.
  const reached = pinched + ((full - pinched) * start) / model['flare-length'];
  return { stations: [0, Math.max(0, start), top], widths: [reached, pinched, pinched] };
}

/** Width at a station, inches; beyond the ends the end's width. */
export function widthAt({ stations, widths }: Outline, station: number): number {
  for (let i = 1; i < stations.length; i++) {
    const high = stations[i] ?? 0;
    if (station > high) continue;
    const low = stations[i - 1] ?? 0;
    const from = widths[i - 1] ?? 0;
    const to = widths[i] ?? from;
    return high === low ? to : from + ((to - from) * (station - low)) / (high - low);
  }
  return widths.at(-1) ?? 0;
}
