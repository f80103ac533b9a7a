/** From the unrolled side of the horse to a pixel of its photo. */
import { heightAt, stationToAngle, type Ellipse } from '../math/ellipse.ts';
import type { Point } from '../math/homography.ts';
import { pixelOf } from '../math/pinhole.ts';
import type { PhotoReading } from './read.ts';

/** A place on the side facing the camera. */
export interface SidePlace {
  /** Inches forward of the girth groove. */
  readonly forward: number;
  /** Inches up the skin from the chest midline. */
  readonly station: number;
}

/**
 * By the best guess of the camera, so only as sure as the photo.
 * @param ellipse barrel section that stations count on
 */
export function sideToPixel(
  { stand }: PhotoReading,
  ellipse: Ellipse,
  { forward, station }: SidePlace,
): Point {
  const { camera, groove, underline, facing } = stand;
  const place = {
    x: groove.x + facing * forward,
    y: underline.y + heightAt(ellipse, station),
    z: ellipse.halfWidth * (Math.sin(stationToAngle(ellipse, station)) - 1),
  };
  // Checked: the barrel is narrower than the camera is far.
  return pixelOf(camera, place) ?? camera.center;
}
