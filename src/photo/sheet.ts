/** A flat sheet of known size on a photo: how the camera looks at it. */
import { homographyOf, type Point } from '../math/homography.ts';
import type { Photo, Reference } from '../order/photo-types.ts';

/** Radians, as in a pose. */
export interface Look {
  readonly yaw: number;
  readonly tilt: number;
  readonly roll: number;
}

type Sheet = Extract<Reference, { kind: 'sheet' }>;

/** The middle of the picture, where the optical axis is taken to be. */
export const centerOf = ({ imageSize: [width, height] }: Photo): Point => [width / 2, height / 2];

/**
 * How the camera looks at a sheet, from the map that carries its corners to their pixels: the images of its two edges are the columns of
 * that map, and with the focal length known their third parts say how far they lead into the picture (Zhang 2000, section 2.1).
 * @param focal pixels an inch at one inch
 * @returns undefined when the corners make no sheet
 */
export function lookAt({ width, height, corners }: Sheet, center: Point, focal: number): Look | undefined {
  const inches: Point[] = [
    [0, height],
    [width, height],
    [width, 0],
    [0, 0],
  ];
  const pixels = corners.map(([x, y]): Point => [(x - center[0]) / focal, (y - center[1]) / focal]);
  const h = homographyOf(inches, pixels);
  if (h === undefined) return undefined;
  // The map is found up to a factor, whose sign is that which puts the sheet before the camera.
  const [a, b, c] = h as [
    readonly [number, number, number],
    readonly [number, number, number],
    readonly [number, number, number],
  ];
  const sign = c[0] * (width / 2) + c[1] * (height / 2) + c[2] < 0 ? -1 : 1;
  const along = [a[0], b[0], c[0]].map((part) => sign * part) as [number, number, number];
  const up = [a[1], b[1], c[1]].map((part) => sign * part) as [number, number, number];
  return {
    yaw: -Math.asin(along[2] / Math.hypot(...along)),
    tilt: -Math.asin(up[2] / Math.hypot(...up)),
    roll: Math.atan2(along[1], along[0]),
  };
}
