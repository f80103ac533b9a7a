/** The photo block of an order file, written from what was clicked. */
import { parseLength } from '../units/length.ts';
import type { PointId } from './landmarks.ts';
import type { Fields, Picked, Pixel } from './state.ts';
import type { Size } from './view.ts';

export interface Photo extends Size {
  /** Name of the file, without its folder. */
  readonly file: string;
}

/** A length as typed, with its unit, or undefined when it is none above zero. */
export function lengthText(number: string, unit: string): string | undefined {
  const text = `${number.trim()} ${unit}`;
  const read = parseLength(text);
  return read.ok && read.inches > 0 ? text : undefined;
}

/** What was typed for the reference is no length: the fields at fault. */
export function badFields({ kind, fields }: Picked): readonly (keyof Fields)[] {
  const bad = (field: keyof Fields, unit: string): (keyof Fields)[] =>
    lengthText(fields[field], unit) === undefined ? [field] : [];
  const given = fields.distance.trim() === '' ? [] : bad('distance', fields.distanceUnit);
  if (kind === 'stick') return [...bad('length', fields.lengthUnit), ...given];
  return [...bad('width', fields.sheetUnit), ...bad('height', fields.sheetUnit), ...given];
}

/** YAML of the block, as far as it is known; what is missing has no line. */
export function blockOf(now: Picked, photo: Photo): string {
  const { points, fields } = now;
  const line = (key: string, id: PointId): string[] => {
    const at = points[id];
    return at === undefined ? [] : [`  ${key}: ${pixel(at)}`];
  };
  const distance = lengthText(fields.distance, fields.distanceUnit);
  const top = points['plumb-top'];
  const bottom = points['plumb-bottom'];
  return [
    'photo:',
    `  file: ${scalar(photo.file)}`,
    `  image-size: [${String(photo.width)}, ${String(photo.height)}]`,
    ...reference(now),
    ...(top === undefined || bottom === undefined
      ? []
      : [`  plumb: { top: ${pixel(top)}, bottom: ${pixel(bottom)} }`]),
    ...line('ring', 'ring'),
    ...line('elbow', 'elbow'),
    ...line('girth-groove', 'girth-groove'),
    ...line('spine', 'spine'),
    ...line('underline', 'underline'),
    ...line('fork', 'fork'),
    ...line('cantle', 'cantle'),
    ...(distance === undefined ? [] : [`  camera-distance: ${distance}`]),
    '',
  ].join('\n');
}

function reference({ kind, points, fields }: Picked): string[] {
  if (kind === 'stick') {
    const length = lengthText(fields.length, fields.lengthUnit);
    const { from, to } = points;
    if (length === undefined || from === undefined || to === undefined) return [];
    return [`  reference: { length: ${length}, from: ${pixel(from)}, to: ${pixel(to)} }`];
  }
  const width = lengthText(fields.width, fields.sheetUnit);
  const height = lengthText(fields.height, fields.sheetUnit);
  const corners = cornersOf(points);
  if (width === undefined || height === undefined || corners === undefined) return [];
  return [`  reference: { width: ${width}, height: ${height}, corners: [${corners.map(pixel).join(', ')}] }`];
}

/** The four corners of a sheet, or undefined until all are there. */
export function cornersOf(points: Picked['points']): readonly [Pixel, Pixel, Pixel, Pixel] | undefined {
  const { 'corner-1': a, 'corner-2': b, 'corner-3': c, 'corner-4': d } = points;
  return a === undefined || b === undefined || c === undefined || d === undefined ? undefined : [a, b, c, d];
}

const pixel = ([x, y]: Pixel): string => `[${String(x)}, ${String(y)}]`;

/** A name that YAML could take for something else is quoted; JSON's quotes are YAML's double quotes (YAML 1.2.2, 1.3). */
function scalar(text: string): string {
  if (/^[A-Za-z][\w-]*(\.[\w-]+)*\.(jpe?g|png)$/i.test(text)) return text;
  // Signs that JSON leaves as they are and YAML does not print, lone halves of pairs among them.
  return JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ud800-\udfff]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
