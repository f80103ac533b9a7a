/** Kind, upright size and orientation of a picture, from its bytes. */
import { no, type HeaderRead, type Refused } from './header.ts';
import { isJpeg, jpegHeader } from './jpeg.ts';
import { isPng, pngHeader } from './png.ts';
import { liesOnItsSide, type Orientation } from './raster.ts';

export interface PictureLimits {
  readonly bytes: number;
  readonly pixels: number;
}

/** More than phones and cameras make [choice]: 50 MB, 250 million pixels. */
export const pictureLimits: PictureLimits = { bytes: 50_000_000, pixels: 250_000_000 };

export type PictureKind = 'jpeg' | 'png';

export interface Picture {
  readonly bytes: Buffer;
  readonly kind: PictureKind;
  /** Upright. */
  readonly width: number;
  readonly height: number;
  readonly orientation: Orientation;
  readonly isCmyk: boolean;
}

export type PictureRead = ({ readonly ok: true } & Picture) | Refused;

/** Errors: too large, not JPEG or PNG, cut off, malformed. */
export function pictureOf(bytes: Buffer, limits: PictureLimits = pictureLimits): PictureRead {
  if (bytes.length > limits.bytes)
    return no(`it is too large: at most ${String(Math.floor(limits.bytes / 1e6))} MB are read`);
  if (bytes.length === 0) return no('it is empty');
  const kind: PictureKind | undefined = isJpeg(bytes) ? 'jpeg' : isPng(bytes) ? 'png' : undefined;
  if (kind === undefined) return no('it is neither a JPEG nor a PNG');
  const read: HeaderRead = kind === 'jpeg' ? jpegHeader(bytes) : pngHeader(bytes);
  if (!read.ok) return read;
  const { width, height, orientation } = read;
  if (width * height > limits.pixels) {
    return no(`it has too many pixels: at most ${String(Math.floor(limits.pixels / 1e6))} million are read`);
  }
  const size = liesOnItsSide(orientation) ? { width: height, height: width } : { width, height };
  return { ok: true, bytes, kind, ...size, orientation, isCmyk: read.isCmyk === true };
}
