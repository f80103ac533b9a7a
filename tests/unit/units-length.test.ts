/** Lengths as people write them, and near misses. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatHands } from '../../src/units/hands.ts';
import { parseLength } from '../../src/units/length.ts';
import { formatLength } from '../../src/units/print.ts';
import { inchesIn as inches } from '../support/door.ts';
import { within } from '../support/within.ts';

const why = (text: string): string => {
  const read = parseLength(text);
  if (read.ok) throw new Error(`${text} was read as ${String(read.inches)} in`);
  return `${read.why}${read.suggestion === undefined ? '' : ` -> ${read.suggestion}`}`;
};

test.each([
  ['73 in', 73],
  ['73in', 73],
  ['73 IN.', 73],
  ['73 inches', 73],
  ['73"', 73],
  ['73”', 73],
  ['.5 in', 0.5],
  ['7/8 in', 0.875],
  ['⅞ in', 0.875],
  ['16 1/2 in', 16.5],
  ['16-1/2 in', 16.5],
  ['16½ in', 16.5],
  ['16 ½"', 16.5],
  ['1 3⁄4 in', 1.75],
  ['12½ in', 12.5],
  ['5 ft 2 in', 62],
  ['5 ft. 2 1/2 in', 62.5],
  [`5'2"`, 62],
  ['5’2”', 62],
  ["5'2''", 62],
  ['5.5 ft', 66],
  ['-2 in', -2],
  ['−2 in', -2],
  ['  73   in ', 73],
  ['15 hands', 60],
  ['15.0 h', 60],
  ['15.3 HH', 63],
  ['15.2 1/2 hh', 62.5],
  ['15.2½ hh', 62.5],
])('%s', (text, expected) => {
  expect(inches(text)).toBe(expected);
});

test.each([
  ['', 'empty'],
  ['73', 'add a unit: in, cm, mm, ft or hh'],
  ['12 1/2', 'add a unit'],
  ['4,5 in', '-> 4.5 in'],
  ['15,2 hh', '-> 15.2 hh'],
  ['1,000 mm', 'write 1000 or 1.000'],
  ['73 furlongs', '"furlongs" is not a unit'],
  ['1e999 in', 'plain digits'],
  ['1e3 in', 'plain digits'],
  ['5. in', 'plain number'],
  ['1.2.3 in', 'plain number'],
  ['16 3/2 in', 'less than one'],
  ['3/0 in', 'a fraction cannot have 0 on the bottom'],
  ['1234567 in', 'too many digits'],
  ['185.33333333333334 cm', 'after the point -> 185.333333 cm'],
  ['-2.00000000000001 in', '-> -2 in'],
  ['999999.9999999 mm', 'after the point'],
  ['5 ft 2', 'the second number needs a unit'],
  ['5 ft 14 in', 'under 12'],
  ['5.5 ft 2 in', 'whole number'],
  ['5 ft 2 cm', 'write inches'],
  ['-3 hh', 'negative'],
  ['15.4 hh', 'after 15.3 comes 16.0'],
  ['14.5 hh', 'counts inches, 0 to 3'],
  ['16.75 hands', 'hands are not decimal'],
  ['15.10 hh', 'hands are not decimal'],
  ['15 1/2 hh', 'as in 15.2 hh'],
  ['15.2 5/4 hh', 'less than an inch'],
  ['0x1F in', 'a number and a unit'],
  ['NaN in', 'a number and a unit'],
  ['Infinity in', 'a number and a unit'],
  ['73 in in', 'a number and a unit'],
  [`${'1'.repeat(50)} in`, 'too long'],
])('%s is refused: %s', (text, expected) => {
  expect(why(text)).toContain(expected);
});

describe('for any length', () => {
  const quarter = fc.integer({ min: -400, max: 400 }).map((count) => count / 4);
  const written = fc.tuple(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 3 }));

  test('printed as a finished thing it reads back the same', () => {
    fc.assert(fc.property(quarter, (length) => inches(formatLength(length)) === length));
  });
  test('whole hands print and read back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 399 }), (length) => inches(formatHands(length)) === length),
    );
  });
  test('centimeters and millimeters of the same length are the same inches', () => {
    fc.assert(
      fc.property(written, ([digits, places]) => {
        const cm = (digits / 10 ** places).toFixed(places);
        const mm = (digits / 10 ** places) * 10;
        within(inches(`${cm} cm`), mm / 25.4, 1e-9);
        within(inches(`${mm.toFixed(3)} mm`), inches(`${cm} cm`), 1e-9);
      }),
    );
  });
  test('feet and inches are twelve to one', () => {
    const part = fc.integer({ min: 0, max: 11 });
    fc.assert(
      fc.property(fc.nat(99), part, (feet, rest) => inches(`${feet} ft ${rest} in`) === feet * 12 + rest),
    );
  });
  test('a fraction and its decimal agree', () => {
    fc.assert(
      fc.property(fc.nat(99), fc.integer({ min: 1, max: 31 }), (whole, top) => {
        expect(inches(`${whole} ${top}/32 in`)).toBe(whole + top / 32);
      }),
    );
  });
  test('any text at all gives a finite number or a reason, never a throw', () => {
    const unit = fc.constantFrom('', ' in', ' hh', ' cm', '"', "'");
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[\d. /,e'½-]{0,12}$/)), unit, (text, end) => {
        const read = parseLength(text + end);
        return read.ok ? Number.isFinite(read.inches) : read.why !== '';
      }),
      { numRuns: 2000 },
    );
  });
});
