/** `npm run hunt` tries many random cases, the gate few. */

export const long = process.env['LONG'] === '1';

export const cases = (few: number, many: number): number => (long ? many : few);
