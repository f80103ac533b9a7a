/** Checked landmarks of a side photo: inches, and pixels of the upright picture. */
import type { Inches } from '../units/length.ts';
import type { Order } from './types.ts';

/** From the left, from the top. */
export type Pixel = readonly [number, number];

export type Reference =
  | { readonly kind: 'stick'; readonly length: Inches; readonly from: Pixel; readonly to: Pixel }
  | {
      readonly kind: 'sheet';
      readonly width: Inches;
      readonly height: Inches;
      /** Clockwise from top left. */
      readonly corners: readonly [Pixel, Pixel, Pixel, Pixel];
    };

export type Photo = NonNullable<Order['photo']>;
