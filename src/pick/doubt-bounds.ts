/** When a mark is doubted. */
import type { Pixel } from '../order/photo-types.ts';
import { decimals } from '../units/print.ts';

/** The same bounds as those of the order's door, so that a block without doubts is read; a test holds them together. Pixels, degrees, inches. */
export const bounds = {
  stick: 100,
  edge: 60,
  plumb: 100,
  lean: 20,
  room: [1, 9],
  depth: [14, 36],
  /** Pixels an inch across over those up, of a sheet seen from the front, or over their inverse. */
  aspect: 1.33,
  ring: [-3, 16],
  view: 120,
} as const;

/** Pixels between two places. */
export const apart = (a: Pixel, b: Pixel): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
/** Inches as they are told here. */
export const rough = (value: number): string => decimals(value, 1);
