/** What the environment asks of tests. */

/** `npm run hunt` tries many random cases, the gate few. */
export const long = process.env['LONG'] === '1';

export const cases = (few: number, many: number): number => (long ? many : few);

/** `npm run golden` rewrites outputs: read the difference before you commit. */
export const update = process.env['UPDATE_GOLDEN'] === '1';
