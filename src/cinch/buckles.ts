/** Which buckle takes which strand counts, single or double. */
import type { Buckle, StrandRange } from '../order/types.ts';
import { byText } from '../units/by-text.ts';

export type Layers = 1 | 2;

const holds = (range: StrandRange | undefined, strands: number): boolean =>
  range !== undefined && strands >= range.min && strands <= range.max;

/** Single first; empty when it does not take the strands. */
export const layersOf = ({ single, double }: Buckle, strands: number): readonly Layers[] =>
  holds(single, strands) ? (holds(double, strands) ? [1, 2] : [1]) : holds(double, strands) ? [2] : [];

/** Most strands usually strung single [practice]. */
const SINGLE_UP_TO = 17;

/** Single up to that count, double beyond. */
export const isUsualLayer = (layers: Layers, strands: number): boolean =>
  (layers === 1) === strands <= SINGLE_UP_TO;

/** The usual way, else the other; undefined when it takes neither. */
export function layersOn(buckle: Buckle, strands: number): Layers | undefined {
  const ways = layersOf(buckle, strands);
  return ways.find((layers) => isUsualLayer(layers, strands)) ?? ways[0];
}

/** Strands off the buckle's range; 0 inside. */
export const strandsAway = ({ single, double }: Buckle, strands: number): number =>
  Math.min(
    ...[single, double].map((range) =>
      range === undefined ? Infinity : Math.max(0, range.min - strands, strands - range.max),
    ),
  );

/** False when they can't be ordered. */
export const mustBeOrdered = ({ onHand, orderable }: Buckle, quantity: number): boolean =>
  orderable && onHand < 2 * quantity;

/** Smallest frame first, then by id. */
export function bySize(a: Buckle, b: Buckle): number {
  return a.frameWidth - b.frameWidth || a.barWidth - b.barWidth || byText(a.id, b.id);
}
