/** The program's version. */

/** A test compares it with package.json; reading a file would slow the start. */
export const version = '0.1.0';
