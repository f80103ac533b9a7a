/** The landmarks of a side photo as they stand behind the door. Lengths are inches, places are pixels of the upright picture. */
import type { Inches } from '../units/length.ts';

/** From the left and from the top. */
export type Pixel = readonly [number, number];

export type Reference =
  | { readonly kind: 'stick'; readonly length: Inches; readonly from: Pixel; readonly to: Pixel }
  | {
      readonly kind: 'sheet';
      readonly width: Inches;
      readonly height: Inches;
      /** Clockwise as seen, from the sheet's top left. */
      readonly corners: readonly [Pixel, Pixel, Pixel, Pixel];
    };

export interface Photo {
  /** As written; beside the order file. */
  readonly file: string;
  /** Width and height. */
  readonly imageSize: Pixel;
  readonly reference: Reference;
  /** How much nearer to the camera the reference is than the near side of the barrel. */
  readonly referenceDepth: Inches | undefined;
  readonly plumb: { readonly top: Pixel; readonly bottom: Pixel } | undefined;
  readonly ring: Pixel;
  readonly elbow: Pixel;
  readonly groove: Pixel;
  /** These two give the depth of the barrel; the groove stands for an underline that is not marked. */
  readonly spine: Pixel | undefined;
  readonly underline: Pixel | undefined;
  readonly fork: Pixel | undefined;
  readonly cantle: Pixel | undefined;
  /** From the camera to the near side of the barrel. */
  readonly cameraDistance: Inches | undefined;
}
