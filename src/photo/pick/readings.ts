/** Measurements from the marks so far, read as in an order. */
import { ellipsePerimeter, solveEllipse, type Ellipse } from '../../math/ellipse.ts';
import type { Photo, Reference } from '../../order/photo-types.ts';
import { pixelsAnInch } from '../read/camera.ts';
import { readLandmarks, type PhotoReading, type Seen } from '../read/reading.ts';
import type { Guess } from '../read/scene.ts';
import { defaultModel as model } from '../../numbers/numbers.ts';
import { decimals } from '../../units/print.ts';
import { referenceOf, type PhotoFile } from './block.ts';
import type { Doubt, Told } from './doubts-marks.ts';
import { doubtsOf, unusual } from './doubts.ts';
import { lengthOf } from './fields.ts';
import type { PointId } from './landmarks.ts';
import type { Picked, Points } from './state.ts';

export interface Row {
  readonly label: string;
  readonly value: string;
}

export interface Readings {
  readonly rows: readonly Row[];
  /** Refusals first. */
  readonly doubts: readonly Doubt[];
}

/** Missing marks give no row. */
export function readingsOf(now: Picked, photo: PhotoFile): Readings {
  const reference = referenceOf(now);
  const distance = lengthOf(now.fields, 'distance')?.inches;
  const doubts = doubtsOf(now, { reference, distance, size: [photo.width, photo.height] });
  const told = new Set(doubts.map(({ tells }) => tells));
  const facing = facingRow(now.points);
  if (reference === undefined) return { rows: facing, doubts };
  const { seen } = readAll(marksOf(now, photo, reference));
  const rows = [...rowsOf(now, reference, { seen, told }), ...facing];
  return doubts.some((doubt) => doubt.refused)
    ? { rows, doubts }
    : { rows, doubts: [...unusual(now.points, seen), ...doubts] };
}

function facingRow({ elbow, 'girth-groove': groove }: Points): Row[] {
  if (elbow === undefined || groove === undefined || elbow[0] === groove[0]) return [];
  const way = elbow[0] > groove[0] ? 'right' : 'left';
  return [
    {
      label: 'The horse faces',
      value: `${way}; if not, elbow and girth groove are swapped`,
    },
  ];
}

function rowsOf(
  now: Picked,
  reference: Reference,
  { seen, told }: { seen: PhotoReading['seen']; told: ReadonlySet<Told | undefined> },
): Row[] {
  const { points } = now;
  const scale = {
    label: 'Scale at the measure',
    value: `${decimals(pixelsAnInch(reference), 1)} pixels per inch`,
  };
  const has = (...ids: readonly PointId[]): boolean => ids.every((id) => points[id] !== undefined);
  const row = (shown: boolean, label: string, length: Seen | undefined): Row[] =>
    shown && length !== undefined && Number.isFinite(length.value) ? [{ label, value: about(length) }] : [];
  return [
    scale,
    ...row(has('elbow', 'girth-groove') && !told.has('room'), 'Room behind the elbow', seen.room),
    ...row(has('spine') && !told.has('depth'), 'Depth of the barrel', seen.depth),
    ...(has('elbow', 'girth-groove', 'ring') && !told.has('ring') ? [ringRow(seen.ringOffset)] : []),
    ...row(has('elbow', 'girth-groove', 'ring', 'fork'), 'Set-back of the ring', seen.setBack),
    ...row(has('elbow', 'girth-groove', 'fork', 'cantle'), 'Fork to cantle', seen.barSpan),
    ...leanRow(points),
  ];
}

const about = ({ value, sd }: Seen): string => `${decimals(value, 1)} in, give or take ${decimals(sd, 1)}`;

function ringRow({ value, sd }: Seen): Row {
  const way = value < 0 ? 'behind' : 'ahead of';
  return {
    label: 'Ring',
    value: `${decimals(Math.abs(value), 1)} in ${way} the groove, give or take ${decimals(sd, 1)}`,
  };
}

function leanRow({ 'plumb-top': top, 'plumb-bottom': bottom }: Points): Row[] {
  if (top === undefined || bottom === undefined) return [];
  const lean = (Math.atan2(top[0] - bottom[0], bottom[1] - top[1]) * 180) / Math.PI;
  return [
    {
      label: 'Picture tilted',
      value: `${decimals(Math.abs(lean), 1)} degrees, allowed for`,
    },
  ];
}

/** Missing marks borrow another's place, so the rest can be read; no row depends on them. */
function marksOf({ points, fields }: Picked, photo: PhotoFile, reference: Reference): Photo {
  const { 'plumb-top': top, 'plumb-bottom': bottom, 'girth-groove': groove, fork, cantle } = points;
  const any = groove ?? points.underline ?? points.elbow ?? [photo.width / 2, photo.height / 2];
  return {
    file: photo.file,
    imageSize: [photo.width, photo.height],
    reference,
    referenceDepth: undefined,
    plumb: top === undefined || bottom === undefined ? undefined : { top, bottom },
    ring: points.ring ?? any,
    elbow: points.elbow ?? any,
    groove: groove ?? any,
    spine: points.spine,
    underline: points.underline,
    fork,
    cantle,
    cameraDistance: lengthOf(fields, 'distance')?.inches,
  };
}

/** The girth is unknown: first an average barrel, then by the depth seen. */
function readAll(marks: Photo): PhotoReading {
  const first = readLandmarks(
    marks,
    guessOf(solveEllipse(model['average-girth'], model['ratio-average'])),
    model,
  );
  const halfDepth = (first.seen.depth?.value ?? 0) / 2;
  if (!(halfDepth > 5 && halfDepth < 25)) return first;
  return readLandmarks(marks, guessOf({ halfWidth: model['ratio-average'] * halfDepth, halfDepth }), model);
}

function guessOf(ellipse: Ellipse): Guess {
  const k = ellipsePerimeter(ellipse.halfWidth, ellipse.halfDepth) / model['average-girth'];
  return {
    ellipse,
    halfWidthSd: model['ratio-sd'] * ellipse.halfDepth,
    elbowStation: model['elbow-station'] * k,
  };
}
