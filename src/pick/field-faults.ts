/** Why typed text is refused. */
import { parseLength } from '../units/length.ts';
import { decimals } from '../units/print.ts';
import { bounds, lengthOf, unitFields, writtenText, type Fields, type Measured } from './fields.ts';

const names: Readonly<Record<Measured, string>> = {
  length: 'Length of the stick or tape',
  width: 'Width of the sheet',
  height: 'Height of the sheet',
  distance: 'Camera distance',
};

/** With what would work; undefined when the text is fine. */
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
