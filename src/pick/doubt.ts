/** One thing that looks wrong, and whether the order would be refused for it. */
import type { Pixel } from '../order/photo-types.ts';

/** A length that is shown beside the photo. */
export type Told = 'room' | 'depth' | 'ring';

export interface Doubt {
  /** In plain words, with what to do. */
  readonly text: string;
  /** Whether the order's door would refuse the block; otherwise it is only to be looked at. */
  readonly refused: boolean;
  /** The length that it tells itself, which then is told nowhere else. */
  readonly tells?: Told;
}

export const refused = (text: string, tells?: Told): Doubt => ({
  text,
  refused: true,
  ...(tells === undefined ? {} : { tells }),
});
export const doubtful = (text: string): Doubt => ({ text, refused: false });

/** Pixels between two places. */
export const apart = (a: Pixel, b: Pixel): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
