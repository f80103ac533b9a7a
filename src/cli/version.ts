/** The program's version. */

/** Not read from package.json, which would slow the start; a test compares them. */
export const version = '0.1.0';
