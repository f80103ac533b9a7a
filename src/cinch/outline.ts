/** The outline of a cinch: its width from chest midline to buckle. */
import type { Style } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Layers } from './buckles.ts';

/** Stations and full widths, inches; straight lines between. */
export interface Outline {
  readonly stations: readonly number[];
  readonly widths: readonly number[];
}

export interface Shape {
  /** Widest and narrowest: a straight at its buckle, a roper where weaves pinch. */
  readonly full: number;
  readonly pinched: number;
  /** Station; never below 0. */
  readonly fullUpTo: number;
  /** Station. */
  readonly pinchedFrom: number;
  /** Station of the buckle's low edge. */
  readonly top: number;
}

/** `layers` is 0 when the buckle does not take them. */
interface Strung {
  readonly strands: number;
  readonly layers: Layers | 0;
}

/** At full spread, inches. */
export const fullWidth = (strands: number, model: Model): number => strands * model['strand-pitch'];

/** Where weaves pinch, inches. */
const pinchedWidth = ({ strands, layers }: Strung, model: Model): number =>
  strands * model[layers === 2 ? 'pinch-pitch-double' : 'pinch-pitch'];

/** No wider than the buckle bar, inches. */
const barWidth = ({ strands, layers }: Strung, bar: number, model: Model): number =>
  Math.min(bar, strands * model[layers === 2 ? 'bar-pitch-double' : 'strand-pitch']);

/** At a straight's bar, or where a roper is pinched. */
export const widthAtBuckle = (
  { style, bar, ...strung }: Strung & { readonly style: Style; readonly bar: number },
  model: Model,
): number => (style === 'straight' ? barWidth(strung, bar, model) : pinchedWidth(strung, model));

/** From buckle bar to full width. */
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

/** It widens below station `start`. */
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
  /** Spreads downward from here. */
  readonly from: number;
  readonly over: number;
  readonly top: number;
}

/** A low start reaches the midline before full spread. */
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

/** Inches; past the ends, the end's width. */
export function widthAt({ full, pinched, fullUpTo, pinchedFrom }: Shape, station: number): number {
  if (station <= fullUpTo) return full;
  if (station >= pinchedFrom) return pinched;
  return full + ((pinched - full) * (station - fullUpTo)) / (pinchedFrom - fullUpTo);
}

/** Of one half; equal corners appear once. */
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
