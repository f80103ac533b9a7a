/** Feet and inches as a tape reads them (NIST Handbook 44, appendix C). */
import { expect, test } from 'vitest';
import { feetText } from '../../src/units/feet.ts';

test.each([
  [0, '0 ft'],
  [1, '1/8 in'],
  [4, '1/2 in'],
  [8, '1 in'],
  [14, '1 3/4 in'],
  [95, '11 7/8 in'],
  [96, '1 ft'],
  [96 * 12 + 8 * 6 + 1, '12 ft 6 1/8 in'],
  [96 * 61, '61 ft'],
  [96 * 300 + 2, '300 ft 1/4 in'],
])('%i eighths are %s', (eighths, text) => {
  expect(feetText(eighths)).toBe(text);
});
