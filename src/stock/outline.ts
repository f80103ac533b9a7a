/** The flat outline of a cinch: how wide it is at which station, from the chest midline up to the buckle. */
import type { Style } from '../order/types.ts';
import type { Model } from '../sources/numbers.ts';

/** Stations rising from 0 and the full width there, inches; straight lines in between. */
export interface Outline {
  readonly stations: readonly number[];
  readonly widths: readonly number[];
}

/** What an outline is made of; its widths follow from these five numbers. */
export interface Shape {
  /** Width at full spread, and where weaves pinch it (the same for a straight). */
  readonly full: number;
  readonly pinched: number;
  /** Station up to which it is at full spread; not below 0. */
  readonly fullUpTo: number;
  /** Station above which it is pinched. */
  readonly pinchedFrom: number;
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

/** Shape of a straight. */
export const straightShape = (full: number, top: number): Shape => ({
  full,
  pinched: full,
  fullUpTo: top,
  pinchedFrom: top,
  top,
});

/** What a roper's shape follows from: it begins to widen, going down, at station `start`, and ends at `top`. */
interface Roper {
  readonly strands: number;
  readonly start: number;
  readonly top: number;
}

/** Shape of a roper. A short one runs out of side before its flare is whole. */
export const roperShape = (roper: Roper, model: Model): Shape =>
  writeRoper({ full: 0.5, pinched: 0.5, fullUpTo: 0.5, pinchedFrom: 0.5, top: 0.5 }, roper, model);

/** The same, written into a shape that is there already: hundreds are measured for one order and few are kept. */
export function writeRoper(
  shape: { -readonly [part in keyof Shape]: number },
  { strands, start, top }: Roper,
  model: Model,
): Shape {
  const full = fullWidth(strands, model);
  const pinched = pinchedWidth(strands, model);
  const length = model['flare-length'];
  const pinchedFrom = Math.max(0, Math.min(start, top));
  shape.full = pinched + (full - pinched) * Math.min(1, pinchedFrom / length);
  shape.pinched = pinched;
  shape.fullUpTo = Math.max(0, pinchedFrom - length);
  shape.pinchedFrom = pinchedFrom;
  shape.top = top;
  return shape;
}

/** Width at a station, inches; beyond the ends the end's width. */
export function widthAt({ full, pinched, fullUpTo, pinchedFrom }: Shape, station: number): number {
  if (station <= fullUpTo) return full;
  if (station >= pinchedFrom) return pinched;
  return full + ((pinched - full) * (station - fullUpTo)) / (pinchedFrom - fullUpTo);
}

/** Corners of one half; the other half is its mirror. Corners that fall together stand once. */
export function outlineOf({ full, pinched, fullUpTo, pinchedFrom, top }: Shape): Outline {
  const stations = [0];
  const widths = [full];
  const add = (station: number, width: number): void => {
    if (station <= (stations.at(-1) ?? 0)) return;
    stations.push(station);
    widths.push(width);
  };
  add(fullUpTo, full);
  add(pinchedFrom, pinched);
  add(top, pinched);
  return { stations, widths };
}

/** Area of one half from a station up to where it is pinched, square inches: the width is straight between its corners. */
export function fanArea(shape: Shape, from: number): number {
  const { full, fullUpTo, pinchedFrom } = shape;
  const whole = Math.max(0, fullUpTo - Math.max(0, from));
  const low = Math.max(fullUpTo, from);
  const flare =
    pinchedFrom > low ? ((pinchedFrom - low) * (widthAt(shape, low) + widthAt(shape, pinchedFrom))) / 2 : 0;
  return full * whole + flare;
}
