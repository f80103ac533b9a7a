/** What a side photo is read from: the clicks, what is guessed of the barrel, and everything that is not known, at its best guess. */
import { stationToAngle, type Ellipse } from '../math/ellipse.ts';
import type { Photo } from '../order/photo-types.ts';
import type { Model } from '../numbers/numbers.ts';

/** The barrel before the photo is looked at: it says how deep in the picture things lie. */
export interface Guess {
  readonly ellipse: Ellipse;
  /** Spread of its half-width, inches. */
  readonly halfWidthSd: number;
  /** Station of the point of the elbow. */
  readonly elbowStation: number;
}

/** How far the truth is from the best guess: all zero but the distance, until each is tried. Inches, radians, shares. */
export interface Unknowns {
  /** Camera to the near side of the barrel. */
  readonly distance: number;
  readonly yaw: number;
  readonly tilt: number;
  readonly roll: number;
  readonly plumb: number;
  readonly sheetYaw: number;
  readonly sheetTilt: number;
  readonly sheetRoll: number;
  /** Share of the reference's length. */
  readonly reference: number;
  readonly referenceDepth: number;
  readonly halfWidth: number;
  readonly elbowDepth: number;
  readonly ringDepth: number;
  readonly forkDepth: number;
  readonly cantleDepth: number;
}

/** How far a sheet is believed against what is usual: 0 not at all, 1 alone. */
export interface Trust {
  readonly yaw: number;
  readonly tilt: number;
  readonly roll: number;
}

export interface Scene {
  readonly photo: Photo;
  readonly guess: Guess;
  readonly unknowns: Unknowns;
  readonly trust: Trust;
}

/** Everything at its best guess. */
export function bestUnknowns(photo: Photo, model: Model): Unknowns {
  return {
    distance: photo.cameraDistance ?? model['photo-distance'],
    yaw: 0,
    tilt: 0,
    roll: 0,
    plumb: 0,
    sheetYaw: 0,
    sheetTilt: 0,
    sheetRoll: 0,
    reference: 0,
    referenceDepth: 0,
    halfWidth: 0,
    elbowDepth: 0,
    ringDepth: 0,
    forkDepth: 0,
    cantleDepth: 0,
  };
}

/*
 * Depths are counted from the near side of the barrel, away from the camera below zero. The outline of the barrel, top and bottom, is
 * where the line of sight touches the section: for a camera level with its middle, a^2 / (D + a) nearer than the middle.
 */

/** Half-width of the barrel in a scene. */
export const halfWidthOf = ({ guess, unknowns }: Scene): number =>
  guess.ellipse.halfWidth + unknowns.halfWidth;

/** Depth of the outline: groove, underline and spine. */
export function outlineDepth(scene: Scene): number {
  const a = halfWidthOf(scene);
  return (a * a) / (scene.unknowns.distance + a) - a;
}

/** The outline is this share of the whole height of the section. */
export function outlineShare(scene: Scene): number {
  const a = halfWidthOf(scene);
  return Math.sqrt(1 - (a / (scene.unknowns.distance + a)) ** 2);
}

/** Depth of the back of the elbow: on the skin of the barrel, at the station of the elbow. */
export function elbowDepth(scene: Scene): number {
  const t = stationToAngle(scene.guess.ellipse, scene.guess.elbowStation);
  return halfWidthOf(scene) * (Math.sin(t) - 1) + scene.unknowns.elbowDepth;
}

/** Depth of a ring at this height above the chest midline: on the skin. */
export function ringDepth(scene: Scene, height: number): number {
  const { halfDepth } = scene.guess.ellipse;
  const t = Math.acos(Math.min(1, Math.max(-1, 1 - height / halfDepth)));
  return halfWidthOf(scene) * (Math.sin(t) - 1) + scene.unknowns.ringDepth;
}
