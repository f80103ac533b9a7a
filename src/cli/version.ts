/** The program's version. */

/** Reading package.json would be slow; a test compares. */
export const version = '0.1.0';
