/** The flat outline of a cinch: how wide it is at which station, from the chest midline up to the buckle. */
import type { Style } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Layers } from './buckles.ts';

/** Stations rising from 0 and the full width there, inches; straight lines in between. */
export interface Outline {
  readonly stations: readonly number[];
  readonly widths: readonly number[];
}

/** What an outline is made of; its widths follow from these five numbers. */
export interface Shape {
  /** Width at full spread, and where it is narrowest: at the buckle of a straight, where weaves pinch a roper. */
  readonly full: number;
  readonly pinched: number;
  /** Station up to which it is at full spread; not below 0. */
  readonly fullUpTo: number;
  /** Station above which it is pinched. */
  readonly pinchedFrom: number;
  /** Station of the buckle's low edge, where the cords end. */
  readonly top: number;
}

/** Cords as they are strung: how many, in how many layers; 0 where the buckle does not take them. */
interface Strung {
  readonly strands: number;
  readonly layers: Layers | 0;
}

/** Width of the body at full spread, inches. */
export const fullWidth = (strands: number, model: Model): number => strands * model['strand-pitch'];

/** Width where weaves pinch it, inches. */
const pinchedWidth = ({ strands, layers }: Strung, model: Model): number =>
  strands * model[layers === 2 ? 'pinch-pitch-double' : 'pinch-pitch'];

/** Width of the cords as they come off the buckle bar, inches: no wider than the bar. */
const barWidth = ({ strands, layers }: Strung, bar: number, model: Model): number =>
  Math.min(bar, strands * model[layers === 2 ? 'bar-pitch-double' : 'strand-pitch']);

/** Width at the buckle: pinched on a roper, on a straight what comes off the bar. */
export const widthAtBuckle = (
  { style, bar, ...strung }: Strung & { readonly style: Style; readonly bar: number },
  model: Model,
): number => (style === 'straight' ? barWidth(strung, bar, model) : pinchedWidth(strung, model));

/** Shape of a straight: it comes off the bar and spreads to its full width. */
export const straightShape = (
  { bar, top, ...strung }: Strung & { readonly bar: number; readonly top: number },
  model: Model,
): Shape =>
  spreading({
    wide: fullWidth(strung.strands, model),
    narrow: barWidth(strung, bar, model),
    from: top,
    over: model['bar-spread'],
    top,
  });

/** Shape of a roper that begins to widen, going down, at station `start`. */
export const roperShape = (
  { start, top, ...strung }: Strung & { readonly start: number; readonly top: number },
  model: Model,
): Shape =>
  spreading({
    wide: fullWidth(strung.strands, model),
    narrow: pinchedWidth(strung, model),
    from: start,
    over: model['flare-length'],
    top,
  });

interface Spreading {
  readonly wide: number;
  readonly narrow: number;
  /** Going down, it spreads from this station on, over this length. */
  readonly from: number;
  readonly over: number;
  readonly top: number;
}

/** One that begins low runs out of side before it is at full spread. */
function spreading({ wide, narrow, from, over, top }: Spreading): Shape {
  const pinchedFrom = Math.max(0, Math.min(from, top));
  return {
    full: narrow + (wide - narrow) * Math.min(1, pinchedFrom / over),
    pinched: narrow,
    fullUpTo: Math.max(0, pinchedFrom - over),
    pinchedFrom,
    top,
  };
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
  if (pinched !== full) {
    add(fullUpTo, full);
    add(pinchedFrom, pinched);
  }
  add(top, pinched);
  return { stations, widths };
}
