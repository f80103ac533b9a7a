/** Reads a picture: bytes and upright size. */
import fs from 'node:fs';
import { readHandle } from '../files.ts';
import { systemWords } from '../system-error.ts';
import { no, type Header, type PictureKind } from './bytes.ts';
import { isJpeg, jpegHeader } from './jpeg.ts';
import { isPng, pngHeader } from './png.ts';

export interface PictureLimits {
  readonly bytes: number;
  readonly pixels: number;
}

/** More than phones and cameras make [choice]. */
export const pictureLimits: PictureLimits = { bytes: 50_000_000, pixels: 250_000_000 };

export interface Picture {
  readonly bytes: Buffer;
  readonly kind: PictureKind;
  /** Upright. */
  readonly width: number;
  readonly height: number;
  /** Exif 1 to 8, default 1; from 5 on stored on its side. */
  readonly orientation: number;
  readonly isCmyk: boolean;
}

export type PictureRead = ({ readonly ok: true } & Picture) | { readonly ok: false; readonly why: string };

/** Plain files only: a pipe could block. Errors: missing, too large, not JPEG or PNG, cut off, malformed. */
export function readPhoto(file: string, limits: PictureLimits = pictureLimits): PictureRead {
  try {
    if (!fs.statSync(file).isFile()) return no('it is not a plain file');
    const handle = fs.openSync(file, fs.constants.O_RDONLY | fs.constants.O_NONBLOCK);
    try {
      return pictureOf(readHandle(handle, limits.bytes), limits);
    } finally {
      fs.closeSync(handle);
    }
  } catch (error) {
    const why = systemWords(error);
    if (why === undefined) throw error;
    return no(why);
  }
}

/** The same, already read. */
export function pictureOf(bytes: Buffer, limits: PictureLimits = pictureLimits): PictureRead {
  if (bytes.length > limits.bytes)
    return no(`it is too large: at most ${String(Math.floor(limits.bytes / 1e6))} MB are read`);
  if (bytes.length === 0) return no('it is empty');
  const kind: PictureKind | undefined = isJpeg(bytes) ? 'jpeg' : isPng(bytes) ? 'png' : undefined;
  if (kind === undefined) return no('it is neither a JPEG nor a PNG');
  const read = kind === 'jpeg' ? jpegHeader(bytes) : pngHeader(bytes);
  if (!read.ok) return read;
  if (read.width * read.height > limits.pixels) {
    return no(`it has too many pixels: at most ${String(Math.floor(limits.pixels / 1e6))} million are read`);
  }
  return {
    ok: true,
    bytes,
    kind,
    ...upright(read),
    orientation: read.orientation,
    isCmyk: read.isCmyk === true,
  };
}

/** From 5 on, width and height swap (Exif 2.32, Orientation). */
const upright = ({ width, height, orientation }: Header): { width: number; height: number } =>
  orientation >= 5 ? { width: height, height: width } : { width, height };
