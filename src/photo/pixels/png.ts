/** Size and orientation of a PNG (W3C PNG, third edition, sections 5 and 11). */
import { cutOff, four, no, orientationOf, type HeaderRead } from './header.ts';
import type { Orientation } from './raster.ts';

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const malformed = 'it is not a whole PNG: its parts are out of order';

/** By its first bytes. */
export const isPng = (bytes: Buffer): boolean => bytes.subarray(0, 8).equals(signature);

/** A complete one's. Errors: cut off, malformed. */
export function pngHeader(bytes: Buffer): HeaderRead {
  let size: { width: number; height: number } | undefined;
  let orientation: Orientation | undefined;
  let data = false;
  for (let at = 8; at < bytes.length;) {
    const length = four(bytes, at);
    const name = bytes.subarray(at + 4, at + 8).toString('latin1');
    if (length === undefined || at + 12 + length > bytes.length) return no(cutOff);
    if (!/^[A-Za-z]{4}$/.test(name)) return no(malformed);
    const body = bytes.subarray(at + 8, at + 8 + length);
    if (size === undefined) {
      size = name === 'IHDR' ? sizeIn(body) : undefined;
      if (size === undefined) return no(malformed);
    }
    if (name === 'eXIf') orientation ??= orientationOf(body);
    if (name === 'IDAT') data = true;
    if (name === 'IEND') return data ? { ok: true, ...size, orientation: orientation ?? 1 } : no(malformed);
    at += 12 + length;
  }
  return no(cutOff);
}

function sizeIn(body: Buffer): { width: number; height: number } | undefined {
  const [width, height] = [four(body, 0), four(body, 4)];
  return body.length !== 13 || !width || !height ? undefined : { width, height };
}
