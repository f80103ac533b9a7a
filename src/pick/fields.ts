/** What is typed on the page: whether it is a length that the order takes, and if not, why not. */
import { photoBounds } from '../sources/photo-bounds.ts';
import { parseLength } from '../units/length.ts';
import { decimals } from '../units/print.ts';
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
const bounds = {
  length: photoBounds.referenceLength,
  width: photoBounds.sheetWidth,
  height: photoBounds.sheetHeight,
  distance: photoBounds.cameraDistance,
} as const;

export type Measured = keyof typeof bounds;

const unitFields = {
  length: 'lengthUnit',
  width: 'sheetUnit',
  height: 'sheetUnit',
  distance: 'distanceUnit',
} as const satisfies Record<Measured, keyof Fields>;

const names: Readonly<Record<Measured, string>> = {
  length: 'Length of the stick or tape',
  width: 'Width of the sheet',
  height: 'Height of the sheet',
  distance: 'Camera distance',
};

/** Text that an order takes; orders have no meters, so that those are written as centimeters. */
function writtenText(fields: Fields, field: Measured): string {
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
const asked = (kind: ReferenceKind): readonly Measured[] => (kind === 'stick' ? ['length'] : ['width', 'height']);

type Typed = { readonly kind: ReferenceKind; readonly fields: Fields };

/** The fields that must be filled and are empty. */
export const emptyFields = ({ kind, fields }: Typed): readonly Measured[] =>
  asked(kind).filter((field) => fields[field].trim() === '');

/** The fields whose text is no such length, empty ones among them; a distance may be left out. */
export function badFields({ kind, fields }: Typed): readonly Measured[] {
  const given: readonly Measured[] = fields.distance.trim() === '' ? [] : ['distance'];
  return [...asked(kind), ...given].filter((field) => lengthOf(fields, field) === undefined);
}

/** Why a field's text cannot be taken, with what could be; undefined when it can. */
export function fieldFault(fields: Fields, field: Measured): string | undefined {
  if (lengthOf(fields, field) !== undefined) return undefined;
  const typed = fields[field].trim();
  if (typed === '') return `${names[field]}: not written yet.`;
  const read = parseLength(writtenText(fields, field));
  const unit = fields[unitFields[field]];
  if (read.ok) return `${names[field]}: from ${limit(bounds[field].min, unit)} to ${limit(bounds[field].max, unit)} can be taken. Check the number and its unit.`;
  if (/^\d+,\d+$/.test(typed))
    return `${names[field]}: write a point, not a comma: ${typed.replace(',', '.')}.`;
  return `${names[field]}: write a number alone, like 36 or 8 1/2, and choose its unit.`;
}

const inchesIn: Readonly<Record<string, number>> = { ft: 12, cm: 1 / 2.54, mm: 1 / 25.4, m: 100 / 2.54 };
const limit = (inches: number, unit: string): string =>
  `${String(Number(decimals(inches / (inchesIn[unit] ?? 1), 2)))} ${unit}`;
