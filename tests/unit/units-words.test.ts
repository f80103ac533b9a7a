/** Printing lengths, nearest words, days and ages. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseAge } from '../../src/units/age.ts';
import { parseDay } from '../../src/units/days.ts';
import { nearestWord } from '../../src/units/nearest.ts';
import { formatLength } from '../../src/units/print.ts';

test.each([
  [4.25, ['4 1/4 in', '4.25 in', '10.8 cm']],
  [1.24, ['1 1/4 in', '1.24 in', '3.1 cm']],
  [0.3, ['1/4 in', '0.30 in', '0.8 cm']],
  [31.9, ['32 in', '31.90 in', '81.0 cm']],
  [0, ['0 in', '0.00 in', '0.0 cm']],
  [-0.001, ['0 in', '0.00 in', '0.0 cm']],
  [-0.5, ['-1/2 in', '-0.50 in', '-1.3 cm']],
  [-1.75, ['-1 3/4 in', '-1.75 in', '-4.4 cm']],
] as const)('%d in prints as %j', (inches, printed) => {
  const all = [
    formatLength(inches),
    formatLength(inches, 'in', 'computed'),
    formatLength(inches, 'cm', 'computed'),
  ];
  expect(all).toEqual(printed);
});

describe('nearest word', () => {
  const keys = ['name', 'height', 'heart-girth', 'elbow-room', 'barrel', 'withers', 'condition'];
  test.each([
    ['heartGirth', 'heart-girth'],
    ['heart_girth', 'heart-girth'],
    ['Height', 'height'],
    ['hieght', 'height'],
    ['wither', 'withers'],
    ['girth', 'heart-girth'],
    ['elbow', 'elbow-room'],
    ['nmae', 'name'],
    ['naem', 'name'],
    ['ehight', 'height'],
    ['heartgrith', 'heart-girth'],
    ['conditioned', 'condition'],
  ])('%s -> %s', (word, expected) => {
    expect(nearestWord(word, keys)).toBe(expected);
  });
  const uses = ['roping', 'ranch', 'trail', 'barrels', 'reining', 'packing', 'endurance', 'pleasure'];
  test.each([
    ['rope', 'roping', uses],
    ['Roper', 'roping', uses],
    ['packs', 'packing', uses],
    ['rein', 'reining', uses],
    ['trailing', 'trail', uses],
    ['girthed', 'girthy', ['girthy', 'elbow-gall']],
    ['slipping', 'slips', ['slips', 'rolls']],
  ])('%s has the stem of %s', (word, expected, words) => {
    expect(nearestWord(word, words)).toBe(expected);
  });
  test.each([
    ['two swapped pairs in four letters', 'anem', keys],
    ['letters swapped over another', 'eman', keys],
    ['a likeness of three letters that is no stem', 'barefoot', keys],
    ['no more than the start of a word', 'hear', keys],
    ['the ending alone', 'jumping', uses],
    ['the ending itself', 'ing', uses],
    ['a stem of two letters', 'roes', ['roing']],
    ['a stem of several words', 'rolling', ['rolls', 'rolled']],
    ['the stem of a part', 'name', ['named-position-sd', 'floor']],
    ['another use', 'driving', uses],
  ])('%s gives no hint: %s', (_, word, words) => {
    expect(nearestWord(word, words)).toBeUndefined();
  });
  test.each(['zebra', 'x', '', '__', 'h'.repeat(10_000)])('nothing is near "%.20s"', (word) => {
    expect(nearestWord(word, keys)).toBeUndefined();
  });
  test('is always one of the allowed words', () => {
    fc.assert(
      fc.property(fc.string(), (word) => {
        const near = nearestWord(word, keys);
        return near === undefined || keys.includes(near);
      }),
    );
  });
});

describe('days', () => {
  test.each(['2026-11-20', '2024-02-29', '2000-02-29', '1999-12-31'])('%s exists', (text) => {
    expect(parseDay(text)).toEqual({ ok: true, day: text });
  });
  test.each([
    ['2024-02-30', 'no day 30'],
    ['2023-02-29', 'no day 29'],
    ['1900-02-29', 'no day 29'],
    ['2026-13-01', 'no month 13'],
    ['2026-00-01', 'no month 0'],
    ['2026-01-00', 'no day 0'],
    ['0226-01-01', '1900 to 2199'],
    ['2026-1-1', 'year-month-day'],
    ['tomorrow', 'year-month-day'],
    ['2026-11-20T00:00', 'year-month-day'],
  ])('%s: %s', (text, why) => {
    const read = parseDay(text);
    expect(read.ok ? '' : read.why).toContain(why);
  });
  test('a day that can only be read one way is suggested, another is not', () => {
    expect(parseDay('12/18/2026')).toMatchObject({ suggestion: '2026-12-18' });
    expect(parseDay('18.12.2026')).toMatchObject({ suggestion: '2026-12-18' });
    expect(parseDay('12/11/2026')).not.toHaveProperty('suggestion');
    expect(parseDay('31/31/2026')).not.toHaveProperty('suggestion');
  });
  test('agrees with the calendar of the machine', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true }),
        (date) => {
          return parseDay(date.toISOString().slice(0, 10)).ok;
        },
      ),
    );
  });
});

describe('ages', () => {
  test.each([
    ['3 y', 3],
    ['3 years', 3],
    ['18 months', 1.5],
    ['1 1/2 y', 1.5],
    ['0.5 yr', 0.5],
    ['6mo', 0.5],
  ])('%s', (text, years) => {
    expect(parseAge(text)).toEqual({ ok: true, years });
  });
  test.each(['3', '3 m', 'old', '', '-1 y', '1e9 y', '3 weeks'])('%s is no age', (text) => {
    expect(parseAge(text).ok).toBe(false);
  });
});
