/** What headers of JPEG and PNG share. */
import type { Orientation } from './raster.ts';

/** As stored. */
export interface Header {
  readonly width: number;
  readonly height: number;
  readonly orientation: Orientation;
  /** Four inks per pixel. */
  readonly isCmyk?: true;
}

export interface Refused {
  readonly ok: false;
  readonly why: string;
}

export type HeaderRead = ({ readonly ok: true } & Header) | Refused;

/** A refusal, with its reason. */
export const no = (why: string): Refused => ({ ok: false, why });

/** 16 bits, big-endian; undefined past the end. */
export const two = (bytes: Buffer, at: number): number | undefined =>
  at >= 0 && at + 2 <= bytes.length ? bytes.readUInt16BE(at) : undefined;

/** 32 bits, likewise. */
export const four = (bytes: Buffer, at: number): number | undefined =>
  at >= 0 && at + 4 <= bytes.length ? bytes.readUInt32BE(at) : undefined;

export const cutOff = 'the picture is cut off: its end is missing';

const ORIENTATION = 0x0112;
const SHORT = 3;

/** From Exif (2.32, 4.6.2); 1 when missing or senseless. */
export function orientationOf(tiff: Buffer): Orientation {
  const mark = tiff.subarray(0, 4).toString('latin1');
  const little = mark === 'II*\0';
  if (!little && mark !== 'MM\0*') return 1;
  const short = (at: number): number =>
    at < 0 || at + 2 > tiff.length ? 0 : little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at);
  const long = (at: number): number =>
    at < 0 || at + 4 > tiff.length ? 0 : little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at);
  const directory = long(4);
  const count = short(directory);
  for (let i = 0; i < count; i += 1) {
    const entry = directory + 2 + 12 * i;
    if (entry + 12 > tiff.length) break;
    if (short(entry) !== ORIENTATION) continue;
    const value = short(entry + 8);
    return short(entry + 2) === SHORT && value >= 1 && value <= 8 ? (value as Orientation) : 1;
  }
  return 1;
}
