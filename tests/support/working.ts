/** Does the sum of shown working again. */
import { expect } from 'vitest';
import type { Working } from '../../src/horse/estimate.ts';

/** Numbers, +, -, x, / and ^ from left to right, products first. */
export function done(sum: string): number {
  const plain = sum.replace(/ (cm|in)\b/g, '').replace(/, up to even$/, '');
  expect(plain).toMatch(/^[-\d.]+(\^2)?( [-+x/] [-\d.]+)*$/);
  return plain
    .replace(/([-\d.]+)\^2/g, '$1 x $1')
    .split(/ (?=[-+] )/)
    .map((term) => {
      const sign = term.startsWith('- ') ? -1 : 1;
      const [first = '', ...rest] = term.replace(/^[-+] /, '').split(' ');
      let product = sign * Number(first);
      for (let i = 0; i < rest.length; i += 2) {
        product = rest[i] === 'x' ? product * Number(rest[i + 1]) : product / Number(rest[i + 1]);
      }
      return product;
    })
    .reduce((total, term) => total + term, 0);
}

export const lineOf = (lines: readonly Working[], symbol: string): Working => {
  const found = lines.filter((line) => line.symbol === symbol);
  expect(found, symbol).toHaveLength(1);
  return found[0]!;
};
