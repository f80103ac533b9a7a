/** Text from files is harmless in every format. */
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { visible } from '../../src/units/clean.ts';
import { csvText, guard, unguard } from '../../src/pages/csv.ts';
import { jsonLine, jsonText } from '../../src/pages/json.ts';
import { escaped, table } from '../../src/pages/markdown.ts';
import { escapes, formulas, harmless, owaspCells, owaspFirst, rfcRows } from './report-payloads.ts';

const steers = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u200b\u200e\u200f\u202a-\u202e\u2060-\u2069\ufeff]/u;

describe('visible', () => {
  test.each(escapes)('%j is shown, never obeyed', (text) => {
    expect(visible(text)).not.toMatch(steers);
    expect(visible(text)).toContain('\\u{');
  });

  test('shows what it caught', () => {
    expect(visible('a\u001b[31mb')).toBe('a\\u{1b}[31mb');
    expect(visible('line\r\nline')).toBe('line\\u{d}\\u{a}line');
    expect(visible('\ud800x')).toBe('\\u{d800}x');
    expect(visible('a\u200bb\u00adc\u3164d\u{e0041}')).toBe('a\\u{200b}b\\u{ad}c\\u{3164}d\\u{e0041}');
  });

  test.each(['Zoë Müller', '山田 太郎', 'متقدم', '👩‍🌾 Ann', '❤️', 'O’Neil “Red”', '葛󠄀城'])(
    '%s is left alone',
    (name) => {
      expect(visible(name)).toBe(name);
    },
  );

  test('a joiner that joins no emoji is shown', () => {
    expect(visible('a\u200db')).toBe('a\\u{200d}b');
  });

  test('any text at all; cleaning twice changes nothing more', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(visible(text)).not.toMatch(steers);
        expect(visible(visible(text))).toBe(visible(text));
      }),
    );
  });
});

describe('csv', () => {
  const cells = [
    ...formulas,
    ...harmless,
    ...escapes,
    ...owaspFirst.map((sign) => `${sign}x`),
    "'=x",
    "''",
    "'",
    "'a",
    "'t Hart",
    ' =1+1',
    '\u00a0@SUM(1)',
    '\u3000＝1',
  ];

  test.each(cells)('%j starts no formula and comes back whole', (text) => {
    const cell = guard(text);
    // Some spreadsheets drop blanks before they look.
    expect(cell.trim()).not.toMatch(/^[=+\-@\uff1d\uff0b\uff0d\uff20]/);
    expect(cell).not.toMatch(/^[\t\r\n]/);
    expect(unguard(cell)).toBe(text);
  });

  const nasty = fc.string({
    unit: fc.constantFrom("'", '=', '+', '-', '@', '\t', '\r', '\n', 'a', '"', ',', ';', ' ', '＝', '\u00a0'),
  });
  const anyText = fc.oneof(nasty, fc.string(), fc.string({ unit: 'binary' }));

  test('guarding is undone for any text', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(unguard(guard(text))).toBe(text);
      }),
      { numRuns: 2_000 },
    );
  });

  test('any text that is written, read by another library and unguarded is the cleaned text', () => {
    fc.assert(
      fc.property(fc.array(fc.array(anyText, { minLength: 2, maxLength: 2 }), { minLength: 1 }), (rows) => {
        const read = parse(csvText(rows));
        expect(read.map((row) => row.map(unguard))).toEqual(rows.map((row) => row.map(visible)));
        expect(read.flat().filter((cell) => /^\s*[=+\-@＝＋－＠]/.test(cell))).toEqual([]);
      }),
      { numRuns: 1_000 },
    );
  });

  test.each(owaspCells)('%j is written as OWASP writes it', (text, cell) => {
    expect(csvText([[text]])).toBe(`${cell}\r\n`);
  });

  test.each(harmless)('%j stays readable', (text) => {
    expect(csvText([[text]])).toContain(text);
  });

  test('numbers are never guarded, and what is no number is left empty', () => {
    expect(csvText([[-3.5, 0, Number.NaN, Infinity, undefined]])).toBe('-3.5,0,,,\r\n');
  });

  test.each(rfcRows)('rows of RFC 4180 come back', (...rows) => {
    const read = parse(csvText(rows as readonly (readonly string[])[]), { relax_column_count: false });
    // A line break in a cell could steer a screen.
    expect(read).toEqual(rows.map((row) => row.map((cell) => cell.replace('\r\n', '\\u{d}\\u{a}'))));
  });

  test('every row ends with CRLF, quotes are doubled', () => {
    expect(csvText([['a"b', 'c,d'], ['e f']])).toBe('"a""b","c,d"\r\ne f\r\n');
  });
});

describe('markdown', () => {
  test.each([
    ['[click](http://example.invalid)', '\\[click\\](http\\://example.invalid)'],
    ['<script>alert(1)</script>', '\\<script>alert(1)\\</script>'],
    ['| cell | cell', '\\| cell \\| cell'],
    ['# heading', '\\# heading'],
    ['- item', '\\- item'],
    ['1. item', '1\\. item'],
    ['1.5 in', '1.5 in'],
    ['www.example.invalid', 'www\\.example.invalid'],
    ['&lt; **bold** _it_ `code` ~~no~~', '\\&lt; \\*\\*bold\\*\\* \\_it\\_ \\`code\\` \\~\\~no\\~\\~'],
    ['back\\slash', 'back\\\\slash'],
    ['two\nlines', 'two\\\\u{a}lines'],
  ])('%j becomes %j', (text, shown) => {
    expect(escaped(text)).toBe(shown);
  });

  test('a table is rows of cells', () => {
    expect(table(['A', 'B'], [['1', '2']])).toBe('| A | B |\n| --- | --- |\n| 1 | 2 |');
  });
});

describe('json', () => {
  test.each([...escapes, ...formulas])('%j is the same data and steers nothing', (text) => {
    expect(JSON.parse(jsonText({ text }))).toEqual({ text });
    expect(jsonText({ text }).replaceAll('\n', '')).not.toMatch(steers);
    expect(jsonLine({ text }).split('\n')).toHaveLength(2);
  });
});
