/** The invented scene of the demo photo, in its camera's pixels. */
import { stationToAngle } from '../../src/math/ellipse.ts';
import { demo, outline, project, skin, type Pixel, type Vector } from './camera.ts';

const { subject, camera, stick, string } = demo;

/** Inches forward, up and out of the groove. */
export const pixelAt = (forward: number, up: number, out: number): Pixel =>
  project(camera, [subject.facing * forward, up, out]);

/** On the skin, or `out` inches from it. */
export const skinPixel = (x: number, station: number, out = 0): Pixel =>
  project(camera, skin(subject, { x, station, out }));

/** Of the barrel, as seen. */
export const seenOutline = (forward: number, top: boolean): Vector =>
  outline(subject, camera, { forward, top });

export const outAt = (station: number): number =>
  subject.ellipse.halfWidth * Math.sin(stationToAngle(subject.ellipse, station));

/** A share of the way along the stick, `up` above it. */
export function onStick(share: number, up: number): Pixel {
  const [from, to] = stick;
  const between = [0, 1, 2].map((i) => (from[i] ?? 0) + share * ((to[i] ?? 0) - (from[i] ?? 0)));
  const [x = 0, y = 0, z = 0] = between;
  return project(camera, [x, y + up, z]);
}

/** `up` from the string's lower end, `aside` of it. */
export function byString(up: number, aside: number): Pixel {
  const [x, y, z] = string[1];
  return project(camera, [x + aside, y + up, z]);
}

export const stringLength = string[0][1] - string[1][1];
