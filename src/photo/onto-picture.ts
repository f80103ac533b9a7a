/** From the unrolled side of the horse onto its photo: where a place of the skin is seen. */
import { heightAt, stationToAngle, type Ellipse } from '../math/ellipse.ts';
import type { Point } from '../math/homography.ts';
import { pixelOf } from '../math/pinhole.ts';
import type { PhotoReading } from './read.ts';

/** A place of the side that the camera sees. */
export interface SidePlace {
  /** Inches forward of the girth groove. */
  readonly forward: number;
  /** Inches up the skin from the chest midline. */
  readonly station: number;
}

/**
 * Pixel of a place on the near side, by the camera as it is best guessed; as sure as what the photo gives.
 * @param ellipse section of the barrel that stations are counted on
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
  // The barrel is no wider than the camera is far: the door sees to that.
  return pixelOf(camera, place) ?? camera.center;
}
