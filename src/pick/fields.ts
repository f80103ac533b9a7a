/** What is typed on the page, and whether an order would take it. */
import { photoBounds } from '../numbers/photo-bounds.ts';
import { parseLength } from '../units/length.ts';
import type { ReferenceKind } from './landmarks.ts';

/** As typed; checked where it is used. */
export interface Fields {
  readonly length: string;
  readonly lengthUnit: string;
  readonly width: string;
  readonly height: string;
  readonly sheetUnit: string;
  readonly distance: string;
  readonly distanceUnit: string;
}

/** The order's limits. */
export const bounds = {
  length: photoBounds.referenceLength,
  width: photoBounds.sheetWidth,
  height: photoBounds.sheetHeight,
  distance: photoBounds.cameraDistance,
} as const;

export type Measured = keyof typeof bounds;

/** The unit that goes with each. */
export const unitFields = {
  length: 'lengthUnit',
  width: 'sheetUnit',
  height: 'sheetUnit',
  distance: 'distanceUnit',
} as const satisfies Record<Measured, keyof Fields>;

/** As the order writes it; meters become centimeters. */
export function writtenText(fields: Fields, field: Measured): string {
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

/** Needed now. */
const asked = (kind: ReferenceKind): readonly Measured[] =>
  kind === 'stick' ? ['length'] : ['width', 'height'];

type Typed = { readonly kind: ReferenceKind; readonly fields: Fields };

/** Needed and empty. */
export const emptyFields = ({ kind, fields }: Typed): readonly Measured[] =>
  asked(kind).filter((field) => fields[field].trim() === '');

/** Not a length the order takes, empty ones included; distance is optional. */
export function badFields({ kind, fields }: Typed): readonly Measured[] {
  const given: readonly Measured[] = fields.distance.trim() === '' ? [] : ['distance'];
  return [...asked(kind), ...given].filter((field) => lengthOf(fields, field) === undefined);
}
