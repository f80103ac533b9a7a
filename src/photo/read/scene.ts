/** What a photo is read from: clicks, a guess of the barrel, and every unknown. */
import { stationToAngle, type Ellipse } from '../../math/ellipse.ts';
import type { Photo } from '../../order/photo-types.ts';
import type { Model } from '../../numbers/numbers.ts';

/** The barrel as known without the photo. */
export interface Guess {
  readonly ellipse: Ellipse;
  /** Inches. */
  readonly halfWidthSd: number;
  /** Of the point of the elbow. */
  readonly elbowStation: number;
}

/** Errors against the best guess, except distance; inches, radians, shares. */
export interface Unknowns {
  /** To the near side of the barrel. */
  readonly distance: number;
  readonly yaw: number;
  readonly tilt: number;
  readonly roll: number;
  readonly plumb: number;
  readonly sheetYaw: number;
  readonly sheetTilt: number;
  readonly sheetRoll: number;
  /** Share of its length. */
  readonly reference: number;
  readonly referenceDepth: number;
  readonly halfWidth: number;
  readonly elbowDepth: number;
  readonly ringDepth: number;
  readonly forkDepth: number;
  readonly cantleDepth: number;
}

/** Weight of the sheet against habit, 0 to 1. */
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

/** All at their best guess. */
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

/* Depths count from the near side of the barrel, negative away from the camera. The outline is where the line of sight touches the section: a^2 / (D + a) nearer than its middle, for a level camera. */

/** Half-width of the barrel. */
export const halfWidthOf = ({ guess, unknowns }: Scene): number =>
  guess.ellipse.halfWidth + unknowns.halfWidth;

/** Of groove, underline and spine. */
export function outlineDepth(scene: Scene): number {
  const a = halfWidthOf(scene);
  return (a * a) / (scene.unknowns.distance + a) - a;
}

/** Share of the section's height. */
export function outlineShare(scene: Scene): number {
  const a = halfWidthOf(scene);
  return Math.sqrt(1 - (a / (scene.unknowns.distance + a)) ** 2);
}

/** On the skin. */
export function elbowDepth(scene: Scene): number {
  const t = stationToAngle(scene.guess.ellipse, scene.guess.elbowStation);
  return halfWidthOf(scene) * (Math.sin(t) - 1) + scene.unknowns.elbowDepth;
}

/** On the skin, `height` above the chest midline. */
export function ringDepth(scene: Scene, height: number): number {
  const { halfDepth } = scene.guess.ellipse;
  const t = Math.acos(Math.min(1, Math.max(-1, 1 - height / halfDepth)));
  return halfWidthOf(scene) * (Math.sin(t) - 1) + scene.unknowns.ringDepth;
}
