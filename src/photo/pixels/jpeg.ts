/** Size and orientation of a JPEG (ITU-T T.81, annex B). */
import { cutOff, no, orientationOf, two, type Header, type HeaderRead } from './header.ts';
import type { Orientation } from './raster.ts';

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP1 = 0xe1;
const malformed = 'it is not a whole JPEG: its parts are out of order';

/** SOF0 to SOF15, except DHT, JPG and DAC. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** No segment follows: TEM and restarts. */
const isBare = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

/** By its first bytes. */
export const isJpeg = (bytes: Buffer): boolean => bytes[0] === 0xff && bytes[1] === SOI && bytes[2] === 0xff;

interface Segment {
  readonly marker: number;
  readonly body: Buffer;
  readonly next: number;
}

const nothing = Buffer.alloc(0);

/** A complete one's. Errors: cut off, malformed, no frame. */
export function jpegHeader(bytes: Buffer): HeaderRead {
  let size: Omit<Header, 'orientation'> | undefined;
  let orientation: Orientation | undefined;
  for (let at = 2; at < bytes.length;) {
    const segment = segmentAt(bytes, at);
    if (typeof segment === 'string') return no(segment);
    const { marker, body, next } = segment;
    if (isFrame(marker)) size ??= frameSize(body);
    if (isFrame(marker) && size === undefined) return no(malformed);
    if (marker === APP1) orientation ??= exifIn(body);
    if (marker === EOI)
      return size === undefined ? no(malformed) : { ok: true, ...size, orientation: orientation ?? 1 };
    at = marker === SOS ? afterScan(bytes, next) : next;
  }
  return no(cutOff);
}

function segmentAt(bytes: Buffer, from: number): Segment | string {
  if (bytes[from] !== 0xff) return malformed;
  let at = from;
  while (bytes[at] === 0xff) at += 1; // fill bytes
  const marker = bytes[at];
  if (marker === undefined) return cutOff;
  at += 1;
  if (marker === 0 || marker === SOI) return malformed;
  if (marker === EOI || isBare(marker)) return { marker, body: nothing, next: at };
  const length = two(bytes, at);
  if (length === undefined || at + length > bytes.length) return cutOff;
  return length < 2 ? malformed : { marker, body: bytes.subarray(at + 2, at + length), next: at + length };
}

/** A height of 0 means it comes later; cameras do not do that. */
function frameSize(body: Buffer): Omit<Header, 'orientation'> | undefined {
  const [height, width] = [two(body, 1), two(body, 3)];
  if (height === undefined || width === undefined || height === 0 || width === 0) return undefined;
  return { width, height, ...(body[5] === 4 ? { isCmyk: true } : {}) };
}

function exifIn(body: Buffer): Orientation | undefined {
  return body.subarray(0, 6).toString('latin1') === 'Exif\0\0' ? orientationOf(body.subarray(6)) : undefined;
}

/** The next marker; in scan data 0 or a restart follows 0xff. */
function afterScan(bytes: Buffer, from: number): number {
  let at = bytes.indexOf(0xff, from);
  while (at !== -1 && at + 1 < bytes.length) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && !isBare(next)) return at;
    at = bytes.indexOf(0xff, at + (next === 0xff ? 1 : 2));
  }
  return bytes.length;
}
