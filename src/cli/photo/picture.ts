/** A picture from the disk: its bytes as they are, and how large it is when it is shown upright. */
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

/** More than telephones and cameras make [choice]: about 50 MB, 250 million pixels. */
export const pictureLimits: PictureLimits = { bytes: 50_000_000, pixels: 250_000_000 };

export interface Picture {
  readonly bytes: Buffer;
  readonly kind: PictureKind;
  /** Shown upright. */
  readonly width: number;
  readonly height: number;
  /** Exif: 1 to 8, 1 when it does not say; from 5 on, the picture is stored lying on its side. */
  readonly orientation: number;
  readonly isCmyk: boolean;
}

export type PictureRead = ({ readonly ok: true } & Picture) | { readonly ok: false; readonly why: string };

/**
 * Reads a JPEG or PNG. Only a plain file is opened: a pipe or device could keep the reader waiting for ever.
 * Errors, in plain words: not there, no plain file, too large, neither JPEG nor PNG, cut off, malformed, too many pixels.
 */
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

/** The same of bytes that are there already. */
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

/** From 5 on the picture is shown with width and height exchanged (Exif 2.32, table of Orientation). */
const upright = ({ width, height, orientation }: Header): { width: number; height: number } =>
  orientation >= 5 ? { width: height, height: width } : { width, height };
