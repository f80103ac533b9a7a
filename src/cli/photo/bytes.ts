/** Whole numbers out of the bytes of a picture, and what its header tells. */

export type PictureKind = 'jpeg' | 'png';

/** Stored width and height, before any turning, and how the camera was held: 1 to 8, 1 upright. */
export interface Header {
  readonly width: number;
  readonly height: number;
  readonly orientation: number;
  /** Four inks to a pixel, as printers' files have them; a camera writes none. */
  readonly isCmyk?: true;
}

/** A header, or why there is none. */
export type HeaderRead = ({ readonly ok: true } & Header) | { readonly ok: false; readonly why: string };

/** Why it cannot be taken. */
export const no = (why: string): { readonly ok: false; readonly why: string } => ({ ok: false, why });

/** Big-endian, 16 bits; undefined past the end. */
export const two = (bytes: Buffer, at: number): number | undefined =>
  at >= 0 && at + 2 <= bytes.length ? bytes.readUInt16BE(at) : undefined;

/** Big-endian, 32 bits; undefined past the end. */
export const four = (bytes: Buffer, at: number): number | undefined =>
  at >= 0 && at + 4 <= bytes.length ? bytes.readUInt32BE(at) : undefined;

export const cutOff = 'the picture is cut off: its end is missing';
