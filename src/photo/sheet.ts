/** How the camera looks at a flat sheet of known size. */
import { homographyOf, type Point } from '../math/homography.ts';
import type { Photo, Reference } from '../order/photo-types.ts';

/** Radians, as in a pose. */
export interface Look {
  readonly yaw: number;
  readonly tilt: number;
  readonly roll: number;
}

type Sheet = Extract<Reference, { kind: 'sheet' }>;

/** The optical axis is assumed to pass through the middle. */
export const centerOf = ({ imageSize: [width, height] }: Photo): Point => [width / 2, height / 2];

/**
 * The images of the sheet's two edges are the columns of the map from corners to pixels; with the focal length known, their third parts
 * give their direction into the picture (Zhang 2000, section 2.1).
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
  // The map's sign is free: choose the one that puts the sheet ahead of the camera.
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
