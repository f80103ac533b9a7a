/** Lengths as people write them ("73 in", "16 1/2 in", "5 ft 2 in", "185 cm", "15.2 hh"), in inches. */
import { parseHands } from './hands.ts';
import { numberPattern, parseNumber, product, toNumber, tidy, type Exact } from './number.ts';

export type Inches = number;

export type LengthRead = { ok: true; inches: Inches } | { ok: false; why: string; suggestion?: string };

export type LengthUnit = 'in' | 'cm' | 'mm' | 'ft' | 'hh';

/** 2.54 cm per inch: NIST SP 811, appendix B. */
const inchesPer: Readonly<Record<LengthUnit, Exact>> = {
  in: { over: 1, under: 1 },
  cm: { over: 50, under: 127 },
  mm: { over: 5, under: 127 },
  ft: { over: 12, under: 1 },
  hh: { over: 4, under: 1 },
};

const unitWords: ReadonlyMap<string, LengthUnit> = new Map([
  ...['in', 'inch', 'inches', '"'].map((word) => [word, 'in'] as const),
  ...['cm', 'centimeter', 'centimeters', 'centimetre', 'centimetres'].map((word) => [word, 'cm'] as const),
  ...['mm', 'millimeter', 'millimeters', 'millimetre', 'millimetres'].map((word) => [word, 'mm'] as const),
  ...['ft', 'foot', 'feet', "'"].map((word) => [word, 'ft'] as const),
  ...['hh', 'h', 'hand', 'hands'].map((word) => [word, 'hh'] as const),
]);

const units = 'in, cm, mm, ft or hh';
const oneLength = new RegExp(`^(-?)(${numberPattern}) ?([a-z]+|"|')\\.?$`);
const feetAndInches = new RegExp(`^(${numberPattern}) ?(ft\\.?|foot|feet|') ?(${numberPattern}) ?(.*)$`);
const decimalComma = /^(-?\d{1,6}),(\d{1,6})( ?)([a-z]+|"|')\.?$/;
const longest = 40;

const no = (why: string, suggestion?: string): LengthRead => ({
  ok: false,
  why,
  ...(suggestion === undefined ? {} : { suggestion }),
});

/** Errors: no unit, unknown unit, decimal comma, wrong hands, not a plain length. */
export function parseLength(text: string): LengthRead {
  const clean = tidy(text).toLowerCase();
  if (clean === '') return no('it is empty');
  if (clean.length > longest) return no('it is too long to be a length');
  const one = oneLength.exec(clean);
  if (one !== null) return fromOne(one);
  const two = feetAndInches.exec(clean);
  if (two !== null) return fromFeet(two);
  return whyNot(clean);
}

/** "inches" gives in; undefined for no unit of length. */
export function unitOf(word: string): LengthUnit | undefined {
  return unitWords.get(word);
}

function fromOne([, sign = '', number = '', word = '']: RegExpExecArray): LengthRead {
  const unit = unitWords.get(word);
  if (unit === undefined) return no(`"${word}" is not a unit of length; use ${units}`);
  if (unit === 'hh') return sign === '' ? parseHands(number) : no('hands cannot be negative');
  const read = parseNumber(number);
  if (!read.ok) return no(read.why, read.suggestion && `${sign}${read.suggestion} ${word}`);
  const inches = toNumber(product(read.exact, inchesPer[unit]));
  return { ok: true, inches: sign === '' || inches === 0 ? inches : -inches };
}

function fromFeet([, feetText = '', , inchText = '', word = '']: RegExpExecArray): LengthRead {
  if (word === '') return no('the second number needs a unit, as in 5 ft 2 in');
  const inchWord = word.replace(/\.$/, '');
  if (unitWords.get(inchWord) !== 'in') return no('after feet, write inches, as in 5 ft 2 in');
  if (!/^\d+$/.test(feetText)) return no('before inches, feet must be a whole number, as in 5 ft 2 in');
  const feet = parseNumber(feetText);
  const inches = parseNumber(inchText);
  if (!feet.ok) return no(feet.why);
  if (!inches.ok) return no(inches.why);
  if (toNumber(inches.exact) >= 12) return no('after feet, inches must be under 12');
  const { over, under } = inches.exact;
  return { ok: true, inches: toNumber({ over: feet.exact.over * 12 * under + over, under }) };
}

function whyNot(text: string): LengthRead {
  const comma = decimalComma.exec(text);
  if (comma !== null) return fromComma(comma);
  if (/^-?[\d. /-]+$/.test(text)) return no(`add a unit: ${units}`);
  if (/\d,\d/.test(text)) return no('use a point in a number, not a comma');
  if (/\d ?e ?[+-]?\d/.test(text)) return no('write the number in plain digits');
  return no(`write a number and a unit: ${units}`);
}

function fromComma([, whole = '', part = '', space = '', word = '']: RegExpExecArray): LengthRead {
  // Three digits could mean thousands: name both, suggest neither.
  if (part.length === 3) return no(`write ${whole}${part} or ${whole}.${part}, without a comma`);
  const point = `${whole}.${part}${space}${word}`;
  return parseLength(point).ok
    ? no('use a point for decimals, not a comma', point)
    : no('use a point for decimals, not a comma');
}
