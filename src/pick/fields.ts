/** What is typed on the page: whether it is a length that the order takes, and if not, why not. */
import { photoBounds } from '../numbers/photo-bounds.ts';
import { parseLength } from '../units/length.ts';
import type { ReferenceKind } from './landmarks.ts';

/** As typed: whether it is a length is judged where it is used. */
export interface Fields {
  readonly length: string;
  readonly lengthUnit: string;
  readonly width: string;
  readonly height: string;
  readonly sheetUnit: string;
  readonly distance: string;
  readonly distanceUnit: string;
}

/** What the order's door takes. */
export const bounds = {
  length: photoBounds.referenceLength,
  width: photoBounds.sheetWidth,
  height: photoBounds.sheetHeight,
  distance: photoBounds.cameraDistance,
} as const;

export type Measured = keyof typeof bounds;

/** Where the unit of each stands. */
export const unitFields = {
  length: 'lengthUnit',
  width: 'sheetUnit',
  height: 'sheetUnit',
  distance: 'distanceUnit',
} as const satisfies Record<Measured, keyof Fields>;

/** Text that an order takes; orders have no meters, so that those are written as centimeters. */
export function writtenText(fields: Fields, field: Measured): string {
  const [number, unit] = [fields[field].trim(), fields[unitFields[field]]];
  if (unit !== 'm') return `${number} ${unit}`;
  const read = parseLength(`${number} cm`);
  return read.ok ? `${String(Number((254 * read.inches).toFixed(2)))} cm` : `${number} m`;
}

/** A length with its unit, and its inches; undefined when it is none, or one that the order would not take. */
export function lengthOf(fields: Fields, field: Measured): { text: string; inches: number } | undefined {
  const text = writtenText(fields, field);
  const read = parseLength(text);
  const { min, max } = bounds[field];
  return read.ok && read.inches >= min && read.inches <= max ? { text, inches: read.inches } : undefined;
}

/** The fields that must hold a length as things are. */
const asked = (kind: ReferenceKind): readonly Measured[] =>
  kind === 'stick' ? ['length'] : ['width', 'height'];

type Typed = { readonly kind: ReferenceKind; readonly fields: Fields };

/** The fields that must be filled and are empty. */
export const emptyFields = ({ kind, fields }: Typed): readonly Measured[] =>
  asked(kind).filter((field) => fields[field].trim() === '');

/** The fields whose text is no such length, empty ones among them; a distance may be left out. */
export function badFields({ kind, fields }: Typed): readonly Measured[] {
  const given: readonly Measured[] = fields.distance.trim() === '' ? [] : ['distance'];
  return [...asked(kind), ...given].filter((field) => lengthOf(fields, field) === undefined);
}
