/** A pinhole camera facing a plane: positions to pixels, and back. */
import type { Point } from './homography.ts';

/**
 * x right, y up, z toward the camera, whose axis meets z = 0 at the origin. Pixels count right and down.
 * Angles are radians, zero when level and facing the plane.
 */

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export interface Pose {
  /** Camera to the right. */
  readonly yaw: number;
  /** Camera above, looking down. */
  readonly tilt: number;
  /** Clockwise turn of the picture. */
  readonly roll: number;
  readonly distance: number;
}

export interface Pinhole extends Pose {
  /** Pixels per unit of length at unit distance. */
  readonly focal: number;
  readonly center: Point;
}

type Vector = readonly [number, number, number];

function axesOf({ yaw, tilt }: Pose): { right: Vector; up: Vector; into: Vector } {
  const [sy, cy, st, ct] = [Math.sin(yaw), Math.cos(yaw), Math.sin(tilt), Math.cos(tilt)];
  return { right: [cy, 0, -sy], up: [-sy * st, ct, -cy * st], into: [-sy * ct, -st, -cy * ct] };
}

const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Undefined beside or behind the camera. */
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

/** Position at that z, in front of the camera. */
export function placeOf(camera: Pinhole, [px, py]: Point, z: number): Place {
  const { right, up, into } = axesOf(camera);
  const [s, c] = [Math.sin(camera.roll), Math.cos(camera.roll)];
  const [du, dv] = [px - camera.center[0], py - camera.center[1]];
  const u = (c * du + s * dv) / camera.focal;
  const v = (c * dv - s * du) / camera.focal;
  const along = (i: 0 | 1 | 2): number => into[i] + u * right[i] - v * up[i];
  // The camera is at -distance * into.
  const far = (z + camera.distance * into[2]) / along(2);
  return {
    x: far * along(0) - camera.distance * into[0],
    y: far * along(1) - camera.distance * into[1],
    z,
  };
}
