/** Everything that can be wrong about a side photo, with its spread. */
import type { Photo, Pixel } from '../../order/photo-types.ts';
import type { Model } from '../../numbers/numbers.ts';
import { pixelsAnInch } from './camera.ts';
import type { Scene, Unknowns } from './scene.ts';

/** As readers see them. */
export const errorSources = ['click', 'scale', 'depth', 'yaw', 'tilt', 'roll'] as const;
export type ErrorSource = (typeof errorSources)[number];

/** Independent of the others. */
export interface PhotoError {
  readonly source: ErrorSource;
  readonly sd: number;
  /** Depth of a mark. */
  readonly isPlace: boolean;
  /** The scene with that much error. */
  readonly turn: (scene: Scene, by: number) => Scene;
}

const places: ReadonlySet<string> = new Set(['elbowDepth', 'ringDepth', 'forkDepth', 'cantleDepth']);

/** Radians. */
export const DEGREE = Math.PI / 180;

/** Only those that apply to this photo. */
export function errorsOf(photo: Photo, { halfWidthSd }: Scene['guess'], model: Model): PhotoError[] {
  const unknown = (source: ErrorSource, name: keyof Unknowns, sd: number): PhotoError => ({
    source,
    sd,
    isPlace: places.has(name),
    turn: (scene, by) => ({ ...scene, unknowns: { ...scene.unknowns, [name]: scene.unknowns[name] + by } }),
  });
  const distanceSd =
    photo.cameraDistance === undefined
      ? model['photo-distance-sd']
      : photo.cameraDistance * model['photo-distance-paced-sd'];
  const angle = (
    key: 'photo-yaw-sd' | 'photo-tilt-sd' | 'photo-roll-sd' | 'photo-plumb-sd' | 'photo-sheet-sd',
  ): number => model[key] * DEGREE;
  const sheet = photo.reference.kind === 'sheet' ? angle('photo-sheet-sd') : 0;
  const plumb = photo.plumb !== undefined;
  const saddle = (mark: Pixel | undefined): number =>
    mark === undefined ? 0 : model['photo-saddle-depth-sd'];
  const errors = [
    ...clickErrors(photo, model),
    unknown('scale', 'reference', model['photo-reference-sd']),
    unknown('depth', 'referenceDepth', model['photo-reference-depth-sd']),
    unknown('depth', 'distance', distanceSd),
    unknown('depth', 'halfWidth', halfWidthSd),
    unknown('depth', 'elbowDepth', model['photo-elbow-depth-sd']),
    unknown('depth', 'ringDepth', model['photo-ring-depth-sd']),
    unknown('depth', 'forkDepth', saddle(photo.fork)),
    unknown('depth', 'cantleDepth', saddle(photo.cantle)),
    unknown('yaw', 'yaw', angle('photo-yaw-sd')),
    unknown('yaw', 'sheetYaw', sheet),
    unknown('tilt', 'tilt', angle('photo-tilt-sd')),
    unknown('tilt', 'sheetTilt', sheet),
    unknown('roll', 'roll', plumb ? 0 : angle('photo-roll-sd')),
    unknown('roll', 'plumb', plumb ? angle('photo-plumb-sd') : 0),
    unknown('roll', 'sheetRoll', plumb ? 0 : sheet),
  ];
  return errors.filter(({ sd }) => sd > 0);
}

type Move = (photo: Photo, by: Pixel) => Photo;
const shifted = ([x, y]: Pixel, [dx, dy]: Pixel): Pixel => [x + dx, y + dy];

/** Across and down: the hand's error, and the eye's for marks on the body. */
function clickErrors(photo: Photo, model: Model): PhotoError[] {
  const hand = model['photo-click-sd'] * Math.max(...photo.imageSize);
  const inch = pixelsAnInch(photo.reference);
  const eye = Math.hypot(hand, model['photo-landmark-sd'] * inch);
  const eyeOnSpine = Math.hypot(hand, model['photo-spine-sd'] * inch);
  const mark = (
    name: 'ring' | 'elbow' | 'groove' | 'spine' | 'underline' | 'fork' | 'cantle',
    sd: number,
  ): PhotoError[] =>
    photo[name] === undefined
      ? []
      : both(sd, (shot, by) => ({ ...shot, [name]: shot[name] && shifted(shot[name], by) }));
  return [
    ...mark('ring', hand),
    ...mark('elbow', eye),
    ...mark('groove', eye),
    ...mark('underline', eye),
    ...mark('spine', eyeOnSpine),
    ...mark('fork', hand),
    ...mark('cantle', hand),
    ...referenceClicks(photo, hand),
    ...(photo.plumb === undefined ? [] : plumbClicks(hand)),
  ];
}

function both(sd: number, move: Move): PhotoError[] {
  const error = (to: (by: number) => Pixel): PhotoError => ({
    source: 'click',
    sd,
    isPlace: false,
    turn: (scene, by) => ({ ...scene, photo: move(scene.photo, to(by)) }),
  });
  return [error((by) => [by, 0]), error((by) => [0, by])];
}

/** Clicks on the reference. */
export function referenceClicks({ reference }: Photo, sd: number): PhotoError[] {
  if (reference.kind === 'sheet') {
    return [0, 1, 2, 3].flatMap((at) => both(sd, (shot, by) => withCorner(shot, at, by)));
  }
  return (['from', 'to'] as const).flatMap((end) =>
    both(sd, (shot, by) =>
      shot.reference.kind === 'sheet'
        ? shot
        : { ...shot, reference: { ...shot.reference, [end]: shifted(shot.reference[end], by) } },
    ),
  );
}

function withCorner(shot: Photo, at: number, by: Pixel): Photo {
  if (shot.reference.kind === 'stick') return shot;
  const [a, b, c, d] = shot.reference.corners.map((corner, i) =>
    i === at ? shifted(corner, by) : corner,
  ) as [Pixel, Pixel, Pixel, Pixel];
  return { ...shot, reference: { ...shot.reference, corners: [a, b, c, d] } };
}

function plumbClicks(sd: number): PhotoError[] {
  return (['top', 'bottom'] as const).flatMap((end) =>
    both(sd, (shot, by) => ({
      ...shot,
      plumb: shot.plumb && { ...shot.plumb, [end]: shifted(shot.plumb[end], by) },
    })),
  );
}
