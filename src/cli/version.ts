/** The program's version. */

/** Not read from package.json, which is slow; a test compares. */
export const version = '0.1.0';
