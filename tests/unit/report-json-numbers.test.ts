/** JSON and tables round once and call no chance certain. */
import { expect, test } from 'vitest';
import { rounded, roundedChance } from '../../src/pages/json.ts';

test.each([
  [1.234_56, 1.2346],
  [-0.000_01, 0],
  [NaN, null],
  [Infinity, null],
])('%d is written %s', (value, written) => {
  expect(Object.is(rounded(value), written)).toBe(true);
});

test.each([
  [1, 0.9999],
  [0.999_96, 0.9999],
  [0.5, 0.5],
  [0.123_46, 0.1235],
  [0.000_01, 0.0001],
  [0, 0.0001],
  [NaN, null],
])('a chance of %d is written %s', (value, written) => {
  expect(roundedChance(value)).toBe(written);
});
