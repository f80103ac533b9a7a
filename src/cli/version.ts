/** The version the program says it is. */

/** Equals the one in package.json; a test holds the two together. Written out, so that no file is read at the start. */
export const version = '0.1.0';
