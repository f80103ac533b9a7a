/** A place on a picture. */

export type Place = readonly [number, number];
