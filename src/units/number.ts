/** Plain numbers ("4.25", "7/8", "16 1/2", "16½") as exact fractions. */

export interface Exact {
  over: number;
  under: number;
}

const mostDigits = 6;

export type NumberRead = { ok: true; exact: Exact } | { ok: false; why: string; suggestion?: string };

/** Pattern source; no capturing groups. */
export const numberPattern = String.raw`(?:\d[\d.]*[ -]\d+ ?\/ ?\d+|\d+ ?\/ ?\d+|\d[\d.]*|\.\d+)`;

const glyphs: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅐': '1/7',
  '⅑': '1/9',
  '⅒': '1/10',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};
const glyph = new RegExp(`(\\d?)[ -]?([${Object.keys(glyphs).join('')}])`, 'g');

/**
 * Makes typographic quotes, minus signs, spaces and fractions plain; escaped, since bin/cinchwright reads
 * ASCII.
 */
export function tidy(text: string): string {
  return text
    .replace(
      glyph,
      (_, digit: string, sign: string) => `${digit === '' ? '' : `${digit} `}${glyphs[sign] ?? ''}`,
    )
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2032\u2019\u2018]/g, "'")
    .replace(/[\u2033\u201d\u201c]|''/g, '"')
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/\s+/g, ' ')
    .trim();
}

/** Errors: not a number, too many digits, a zero denominator, "3 5/4". */
export function parseNumber(text: string): NumberRead {
  const parts = /^(?:(\d+)|(\d*)\.(\d+)|(?:(\d+)[ -])?(\d+) ?\/ ?(\d+))$/.exec(text);
  if (parts === null) return { ok: false, why: 'it is not a plain number such as 4.5 or 16 1/2' };
  const [, whole = '', before = '', decimals = '', wholePart = '', top = '', bottom = ''] = parts;
  if ([whole, before, decimals, wholePart, top, bottom].some((digits) => digits.length > mostDigits)) {
    return tooLong(decimals === '' ? undefined : text);
  }
  if (whole !== '') return { ok: true, exact: { over: Number(whole), under: 1 } };
  if (decimals !== '') {
    return { ok: true, exact: { over: Number(before + decimals), under: 10 ** decimals.length } };
  }
  return fraction(wholePart, Number(top), Number(bottom));
}

/** Suggests a spreadsheet's number with fewer digits. */
function tooLong(decimal: string | undefined): NumberRead {
  const why = `the number has too many digits: at most ${String(mostDigits)} before and ${String(mostDigits)} after the point`;
  const suggestion = decimal === undefined ? '' : String(Number(Number(decimal).toFixed(mostDigits)));
  return parseNumber(suggestion).ok ? { ok: false, why, suggestion } : { ok: false, why };
}

function fraction(whole: string, top: number, bottom: number): NumberRead {
  if (bottom === 0) return { ok: false, why: 'a fraction cannot have 0 on the bottom' };
  if (whole === '') return { ok: true, exact: { over: top, under: bottom } };
  if (top >= bottom) return { ok: false, why: 'a fraction after a whole number must be less than one' };
  return { ok: true, exact: { over: Number(whole) * bottom + top, under: bottom } };
}

/** Exact product. */
export function product(a: Exact, b: Exact): Exact {
  return { over: a.over * b.over, under: a.under * b.under };
}

/** The nearest double. */
export function toNumber({ over, under }: Exact): number {
  return over / under;
}
