/** A camera and a horse known exactly, to check photo readings against the truth. */
import { heightAt, solveEllipse, stationToAngle, type Ellipse } from '../../src/math/ellipse.ts';

/**
 * Independent of src/math/pinhole.ts: a camera at a point looks at a point. Inches: x forward along the horse from
 * the girth groove, y up from the chest midline, z from the middle of the horse toward the camera.
 */

export type Vector = readonly [number, number, number];
export type Pixel = readonly [number, number];

export interface Camera {
  readonly position: Vector;
  /** At the middle of the picture. */
  readonly aim: Vector;
  /** Degrees clockwise. */
  readonly roll: number;
  /** Pixels per inch at one inch. */
  readonly focal: number;
  readonly size: Pixel;
}

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => {
  const size = Math.sqrt(dot(a, a));
  return [a[0] / size, a[1] / size, a[2] / size];
};

/** Pinhole. For a horse that faces left give -x. */
export function project({ position, aim, roll, focal, size }: Camera, point: Vector): Pixel {
  const forward = unit(minus(aim, position));
  const right = unit(cross(forward, [0, 1, 0]));
  const down = cross(forward, right);
  const seen = minus(point, position);
  const scale = focal / dot(seen, forward);
  const [u, v] = [scale * dot(seen, right), scale * dot(seen, down)];
  const turn = (roll * Math.PI) / 180;
  return [
    size[0] / 2 + u * Math.cos(turn) - v * Math.sin(turn),
    size[1] / 2 + u * Math.sin(turn) + v * Math.cos(turn),
  ];
}

export interface Subject {
  readonly ellipse: Ellipse;
  /** 1 when the horse faces right. */
  readonly facing: 1 | -1;
  /** Groove to the back of the elbow. */
  readonly room: number;
  readonly elbowStation: number;
  /** From the skin of the barrel. */
  readonly elbowOut: number;
  /** Inches forward of the groove, station on the skin, inches out from it. */
  readonly ring: { readonly x: number; readonly station: number; readonly out: number };
  /** Inches forward of the groove, and up. */
  readonly fork: { readonly x: number; readonly y: number; readonly out: number };
  readonly cantle: { readonly x: number; readonly y: number; readonly out: number };
}

/** On the skin, or `out` inches from it toward the camera. */
export function skin(
  { ellipse, facing }: Subject,
  { x: forward, station, out = 0 }: { x: number; station: number; out?: number },
): Vector {
  const z = ellipse.halfWidth * Math.sin(stationToAngle(ellipse, station));
  return [facing * forward, heightAt(ellipse, station), z + out];
}

/** Where the line of sight touches the section: by search, not formula. */
export function outline(
  { ellipse, facing }: Subject,
  camera: Camera,
  at: { forward: number; top: boolean },
): Vector {
  const pointAt = (t: number): Vector => [
    facing * at.forward,
    ellipse.halfDepth * (1 - Math.cos(t)),
    ellipse.halfWidth * Math.sin(t),
  ];
  const slope = (t: number): number => {
    const [, y, z] = pointAt(t);
    return (y - camera.position[1]) / (camera.position[2] - z);
  };
  let [low, high] = at.top ? [Math.PI / 2, Math.PI] : [0, Math.PI / 2];
  for (let i = 0; i < 100; i += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    const rises = slope(a) < slope(b);
    if (rises === at.top) low = a;
    else high = b;
  }
  return pointAt((low + high) / 2);
}

export interface Landmarks {
  readonly ring: Pixel;
  readonly elbow: Pixel;
  readonly groove: Pixel;
  readonly spine: Pixel;
  readonly underline: Pixel;
  readonly fork: Pixel;
  readonly cantle: Pixel;
}

export function landmarks(subject: Subject, camera: Camera): Landmarks {
  const { facing, ring, room, elbowStation, elbowOut, fork, cantle } = subject;
  const bottom = outline(subject, camera, { forward: 0, top: false });
  return {
    ring: project(camera, skin(subject, ring)),
    elbow: project(camera, skin(subject, { x: room, station: elbowStation, out: elbowOut })),
    groove: project(camera, bottom),
    underline: project(camera, bottom),
    spine: project(camera, outline(subject, camera, { forward: 0, top: true })),
    fork: project(camera, [facing * fork.x, fork.y, fork.out]),
    cantle: project(camera, [facing * cantle.x, cantle.y, cantle.out]),
  };
}

/** `distance` inches from the barrel's near side, `yaw` degrees right and `tilt` up, aimed at the barrel. */
export function cameraAt(
  { ellipse }: Subject,
  stand: {
    distance: number;
    yaw: number;
    tilt: number;
    roll: number;
    focal: number;
    size: Pixel;
    aim?: Pixel;
  },
): Camera {
  const [yaw, tilt] = [(stand.yaw * Math.PI) / 180, (stand.tilt * Math.PI) / 180];
  const [x, y] = stand.aim ?? [0, ellipse.halfDepth];
  const aim: Vector = [x, y, ellipse.halfWidth];
  const { distance, roll, focal, size } = stand;
  const position: Vector = [
    x + distance * Math.sin(yaw) * Math.cos(tilt),
    y + distance * Math.sin(tilt),
    ellipse.halfWidth + distance * Math.cos(yaw) * Math.cos(tilt),
  ];
  return { position, aim, roll, focal, size };
}

/** The examples' photo: the horse of examples/orders/02-everything-measured.yaml, 12 ft away, slightly askew. */
export const demo = demoScene();

function demoScene() {
  // Girth 74 in, average barrel; taped: room 4 1/4 in, set-back 1 3/4 in, bars 13 in, ring to ring 45 in.
  const k = 74 / 72;
  const fork = 4.25 - 2 * k;
  const subject: Subject = {
    ellipse: solveEllipse(74, 0.7),
    facing: -1,
    room: 4.25,
    elbowStation: 7 * k,
    elbowOut: 0.5,
    ring: { x: fork - 1.75, station: 22.5, out: 0.75 },
    fork: { x: fork, y: 33, out: 0 },
    cantle: { x: fork - 13, y: 32, out: 0 },
  };
  const size: Pixel = [1600, 1200];
  const stand = { distance: 144, yaw: 2.5, tilt: -1.5, roll: 1.2, focal: 1250, size, aim: [8, 12] as Pixel };
  const camera = cameraAt(subject, stand);
  const near = subject.ellipse.halfWidth;
  // 36 in stick below the stirrup; 38 in string from a rail behind the horse.
  const stick: readonly [Vector, Vector] = [
    [-10, 7, near],
    [26, 7, near],
  ];
  const string: readonly [Vector, Vector] = [
    [46, 40, near],
    [46, 2, near],
  ];
  const { ring, elbow, groove, spine, underline, ...saddle } = landmarks(subject, camera);
  const at = (point: Vector): Pixel => whole(project(camera, point));
  return {
    subject,
    camera,
    stick,
    string,
    /** Whole pixels, as clicked. */
    clicks: {
      ring: whole(ring),
      elbow: whole(elbow),
      'girth-groove': whole(groove),
      spine: whole(spine),
      underline: whole(underline),
      fork: whole(saddle.fork),
      cantle: whole(saddle.cantle),
      from: at(stick[0]),
      to: at(stick[1]),
      top: at(string[0]),
      bottom: at(string[1]),
    },
  };
}

function whole([x, y]: Pixel): Pixel {
  return [Math.round(x), Math.round(y)];
}
