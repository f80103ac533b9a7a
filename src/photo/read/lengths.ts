/** Lengths on the horse: each landmark goes back to the plane it lies in. */
import { heightAt, stationToAngle, type Ellipse } from '../../math/ellipse.ts';
import type { Point } from '../../math/homography.ts';
import { pixelOf, placeOf, type Pinhole, type Place } from '../../math/pinhole.ts';
import type { Pixel } from '../../order/photo-types.ts';
import { cameraOf } from './camera.ts';
import { elbowDepth, halfWidthOf, outlineDepth, outlineShare, ringDepth, type Scene } from './scene.ts';

export interface Lengths {
  /** Groove to the back of the elbow. */
  readonly room: number;
  /** Elbow back to the ring. */
  readonly ringBehindElbow: number;
  /** Groove forward to ring. */
  readonly ringOffset: number;
  /** Straight up from the chest midline. */
  readonly ringHeight: number;
  /** Of the barrel. */
  readonly depth: number | undefined;
  /** Front of the fork back to the ring. */
  readonly setBack: number | undefined;
  readonly barSpan: number | undefined;
}

/** Forward is right (1) or left (-1). */
export interface Stand {
  readonly camera: Pinhole;
  readonly groove: Place;
  readonly underline: Place;
  readonly facing: 1 | -1;
}

/** Where the camera and the horse stand. */
export function standOf(scene: Scene): Stand {
  const { photo } = scene;
  const camera = cameraOf(scene);
  const depth = outlineDepth(scene);
  const groove = placeOf(camera, photo.groove, depth);
  const underline = placeOf(camera, photo.underline ?? photo.groove, depth);
  return { camera, groove, underline, facing: photo.elbow[0] > photo.groove[0] ? 1 : -1 };
}

/** All lengths, inches. */
export function lengthsOf(scene: Scene): Lengths {
  const { photo, unknowns } = scene;
  const { camera, groove, underline, facing } = standOf(scene);
  const at = (pixel: Pixel, depth: number): Place => placeOf(camera, pixel, depth);
  const elbow = at(photo.elbow, elbowDepth(scene));
  const spine = photo.spine === undefined ? undefined : at(photo.spine, outlineDepth(scene));
  const ring = ringPlace(scene, camera, underline.y);
  const middle = -halfWidthOf(scene);
  const fork = photo.fork === undefined ? undefined : at(photo.fork, middle + unknowns.forkDepth);
  const cantle = photo.cantle === undefined ? undefined : at(photo.cantle, middle + unknowns.cantleDepth);
  const forward = (from: Place, to: Place): number => facing * (to.x - from.x);
  return {
    room: forward(groove, elbow),
    ringBehindElbow: forward(ring, elbow),
    ringOffset: forward(groove, ring),
    ringHeight: ring.y - underline.y,
    depth: spine && (spine.y - underline.y) / outlineShare(scene),
    setBack: fork && forward(ring, fork),
    barSpan: fork && cantle && forward(cantle, fork),
  };
}

/** Depth and height depend on each other: three rounds leave under a hundredth. */
function ringPlace(scene: Scene, camera: Pinhole, bottom: number): Place {
  let ring = placeOf(camera, scene.photo.ring, 0);
  for (let round = 0; round < 3; round += 1) {
    ring = placeOf(camera, scene.photo.ring, ringDepth(scene, ring.y - bottom));
  }
  return ring;
}

/** A place on the side facing the camera. */
export interface SidePlace {
  /** Inches forward of the girth groove. */
  readonly forward: number;
  /** Inches up the skin from the chest midline. */
  readonly station: number;
}

/** By the best guess of the camera; stations are on `ellipse`. */
export function sideToPixel(
  { stand }: { readonly stand: Stand },
  ellipse: Ellipse,
  { forward, station }: SidePlace,
): Point {
  const { camera, groove, underline, facing } = stand;
  const place = {
    x: groove.x + facing * forward,
    y: underline.y + heightAt(ellipse, station),
    z: ellipse.halfWidth * (Math.sin(stationToAngle(ellipse, station)) - 1),
  };
  // Checked: the camera is outside the barrel.
  return pixelOf(camera, place) ?? camera.center;
}
