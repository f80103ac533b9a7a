/** Lengths as the bench reads them: quarter inches for finished things, decimals for computed distances; the same on every machine. */
import type { Inches } from './length.ts';

/** NIST SP 811, appendix B. */
export const cmPerInch = 2.54;
const fractions = ['', '1/4', '1/2', '3/4'];

/**
 * Inches -> text in the reader's unit. `finished` is what a tape can follow: "4 1/4 in", "10.8 cm";
 * `computed` keeps decimals: "1.24 in", "3.1 cm".
 */
export function formatLength(
  inches: Inches,
  unit: 'in' | 'cm' = 'in',
  style: 'finished' | 'computed' = 'finished',
): string {
  if (unit === 'cm') return `${decimals(inches * cmPerInch, 1)} cm`;
  return style === 'computed' ? `${decimals(inches, 2)} in` : `${quarters(inches)} in`;
}

/** A number with so many decimals, and never "-0.0". */
export function decimals(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

function quarters(inches: Inches): string {
  const count = Math.round(Math.abs(inches) * 4);
  const whole = Math.floor(count / 4);
  const part = fractions[count % 4] ?? '';
  const sign = inches < 0 && count > 0 ? '-' : '';
  if (part === '') return `${sign}${String(whole)}`;
  return whole === 0 ? `${sign}${part}` : `${sign}${String(whole)} ${part}`;
}
