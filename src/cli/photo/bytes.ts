/** Reads numbers from picture bytes. */

export type PictureKind = 'jpeg' | 'png';

/** As stored; orientation 1 to 8, 1 upright. */
export interface Header {
  readonly width: number;
  readonly height: number;
  readonly orientation: number;
  /** Four inks per pixel, for printing. */
  readonly isCmyk?: true;
}

export type HeaderRead = ({ readonly ok: true } & Header) | { readonly ok: false; readonly why: string };

/** Refuses, with a reason. */
export const no = (why: string): { readonly ok: false; readonly why: string } => ({ ok: false, why });

/** 16 bits, big-endian; undefined past the end. */
export const two = (bytes: Buffer, at: number): number | undefined =>
  at >= 0 && at + 2 <= bytes.length ? bytes.readUInt16BE(at) : undefined;

/** 32 bits, big-endian; undefined past the end. */
export const four = (bytes: Buffer, at: number): number | undefined =>
  at >= 0 && at + 4 <= bytes.length ? bytes.readUInt32BE(at) : undefined;

export const cutOff = 'the picture is cut off: its end is missing';
