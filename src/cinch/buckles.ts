/** Which buckle takes which cinch. */
import type { Buckle, StrandRange } from '../order/types.ts';
import { byText } from '../units/by-text.ts';

export type Layers = 1 | 2;

const holds = (range: StrandRange | undefined, strands: number): boolean =>
  range !== undefined && strands >= range.min && strands <= range.max;

/** Every way in which the buckle takes that many strands, single layer before double; none when it does not. */
export const layersOf = ({ single, double }: Buckle, strands: number): readonly Layers[] =>
  holds(single, strands) ? (holds(double, strands) ? [1, 2] : [1]) : holds(double, strands) ? [2] : [];

/** Single layer up to about this many strands; from the next on two are usual [practice]. */
const SINGLE_UP_TO = 17;

/** Whether so many strands are usually strung in so many layers. */
export const isUsualLayer = (layers: Layers, strands: number): boolean =>
  (layers === 1) === strands <= SINGLE_UP_TO;

/** Layers in which the buckle takes that many strands, the usual way first; undefined when it does not. */
export function layersOn(buckle: Buckle, strands: number): Layers | undefined {
  const ways = layersOf(buckle, strands);
  return ways.find((layers) => isUsualLayer(layers, strands)) ?? ways[0];
}

/** How many strands fewer or more it would have to be for the buckle to take them; 0 where it does. */
export const strandsAway = ({ single, double }: Buckle, strands: number): number =>
  Math.min(
    ...[single, double].map((range) =>
      range === undefined ? Infinity : Math.max(0, range.min - strands, strands - range.max),
    ),
  );

/** Whether some of the two for each cinch must be ordered first; false where none can be had. */
export const mustBeOrdered = ({ onHand, orderable }: Buckle, quantity: number): boolean =>
  orderable && onHand < 2 * quantity;

/** Smallest frame first, then the id: the order in which buckles are tried and listed. */
export function bySize(a: Buckle, b: Buckle): number {
  return a.frameWidth - b.frameWidth || a.barWidth - b.barWidth || byText(a.id, b.id);
}
