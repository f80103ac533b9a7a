/** Invented horses before a slightly misplaced camera. */
import type { Advice } from '../../src/advice/advice.ts';
import { photoWorth } from '../../src/advice/photo-worth.ts';
import { surerPhoto } from '../../src/horse/photo-surer.ts';
import { heightAt, solveEllipse } from '../../src/math/ellipse.ts';
import type { Random } from '../../src/math/random.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Photo, Reference } from '../../src/order/photo-types.ts';
import type { Order } from '../../src/order/types.ts';
import type { PhotoResult } from '../../src/words/types.ts';
import {
  cameraAt,
  demo,
  landmarks,
  project,
  type Camera,
  type Pixel,
  type Subject,
  type Vector,
} from './camera.ts';
import { orderOf, rigging } from './orders.ts';

/** The example order's photo. */
export const demoPhoto: Photo = {
  file: 'photos/juniper-side.jpg',
  imageSize: demo.camera.size,
  reference: { kind: 'stick', length: 36, from: demo.clicks.from, to: demo.clicks.to },
  referenceDepth: undefined,
  plumb: { top: demo.clicks.top, bottom: demo.clicks.bottom },
  ring: demo.clicks.ring,
  elbow: demo.clicks.elbow,
  groove: demo.clicks['girth-groove'],
  spine: demo.clicks.spine,
  underline: demo.clicks.underline,
  fork: demo.clicks.fork,
  cantle: demo.clicks.cantle,
  cameraDistance: 144,
};

/** An order with that photo. */
export const photographed = (change: Parameters<typeof orderOf>[0] = {}): Order =>
  orderOf({ photo: demoPhoto, saddle: { rigging: rigging('7/8') }, ...change });

export interface Drawn {
  readonly photo: Photo;
  readonly subject: Subject;
  readonly girth: number;
  /** True lengths, inches. */
  readonly truth: {
    readonly room: number;
    readonly ringBehindElbow: number;
    readonly ringOffset: number;
    readonly ringHeight: number;
    readonly depth: number;
    readonly setBack: number;
    readonly barSpan: number;
  };
}

export interface How {
  readonly reference: 'level stick' | 'upright stick' | 'sheet';
  /** Degrees, at most. */
  readonly yaw: number;
  readonly plumb: boolean;
  /** The camera's distance is given. */
  readonly paced: boolean;
}

const size: Pixel = [4032, 3024];
const focal = 3200;
const span = 13;
const DEGREE = Math.PI / 180;

/**
 * From 10 to 20 ft, roll to 3 degrees, other errors from src/numbers/photo-numbers.ts. The room is the model's
 * with its spread.
 */
export function drawScene(random: Random, how: How): Drawn {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const about = (sd: number): number => sd * random.normal();
  const girth = between(66, 80);
  const k = girth / 72;
  const room = 4 * k + about(0.5);
  const back = between(0, 4);
  const fork = room - 2 * k;
  const subject: Subject = {
    ellipse: solveEllipse(girth, 0.7 + about(0.07)),
    facing: random.uniform() < 0.5 ? -1 : 1,
    room,
    elbowStation: 7 * k,
    elbowOut: about(1.5),
    ring: { x: fork - back, station: girth / 2 - 14 * k + about(1.5), out: about(1) },
    fork: { x: fork, y: 30 * k, out: about(3) },
    cantle: { x: fork - span, y: 30 * k, out: about(3) },
  };
  const distance = between(120, 240);
  const camera = cameraAt(subject, {
    distance,
    yaw: between(-how.yaw, how.yaw),
    tilt: about(4),
    roll: between(-3, 3),
    focal,
    size,
    aim: [between(-6, 6), subject.ellipse.halfDepth + between(-6, 6)],
  });
  const photo = clicked({ subject, camera, how, random, distance });
  return { photo, subject, girth, truth: truthOf(subject) };
}

function truthOf({ ellipse, room, ring, fork }: Subject): Drawn['truth'] {
  return {
    room,
    ringBehindElbow: room - ring.x,
    ringOffset: ring.x,
    ringHeight: heightAt(ellipse, ring.station),
    depth: 2 * ellipse.halfDepth,
    setBack: fork.x - ring.x,
    barSpan: span,
  };
}

interface Shot {
  readonly subject: Subject;
  readonly camera: Camera;
  readonly how: How;
  readonly random: Random;
  readonly distance: number;
}

/** Off by a thousandth of the picture, and on the body by a fifth of an inch too. */
function clicked({ subject, camera, how, random, distance }: Shot): Photo {
  const off = ([x, y]: Pixel, sd: number): Pixel => [x + sd * random.normal(), y + sd * random.normal()];
  const hand = 0.001 * size[0];
  const eye = (inches: number): number => Math.hypot(hand, (inches * focal) / distance);
  const at = (point: Vector): Pixel => off(project(camera, point), hand);
  const marks = landmarks(subject, camera);
  const near = subject.ellipse.halfWidth;
  return {
    file: 'side.jpg',
    imageSize: size,
    reference: referenceOf(how.reference, { random, at, z: near + 1.5 * random.normal() }),
    referenceDepth: undefined,
    plumb: how.plumb ? { top: at([-30, 40, near]), bottom: at([-30, 5, near]) } : undefined,
    ring: off(marks.ring, hand),
    elbow: off(marks.elbow, eye(0.2)),
    groove: off(marks.groove, eye(0.2)),
    underline: off(marks.underline, eye(0.2)),
    spine: off(marks.spine, eye(0.5)),
    fork: off(marks.fork, hand),
    cantle: off(marks.cantle, hand),
    cameraDistance: how.paced ? distance * (1 + 0.05 * random.normal()) : undefined,
  };
}

interface Hold {
  readonly random: Random;
  readonly at: (point: Vector) => Pixel;
  readonly z: number;
}

/** A 36 in stick, or a 36 by 24 in sheet turned each way. */
function referenceOf(kind: How['reference'], { random, at, z }: Hold): Reference {
  const length = 36 * (1 + 0.005 * random.normal());
  if (kind === 'level stick')
    return { kind: 'stick', length: 36, from: at([-20, 9, z]), to: at([length - 20, 9, z]) };
  if (kind === 'upright stick')
    return { kind: 'stick', length: 36, from: at([-20, 2, z]), to: at([-20, 2 + length, z]) };
  const [yaw, tilt, roll] = [0, 1, 2].map(() => 4 * DEGREE * random.normal()) as [number, number, number];
  const corner = (right: number, up: number): Pixel => {
    const [x, y] = [
      right * Math.cos(roll) - up * Math.sin(roll),
      right * Math.sin(roll) + up * Math.cos(roll),
    ];
    return at([x * Math.cos(yaw) - 18, y * Math.cos(tilt) + 4, z - x * Math.sin(yaw) - y * Math.sin(tilt)]);
  };
  return {
    kind: 'sheet',
    width: 36,
    height: 24,
    corners: [corner(0, 24), corner(36, 24), corner(36, 0), corner(0, 0)],
  };
}

export function photoResultFor(advice: Advice, file: string): PhotoResult & { readonly ok: true } {
  const { order, photo, shop } = { ...advice.facts, photo: advice.facts.photo! };
  const worth = photoWorth(advice, sizeOrder({ ...order, photo: undefined }, shop));
  return { ok: true, file, advice, photo, picture: { there: false }, worth, surer: surerPhoto(advice.facts) };
}
