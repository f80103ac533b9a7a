/** Texts in place of a value: too large, no numbers, other alphabets, commands. */
import type { Random } from '../../../src/math/random.ts';
import { pick, whole } from '../../support/draw.ts';
import { escapes, formulas, markup, signs } from '../../unit/report-payloads.ts';

const numbers = [
  ...[
    '0',
    '-0',
    '-1',
    '1',
    '0.1',
    '1e999',
    '1e-999',
    '1e3',
    '9007199254740993',
    '99999999999999999999',
    '0x1F',
  ],
  ...[
    '1_000',
    '012',
    '0o17',
    '.5',
    '5.',
    '+5',
    '--3',
    '1/0',
    '0/0',
    '7/8',
    '1 / 3',
    '3 1/2',
    '3 9/8',
    '½',
    '1½',
  ],
  ...['.inf', '-.inf', '.nan', 'NaN', 'Infinity', '1,5', '1.000,5', '٣', '५', 'Ⅷ', '²', '4.0000000000000001'],
  ...['9'.repeat(400), `0.${'0'.repeat(400)}1`, '45', '44', '5', '2.5', '100', '1000'],
];
const units = [
  'in',
  'cm',
  'mm',
  'ft',
  'm',
  'yd',
  'hh',
  '"',
  "'",
  '″',
  'inches',
  'IN',
  'h',
  'y',
  'months',
  '%',
  'lb',
  '',
];
const days = [
  '2026-02-30',
  '2026-02-29',
  '2028-02-29',
  '0000-01-01',
  '9999-12-31',
  '10000-01-01',
  '26-1-1',
  '12/18/2026',
];
const odd = [
  ...[
    '',
    ' ',
    'null',
    '~',
    'true',
    'no',
    'yes',
    'on',
    '{}',
    '[]',
    '|',
    '>-',
    '*x',
    '&x y',
    '!!float 1',
    '!<tag:x> y',
  ],
  ...[
    'constructor',
    '__proto__',
    'toString',
    'hasOwnProperty',
    'valueOf',
    'length',
    '<<',
    '=',
    '? a',
    '- - -',
    '...',
  ],
  ...[
    'a: b: c',
    '# 7',
    "'",
    '"',
    '\\',
    '\\u0000',
    '%TAG',
    '@',
    '`',
    'ﬁ',
    'İ',
    'ß',
    'ǆ',
    'e\u0301'.repeat(9),
    '語',
  ],
];

/** A typing slip: one letter changed, left out, doubled or swapped. */
export function misspelled(word: string, chance: Random): string {
  const at = whole(chance, 0, Math.max(0, word.length - 1));
  const [before, sign, after] = [word.slice(0, at), word.slice(at, at + 1), word.slice(at + 1)];
  return pick(chance, [
    before + after,
    before + sign + sign + after,
    before + after.slice(0, 1) + sign + after.slice(1),
    `${before}${String.fromCharCode(whole(chance, 97, 122))}${after}`,
    word.toUpperCase(),
    word.replace('-', ' '),
    `${word}s`,
  ]);
}

export function strangeText(chance: Random): string {
  const kind = whole(chance, 0, 9);
  if (kind <= 3) return pick(chance, numbers) + pick(chance, ['', ' ', ' ', ' ']) + pick(chance, units);
  if (kind === 4) return pick(chance, days);
  if (kind <= 6) return pick(chance, odd);
  if (kind === 7) return pick(chance, [...formulas, ...markup, ...escapes]);
  if (kind === 8) return `q${pick(chance, signs)}w`;
  return pick(chance, ['x', 'é', '語', '"', '\\', '\u{1f40e}', ' a', '- ']).repeat(whole(chance, 1, 3000));
}
