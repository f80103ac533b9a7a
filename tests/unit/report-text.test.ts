/** Words, quantities and lines as the reader gets them. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chanceText,
  phraseText,
  quantityText,
  roughLength,
  ratioSpread,
  spreadNumber,
  wrap,
} from '../../src/units/text.ts';
import { listed } from '../../src/units/phrase.ts';
import { columns, fit, padRight, signs, startOf } from '../../src/units/width.ts';
import { area, chance, count, dist, gap, len, overlap, psi, ratio, say } from '../../src/units/phrase.ts';

describe('quantities', () => {
  test.each([
    [len(4.25), '4 1/4 in', '10.8 cm'],
    [dist(1.237), '1 1/4 in', '3.1 cm'],
    [chance(0.838), '84%', '84%'],
    [count(17), '17', '17'],
    [psi(1.5), '1.50 psi', '10.3 kPa'],
    [area(115.2), '115 sq in', '743 sq cm'],
    [ratio(0.7), '0.70', '0.70'],
  ])('%j', (quantity, inches, centimeters) => {
    expect(quantityText(quantity, 'in')).toBe(inches);
    expect(quantityText(quantity, 'cm')).toBe(centimeters);
  });

  // Clearances round down, overlaps up.
  test.each([
    [gap(1.37), '1 1/4 in', '1.37 in'],
    [gap(0.99999), '1 in', '1.00 in'],
    [overlap(0.13), '1/4 in', '0.13 in'],
    [dist(3.08), '3 1/8 in', '3.08 in'],
  ])('%j off a tape, and with decimals', (quantity, tape, decimals) => {
    expect(quantityText(quantity, 'in')).toBe(tape);
    expect(quantityText(quantity, 'in', 'decimals')).toBe(decimals);
  });

  test.each([
    [1, '>99%'],
    [0.996, '>99%'],
    [0.994, '99%'],
    [0.5, '50%'],
    [0.006, '1%'],
    [0.004, '<1%'],
    [0, '<1%'],
  ])('a chance of %d is never certain: %s', (value, text) => {
    expect(chanceText(value)).toBe(text);
  });

  test('spreads are told to a twentieth of an inch', () => {
    expect([0.51, 0.24, 0.38, 0.012, 2].map((sd) => spreadNumber(sd, 'in'))).toEqual([
      '0.5',
      '0.25',
      '0.4',
      '0.012',
      '2',
    ]);
    expect(spreadNumber(0.5, 'cm')).toBe('1.3');
    expect(roughLength(4, 'in')).toBe('4.0 in');
  });

  test('small spreads keep their digits', () => {
    expect([0.015, 0.03, 0.0625, 0.07, 0.1].map((sd) => spreadNumber(sd, 'in'))).toEqual([
      '0.015',
      '0.03',
      '0.06',
      '0.07',
      '0.1',
    ]);
    expect([0.015, 0.03].map((sd) => spreadNumber(sd, 'cm'))).toEqual(['0.04', '0.08']);
    expect([0.015, 0.063, 0.125].map(ratioSpread)).toEqual(['0.015', '0.06', '0.13']);
  });

  test('a phrase keeps its words, and texts from files are made visible', () => {
    const phrase = say`the ${'plain\u001b[2J'} buckle is ${dist(0.5)} off`;
    expect(phraseText(phrase, 'in')).toBe('the plain\\u{1b}[2J buckle is 1/2 in off');
  });

  test('lists', () => {
    expect(listed([])).toBe('');
    expect(listed(['a'])).toBe('a');
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
  });
});

describe('columns', () => {
  test.each([
    ['abc', 3],
    ['山田', 4],
    ['é', 1],
    ['e\u0301', 1],
    ['👩‍🌾', 2],
    ['🐴', 2],
    ['❤️', 2],
    ['متقدم', 5],
    ['한국', 4],
    ['－', 2],
    ['', 0],
  ])('%s takes %i', (text, width) => {
    expect(columns(text)).toBe(width);
  });

  test('cutting never splits a sign', () => {
    expect(fit('山田太郎', 5)).toBe('山田…');
    expect(fit('山田', 4)).toBe('山田');
    expect(startOf('👩‍🌾x', 1)).toBe('👩‍🌾');
    expect(signs('e\u0301👩‍🌾')).toHaveLength(2);
  });

  test('padding counts columns', () => {
    expect(padRight('山', 4)).toBe('山  ');
  });
});

describe('wrap', () => {
  test('hangs further lines', () => {
    expect(wrap('one two three four', 12, { first: 0, rest: 2 })).toEqual(['one two', '  three four']);
  });

  test('keeps a number with its unit and its fraction', () => {
    expect(wrap('it is 4 1/4 in wide', 12)).toEqual(['it is', '4 1/4 in', 'wide']);
    expect(wrap('it has 115 sq in of', 12)).toEqual(['it has', '115 sq in of']);
    expect(wrap('sure 84 % of it', 8)).toEqual(['sure', '84 % of', 'it']);
  });

  test('cuts a word that is too long for any line', () => {
    expect(wrap('abcdefghijklmnop', 10)).toEqual(['abcdefghij', 'klmnop']);
  });

  test('no line is too wide and no sign is lost', () => {
    const signs = fc.string({ unit: fc.constantFrom('a', 'b', ' ', '山', '👩‍🌾', 'e\u0301', '1', '%') });
    fc.assert(
      fc.property(
        signs,
        fc.integer({ min: 12, max: 40 }),
        fc.integer({ min: 0, max: 4 }),
        (text, width, indent) => {
          const lines = wrap(text, width, indent);
          for (const line of lines) expect(columns(line)).toBeLessThanOrEqual(width);
          expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        },
      ),
    );
  });
});
