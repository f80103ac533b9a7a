/** The invented scene of the demo photo: a horse, a saddle, a stick, a string and a camera that are all known exactly. */
import { solveEllipse, stationToAngle } from '../../src/geometry/ellipse.ts';
import {
  cameraAt,
  landmarks,
  outline,
  project,
  skin,
  type Pixel,
  type Subject,
  type Vector,
} from './camera.ts';

/** The horse of examples/orders/02: girth, room, set-back, bars and ring to ring are as taped there. */
const girth = 74;
const k = girth / 72;
const room = 4.25;
const setBack = 1.75;
const ringX = room - 2 * k - setBack;

export const subject: Subject = {
  ellipse: solveEllipse(girth, 0.7),
  facing: -1,
  room,
  elbowStation: 7 * k,
  elbowOut: 0,
  ring: { x: ringX, station: 22.5, out: 0 },
  fork: { x: ringX + setBack, y: 30.5, out: 0 },
  cantle: { x: ringX + setBack - 13, y: 32.5, out: 0 },
};

export const distance = 144;
export const size: Pixel = [2016, 1512];
export const camera = cameraAt(subject, {
  distance,
  yaw: 2.5,
  tilt: 1,
  roll: 1.1,
  focal: 18 * distance,
  size,
  aim: [7, 6],
});

/** Stick and string, in inches: forward, up, and how far before the middle of the horse. */
const near = subject.ellipse.halfWidth;
export const stick = { length: 36, height: 9.5, from: -5, to: -41, out: near };
export const plumb = { forward: -57, top: 40, bottom: -26, out: near };

/** The pixel of a place that is given forward, up and out. */
export const pixelAt = (forward: number, up: number, out: number): Pixel =>
  project(camera, [subject.facing * forward, up, out]);

/** The pixel of a place on the skin. */
export const skinPixel = (forward: number, station: number, out = 0): Pixel =>
  project(camera, skin(subject, forward, station, out));

/** Top and bottom of the barrel as the camera sees it. */
export const seenOutline = (forward: number, top: boolean): Vector =>
  outline(subject, camera, { forward, top });

/** How far out the skin is at a station. */
export const outAt = (station: number): number =>
  subject.ellipse.halfWidth * Math.sin(stationToAngle(subject.ellipse, station));

/** True pixels of everything the photo block asks for. */
export const marks = {
  ...landmarks(subject, camera),
  from: pixelAt(stick.from, stick.height, stick.out),
  to: pixelAt(stick.to, stick.height, stick.out),
  plumbTop: pixelAt(plumb.forward, plumb.top, plumb.out),
  plumbBottom: pixelAt(plumb.forward, plumb.bottom, plumb.out),
};
