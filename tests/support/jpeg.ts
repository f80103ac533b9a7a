/** Test pictures from SVG, as JPEG with Exif. */
import { Resvg } from '@resvg/resvg-js';
import { photoCodecs } from '../../src/cli/codecs.ts';
import type { Raster } from '../../src/photo/pixels/raster.ts';

const at = (name: string): string => new URL(`../../${name}`, import.meta.url).pathname;
const fontFiles = ['Regular', 'Semibold'].map((weight) => at(`bin/fonts/SourceSans3-${weight}.ttf`));

/** With the project's fonts: the same everywhere. */
export function rasterOf(svg: string): Raster {
  const font = { fontFiles, loadSystemFonts: false, defaultFontFamily: 'Source Sans 3' };
  const { width, height, pixels } = new Resvg(svg, { font }).render();
  return { width, height, data: Uint8Array.from(pixels) };
}

export async function jpegOf(
  raster: Raster,
  { quality = 85, exif }: { quality?: number; exif?: Buffer } = {},
): Promise<Buffer> {
  const data = Buffer.from(await (await photoCodecs()).jpeg(raster, quality));
  return exif === undefined ? data : Buffer.concat([data.subarray(0, 2), exif, data.subarray(2)]);
}

/** Orientation and description (Exif 2.32, 4.6). */
export function exifOf(orientation: number, description = ''): Buffer {
  const text = Buffer.from(`${description}\0`, 'latin1');
  const entries = description === '' ? 1 : 2;
  const start = 8 + 2 + 12 * entries + 4;
  const tiff = Buffer.alloc(start + (description === '' ? 0 : text.length));
  tiff.write('MM', 0, 'latin1');
  tiff.writeUInt16BE(42, 2);
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(entries, 8);
  let at = 10;
  if (description !== '') {
    tiff.writeUInt16BE(0x010e, at);
    tiff.writeUInt16BE(2, at + 2);
    tiff.writeUInt32BE(text.length, at + 4);
    tiff.writeUInt32BE(start, at + 8);
    text.copy(tiff, start);
    at += 12;
  }
  tiff.writeUInt16BE(0x0112, at);
  tiff.writeUInt16BE(3, at + 2);
  tiff.writeUInt32BE(1, at + 4);
  tiff.writeUInt16BE(orientation, at + 8);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(2 + 6 + tiff.length, 2);
  return Buffer.concat([head, Buffer.from('Exif\0\0', 'latin1'), tiff]);
}
