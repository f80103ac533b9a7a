/** The camera of a side photo: direction by plumb line, sheet and habit, scale by the reference. */
import { homographyOf, type Point } from '../../math/homography.ts';
import { apart } from '../../math/sheet-corners.ts';
import { placeOf, type Pinhole, type Pose } from '../../math/pinhole.ts';
import type { Photo, Reference } from '../../order/photo-types.ts';
import type { Scene } from './scene.ts';

/** With the scene's errors. */
export function cameraOf(scene: Scene): Pinhole {
  const pose = poseOf(scene);
  const center = centerOf(scene.photo);
  const rough = roughFocal(scene.photo, pose.distance);
  return { ...pose, center, focal: focalFor({ ...pose, center, focal: rough }, scene) };
}

function poseOf(scene: Scene): Pose {
  const { photo, unknowns: u, trust } = scene;
  const seen = sheetLook(photo, u.distance) ?? { yaw: 0, tilt: 0, roll: 0 };
  const blend = (share: number, shown: number, usual: number): number => share * shown + (1 - share) * usual;
  const roll =
    photo.plumb === undefined
      ? blend(trust.roll, seen.roll + u.sheetRoll, u.roll)
      : plumbRoll(photo.plumb) + u.plumb;
  return {
    yaw: blend(trust.yaw, seen.yaw + u.sheetYaw, u.yaw),
    tilt: blend(trust.tilt, seen.tilt + u.sheetTilt, u.tilt),
    roll,
    distance: u.distance,
  };
}

/** Direction by the sheet, if there is one. */
export function sheetLook(photo: Photo, distance: number): Look | undefined {
  const { reference } = photo;
  if (reference.kind === 'stick') return undefined;
  return lookAt(reference, centerOf(photo), roughFocal(photo, distance));
}

/** The lean of a hanging string. */
function plumbRoll({ top, bottom }: NonNullable<Photo['plumb']>): number {
  return Math.atan2(top[0] - bottom[0], bottom[1] - top[1]);
}

/** Focal length if nothing were tilted. */
function roughFocal({ reference, referenceDepth }: Photo, distance: number): number {
  return pixelsAnInch(reference) * (distance - (referenceDepth ?? 0));
}

/** By the reference. */
export function pixelsAnInch(reference: Reference): number {
  if (reference.kind === 'stick') return apart(reference.from, reference.to) / reference.length;
  const [a, b, c, d] = reference.corners;
  const across = (apart(a, b) + apart(c, d)) / (2 * reference.width);
  const up = (apart(b, c) + apart(d, a)) / (2 * reference.height);
  return Math.sqrt(across * up);
}

const MOST_STEPS = 30;

/** Gives the reference its true size, step by step. */
function focalFor(camera: Pinhole, { photo, unknowns }: Scene): number {
  const z = (photo.referenceDepth ?? 0) + unknowns.referenceDepth;
  const wanted = 1 + unknowns.reference;
  let focal = camera.focal;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const ratio = sizeOf(photo.reference, { ...camera, focal }, z) / wanted;
    focal *= ratio;
    if (Math.abs(ratio - 1) < 1e-13) break;
  }
  return focal;
}

/** Computed over true size. */
function sizeOf(reference: Reference, camera: Pinhole, z: number): number {
  const at = (pixel: Point): Point => {
    const { x, y } = placeOf(camera, pixel, z);
    return [x, y];
  };
  if (reference.kind === 'stick') return apart(at(reference.from), at(reference.to)) / reference.length;
  const [a, b, c, d] = reference.corners.map(at) as [Point, Point, Point, Point];
  return pixelsAnInch({ ...reference, corners: [a, b, c, d] });
}

/** Radians, as in a pose. */
export interface Look {
  readonly yaw: number;
  readonly tilt: number;
  readonly roll: number;
}

type Sheet = Extract<Reference, { kind: 'sheet' }>;

/** Assumes the optical axis in the middle. */
const centerOf = ({ imageSize: [width, height] }: Photo): Point => [width / 2, height / 2];

/**
 * The map's columns are the sheet's two edges as seen; their third parts give the direction (Zhang 2000, section 2.1).
 * @param focal pixels an inch at one inch
 * @returns undefined when the corners make no sheet
 */
function lookAt({ width, height, corners }: Sheet, center: Point, focal: number): Look | undefined {
  const inches: Point[] = [
    [0, height],
    [width, height],
    [width, 0],
    [0, 0],
  ];
  const pixels = corners.map(([x, y]): Point => [(x - center[0]) / focal, (y - center[1]) / focal]);
  const h = homographyOf(inches, pixels);
  if (h === undefined) return undefined;
  // The map's sign is free: the sheet is ahead of the camera.
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
