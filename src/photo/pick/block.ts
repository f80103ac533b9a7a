/** Writes an order's photo block from the marks. */
import type { Pixel, Reference } from '../../order/photo-types.ts';
import { lengthOf, type Measured } from './fields.ts';
import type { PointId } from './landmarks.ts';
import type { Picked } from './state.ts';
import type { Size } from './view.ts';

export interface PhotoFile extends Size {
  /** Without its folder. */
  readonly file: string;
}

/** YAML; missing marks have no line. */
export function blockOf(now: Picked, photo: PhotoFile): string {
  const { points, fields } = now;
  const line = (key: string, id: PointId): string[] => {
    const at = points[id];
    return at === undefined ? [] : [`  ${key}: ${pixel(at)}`];
  };
  const distance = lengthOf(fields, 'distance');
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
    ...(distance === undefined ? [] : [`  camera-distance: ${distance.text}`]),
    '',
  ].join('\n');
}

function reference(now: Picked): string[] {
  const { points, fields } = now;
  const corners = cornersOf(points);
  const text = (field: Measured): string => lengthOf(fields, field)?.text ?? '';
  const whole = referenceOf(now);
  if (whole === undefined) return [];
  if (whole.kind === 'stick')
    return [`  reference: { length: ${text('length')}, from: ${pixel(whole.from)}, to: ${pixel(whole.to)} }`];
  const round = (corners ?? []).map(pixel).join(', ');
  return [`  reference: { width: ${text('width')}, height: ${text('height')}, corners: [${round}] }`];
}

/** undefined until complete. */
export function referenceOf({ kind, points, fields }: Picked): Reference | undefined {
  if (kind === 'stick') {
    const length = lengthOf(fields, 'length');
    const { from, to } = points;
    if (length === undefined || from === undefined || to === undefined) return undefined;
    return { kind, length: length.inches, from, to };
  }
  const [width, height] = [lengthOf(fields, 'width'), lengthOf(fields, 'height')];
  const corners = cornersOf(points);
  if (width === undefined || height === undefined || corners === undefined) return undefined;
  return { kind, width: width.inches, height: height.inches, corners };
}

function cornersOf(points: Picked['points']): readonly [Pixel, Pixel, Pixel, Pixel] | undefined {
  const { 'corner-1': a, 'corner-2': b, 'corner-3': c, 'corner-4': d } = points;
  return a === undefined || b === undefined || c === undefined || d === undefined ? undefined : [a, b, c, d];
}

const pixel = ([x, y]: Pixel): string => `[${String(x)}, ${String(y)}]`;

/** Quotes what YAML could misread; JSON's quotes are valid there (YAML 1.2.2, 1.3). */
function scalar(text: string): string {
  if (/^[A-Za-z][\w-]*(\.[\w-]+)*\.(jpe?g|png)$/i.test(text)) return text;
  // JSON keeps these, YAML does not print them.
  return JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff\ud800-\udfff]/gu,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
