/** Which buckle takes which cinch. */
import type { Buckle, StrandRange } from '../order/types.ts';
import { byText } from '../units/by-text.ts';

export type Layers = 1 | 2;

const holds = (range: StrandRange | undefined, strands: number): boolean =>
  range !== undefined && strands >= range.min && strands <= range.max;

/** Layers in which the buckle takes that many strands, single before double; undefined when it does not. */
export function layersOn(buckle: Buckle, strands: number): Layers | undefined {
  if (holds(buckle.single, strands)) return 1;
  if (holds(buckle.double, strands)) return 2;
  return undefined;
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
