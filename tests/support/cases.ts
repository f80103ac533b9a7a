/** How many random cases a test tries: few at the gate, many in a hunt (`npm run hunt`). */

export const long = process.env['LONG'] === '1';

export const cases = (few: number, many: number): number => (long ? many : few);
