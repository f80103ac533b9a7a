/** Units against what is known outside this program. */
import { describe, expect, test } from 'vitest';
import { formatLength } from '../../src/units/print.ts';
import { inchesIn as inches } from '../support/door.ts';

describe('hands: a hand is 4 in by definition, the digit after the point counts inches (seen second-hand)', () => {
  test('15.2 hands are 62 in, exactly, and 157.48 cm', () => {
    expect(inches('15.2 hh')).toBe(62);
    expect(inches('157.48 cm')).toBe(62);
    expect(formatLength(62, 'cm', 'computed')).toBe('157.5 cm');
  });
});

describe('the inch is 2.54 cm exactly (NIST SP 811, appendix B; from memory)', () => {
  test.each([
    ['2.54 cm', 1],
    ['25.4 mm', 1],
    ['254 cm', 100],
    ['30.48 cm', 12],
    ['1 ft', 12],
    // A double holds no 2.54.
    ['1 cm', 50 / 127],
  ])('%s', (text, expected) => {
    expect(inches(text)).toBe(expected);
  });
});
