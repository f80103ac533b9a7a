/** A pinhole camera that looks at a plane from the front, nearly: places become pixels, and pixels places on planes beside it. */
import type { Point } from './homography.ts';

/*
 * Places: x to the right as seen, y up, z toward the camera, any one unit of length; the plane looked at is z = 0, and the optical
 * axis meets it in the origin. Pixels count to the right and down. Angles are radians, all zero when the camera looks straight at
 * the plane and stands level.
 */

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface Pose {
  /** The camera stands this far round to the right of straight in front. */
  readonly yaw: number;
  /** The camera stands this far above straight in front, looking down. */
  readonly tilt: number;
  /** The picture is turned clockwise by this. */
  readonly roll: number;
  /** From the camera to the origin. */
  readonly distance: number;
}

export interface Pinhole extends Pose {
  /** Pixels a unit of length at unit distance. */
  readonly focal: number;
  /** The pixel of the optical axis. */
  readonly center: Point;
}

type Vector = readonly [number, number, number];

/** Unit vectors of a pose: to the right, up, and into the picture. */
function axesOf({ yaw, tilt }: Pose): { right: Vector; up: Vector; into: Vector } {
  const [sy, cy, st, ct] = [Math.sin(yaw), Math.cos(yaw), Math.sin(tilt), Math.cos(tilt)];
  return { right: [cy, 0, -sy], up: [-sy * st, ct, -cy * st], into: [-sy * ct, -st, -cy * ct] };
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The pixel of a place; undefined for one beside or behind the camera. */
export function pixelOf(camera: Pinhole, { x, y, z }: Place): Point | undefined {
  const { right, up, into } = axesOf(camera);
  const seen: Vector = [x, y, z];
  const depth = camera.distance + dot(seen, into);
  if (!(depth > 0)) return undefined;
  const u = (camera.focal * dot(seen, right)) / depth;
  const v = (-camera.focal * dot(seen, up)) / depth;
  const [s, c] = [Math.sin(camera.roll), Math.cos(camera.roll)];
  return [camera.center[0] + c * u - s * v, camera.center[1] + s * u + c * v];
}

/** The place at depth z whose pixel this is. Total for pixels of a camera that stands in front of that plane. */
export function placeOf(camera: Pinhole, [px, py]: Point, z: number): Place {
  const { right, up, into } = axesOf(camera);
  const [s, c] = [Math.sin(camera.roll), Math.cos(camera.roll)];
  const [du, dv] = [px - camera.center[0], py - camera.center[1]];
  const u = (c * du + s * dv) / camera.focal;
  const v = (c * dv - s * du) / camera.focal;
  const along = (i: 0 | 1 | 2): number => into[i] + u * right[i] - v * up[i];
  // The camera itself is at -distance * into.
  const far = (z + camera.distance * into[2]) / along(2);
  return {
    x: far * along(0) - camera.distance * into[0],
    y: far * along(1) - camera.distance * into[1],
    z,
  };
}
