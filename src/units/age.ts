/** Ages of used cinches, "3 y" or "18 months", in years. */
import { parseNumber, toNumber, tidy } from './number.ts';

export type AgeRead = { ok: true; years: number } | { ok: false; why: string; suggestion?: string };

const years = new Set(['y', 'yr', 'yrs', 'year', 'years']);
const months = new Set(['mo', 'mos', 'month', 'months']);

/** Errors: no unit, an unknown unit ("m" could be meters), not a plain number. */
export function parseAge(text: string): AgeRead {
  const clean = tidy(text).toLowerCase();
  const parts = /^([\d./ -]+?) ?([a-z]+)\.?$/.exec(clean.slice(0, 40));
  if (parts === null) {
    const bare = /^[\d.]+$/.test(clean);
    return {
      ok: false,
      why: bare ? 'add a unit: y or months' : 'it is not an age',
    };
  }
  const [, number = '', word = ''] = parts;
  const read = parseNumber(number);
  if (!read.ok)
    return { ok: false, why: read.why, ...(read.suggestion && { suggestion: `${read.suggestion} ${word}` }) };
  if (years.has(word)) return { ok: true, years: toNumber(read.exact) };
  if (months.has(word)) return { ok: true, years: toNumber({ ...read.exact, under: read.exact.under * 12 }) };
  return { ok: false, why: `"${word}" is not a unit of age; use y or months` };
}
