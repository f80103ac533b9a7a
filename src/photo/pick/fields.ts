/** What is typed on the page, and whether an order takes it. */
import { photoBounds } from '../../numbers/photo-bounds.ts';
import { parseLength } from '../../units/length.ts';
import { decimals } from '../../units/print.ts';
import type { ReferenceKind } from './landmarks.ts';

/** As typed. */
export interface Fields {
  readonly length: string;
  readonly lengthUnit: string;
  readonly width: string;
  readonly height: string;
  readonly sheetUnit: string;
  readonly distance: string;
  readonly distanceUnit: string;
}

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

/** Orders know no meters: they become centimeters. */
function writtenText(fields: Fields, field: Measured): string {
  const [number, unit] = [fields[field].trim(), fields[unitFields[field]]];
  if (unit !== 'm') return `${number} ${unit}`;
  const read = parseLength(`${number} cm`);
  return read.ok ? `${String(Number((254 * read.inches).toFixed(2)))} cm` : `${number} m`;
}

/** undefined when the order would refuse it. */
export function lengthOf(fields: Fields, field: Measured): { text: string; inches: number } | undefined {
  const text = writtenText(fields, field);
  const read = parseLength(text);
  const { min, max } = bounds[field];
  return read.ok && read.inches >= min && read.inches <= max ? { text, inches: read.inches } : undefined;
}

const asked = (kind: ReferenceKind): readonly Measured[] =>
  kind === 'stick' ? ['length'] : ['width', 'height'];

type Typed = { readonly kind: ReferenceKind; readonly fields: Fields };

/** Needed and empty. */
export const emptyFields = ({ kind, fields }: Typed): readonly Measured[] =>
  asked(kind).filter((field) => fields[field].trim() === '');

/** Not a length the order takes, or empty; distance is optional. */
export function badFields({ kind, fields }: Typed): readonly Measured[] {
  const given: readonly Measured[] = fields.distance.trim() === '' ? [] : ['distance'];
  return [...asked(kind), ...given].filter((field) => lengthOf(fields, field) === undefined);
}

const names: Readonly<Record<Measured, string>> = {
  length: 'Length of the stick or tape',
  width: 'Width of the sheet',
  height: 'Height of the sheet',
  distance: 'Camera distance',
};

/** What is wrong, and what to write. */
export function fieldFault(fields: Fields, field: Measured): string | undefined {
  if (lengthOf(fields, field) !== undefined) return undefined;
  const typed = fields[field].trim();
  if (typed === '') return `${names[field]}: not filled in yet.`;
  const read = parseLength(writtenText(fields, field));
  const unit = fields[unitFields[field]];
  if (read.ok)
    return `${names[field]}: must be ${limit(bounds[field].min, unit)} to ${limit(bounds[field].max, unit)}. Check the number and its unit.`;
  if (/^\d+,\d+$/.test(typed))
    return `${names[field]}: write a point, not a comma: ${typed.replace(',', '.')}.`;
  return `${names[field]}: write just a number, like 36 or 8 1/2, and choose its unit.`;
}

const inchesIn: Readonly<Record<string, number>> = { ft: 12, cm: 1 / 2.54, mm: 1 / 25.4, m: 100 / 2.54 };
const limit = (inches: number, unit: string): string =>
  `${String(Number(decimals(inches / (inchesIn[unit] ?? 1), 2)))} ${unit}`;
