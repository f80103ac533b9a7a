/** Lengths for the bench: quarters when finished, decimals when computed. */
import type { Inches } from './length.ts';

/** NIST SP 811, appendix B. */
export const cmPerInch = 2.54;
const fractions = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

/** `finished`: "4 1/4 in", "10.8 cm"; `computed`: "1.24 in". */
export function formatLength(
  inches: Inches,
  unit: 'in' | 'cm' = 'in',
  style: 'finished' | 'computed' = 'finished',
): string {
  if (unit === 'cm') return `${decimals(inches * cmPerInch, 1)} cm`;
  return style === 'computed' ? `${decimals(inches, 2)} in` : `${quarters(inches)} in`;
}

/** Never "-0.0". */
export function decimals(value: number, places: number): string {
  const text = value.toFixed(places);
  return Number(text) === 0 ? text.replace('-', '') : text;
}

const quarters = (inches: Inches): string => eighths(2 * Math.round(inches * 4));

const rounding = { nearest: Math.round, down: Math.floor, up: Math.ceil } as const;

/** Ignore a thousandth of a step. */
const hair = { nearest: 0, down: 1e-3, up: -1e-3 } as const;

/** To the eighth: room rounds down, overlap up. */
export function onTape(inches: Inches, unit: 'in' | 'cm', round: keyof typeof rounding): string {
  const steps = (perInch: number): number => rounding[round](inches * perInch + hair[round]);
  return unit === 'cm' ? `${decimals(steps(10 * cmPerInch) / 10, 1)} cm` : `${eighths(steps(8))} in`;
}

function eighths(count: number): string {
  const whole = Math.floor(Math.abs(count) / 8);
  const part = fractions[Math.abs(count) % 8] ?? '';
  const sign = count < 0 ? '-' : '';
  if (part === '') return `${sign}${String(whole)}`;
  return whole === 0 ? `${sign}${part}` : `${sign}${String(whole)} ${part}`;
}
