/** Pictures for tests: drawn as SVG, kept as JPEG, with a note of how the camera was held. */
import fs from 'node:fs';
import { createRequire } from 'node:module';
import { initWasm, Resvg } from '@resvg/resvg-wasm';
import jpeg from 'jpeg-js';

const need = createRequire(import.meta.url);
let ready: Promise<void> | undefined;

const fonts = ['SourceSans3-Regular.ttf', 'SourceSans3-Semibold.ttf'].map((name) =>
  fs.readFileSync(new URL(`../../bin/fonts/${name}`, import.meta.url)),
);

export interface Raster {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, opacity. */
  readonly data: Uint8Array;
}

/** SVG -> pixels, the same on every machine: the letters are those of the project. */
export async function rasterOf(svg: string): Promise<Raster> {
  ready ??= initWasm(fs.readFileSync(need.resolve('@resvg/resvg-wasm/index_bg.wasm')));
  await ready;
  const { width, height, pixels } = new Resvg(svg, {
    font: { fontBuffers: fonts, defaultFontFamily: 'Source Sans 3' },
  }).render();
  return { width, height, data: pixels };
}

/** Pixels -> JPEG. `exif` is put in after the first marker. */
export function jpegOf(
  raster: Raster,
  { quality = 85, exif }: { quality?: number; exif?: Buffer } = {},
): Buffer {
  const { data } = jpeg.encode({ ...raster, data: raster.data }, quality);
  return exif === undefined ? data : Buffer.concat([data.subarray(0, 2), exif, data.subarray(2)]);
}

/** A segment with the tags of a camera (Exif 2.32, 4.6): orientation, and a text about the picture. */
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
