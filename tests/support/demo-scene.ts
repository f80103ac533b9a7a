/** The invented scene of the demo photo, in pixels: every place on the horse where its camera sees it. */
import { stationToAngle } from '../../src/math/ellipse.ts';
import { demo, outline, project, skin, type Pixel, type Vector } from './camera.ts';

const { subject, camera, stick, string } = demo;

/** The pixel of a place that is given forward, up and out, inches from the groove. */
export const pixelAt = (forward: number, up: number, out: number): Pixel =>
  project(camera, [subject.facing * forward, up, out]);

/** The pixel of a place on the skin, or so far out from it. */
export const skinPixel = (x: number, station: number, out = 0): Pixel =>
  project(camera, skin(subject, { x, station, out }));

/** Top and bottom of the barrel as the camera sees it. */
export const seenOutline = (forward: number, top: boolean): Vector =>
  outline(subject, camera, { forward, top });

/** How far out the skin is at a station. */
export const outAt = (station: number): number =>
  subject.ellipse.halfWidth * Math.sin(stationToAngle(subject.ellipse, station));

/** A place between the two ends of the stick, and so far above it. */
export function onStick(share: number, up: number): Pixel {
  const [from, to] = stick;
  const between = [0, 1, 2].map((i) => (from[i] ?? 0) + share * ((to[i] ?? 0) - (from[i] ?? 0)));
  const [x = 0, y = 0, z = 0] = between;
  return project(camera, [x, y + up, z]);
}

/** A place of the string, so far above its lower end and beside it. */
export function byString(up: number, aside: number): Pixel {
  const [x, y, z] = string[1];
  return project(camera, [x + aside, y + up, z]);
}

export const stringLength = string[0][1] - string[1][1];
