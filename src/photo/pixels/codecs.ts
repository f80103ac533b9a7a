/** Decodes and encodes pictures in WebAssembly, so a hostile file harms nothing outside. */
import decodeJpeg, { init as initJpegDecoder } from '@jsquash/jpeg/decode.js';
import encodeJpeg, { init as initJpegEncoder } from '@jsquash/jpeg/encode.js';
import decodePng, { init as initPngDecoder } from '@jsquash/png/decode.js';
import encodePng, { init as initPngEncoder } from '@jsquash/png/encode.js';
import type { PictureKind } from './picture.ts';
import type { Raster } from './raster.ts';

export interface CompiledCodecs {
  readonly jpegDecoder: object;
  readonly jpegEncoder: object;
  readonly png: object;
}

export interface Codecs {
  /** Pixels as stored. Throws when damaged, or not the size its header gave. */
  readonly decode: (
    bytes: Uint8Array,
    kind: PictureKind,
    size: { width: number; height: number },
  ) => Promise<Raster>;
  readonly jpeg: (raster: Raster, quality: number) => Promise<Uint8Array>;
  readonly png: (raster: Raster) => Promise<Uint8Array>;
}

/* The package's types are for browsers. */
type Start = (compiled: object, options?: { readonly printErr: () => void }) => Promise<unknown>;
type Decode = (bytes: ArrayBuffer) => Promise<Raster>;
type Encode = (image: Pixels, options?: { readonly quality: number }) => Promise<ArrayBuffer>;

const start = [initJpegDecoder, initJpegEncoder, initPngDecoder, initPngEncoder] as unknown as readonly [
  Start,
  Start,
  Start,
  Start,
];
const decoders: Readonly<Record<PictureKind, Decode>> = { jpeg: decodeJpeg, png: decodePng };
const encoders = { jpeg: encodeJpeg as unknown as Encode, png: encodePng as unknown as Encode };

/** Node 20 lacks ImageData, which the codecs make. */
export class Pixels implements Raster {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;

  constructor(data: Uint8ClampedArray, width: number, height: number) {
    this.data = data;
    this.width = width;
    this.height = height;
  }
}

/** In its own buffer: one codec reads all of it. */
const asImage = ({ data, width, height }: Raster): Pixels =>
  new Pixels(Uint8ClampedArray.from(data), width, height);

/** Makes the codecs ready. */
export async function codecsOf({ jpegDecoder, jpegEncoder, png }: CompiledCodecs): Promise<Codecs> {
  const [beginJpegDecoder, beginJpegEncoder, beginPngDecoder, beginPngEncoder] = start;
  await beginJpegDecoder(jpegDecoder, quiet);
  await beginJpegEncoder(jpegEncoder, quiet);
  await beginPngDecoder(png);
  await beginPngEncoder(png);
  return {
    decode: async (bytes, kind, { width, height }) => {
      const raster = await decoders[kind](Uint8Array.from(bytes).buffer);
      if (raster.width !== width || raster.height !== height)
        throw new Error('the picture is not of the size that its head says');
      return raster;
    },
    jpeg: async (raster, quality) => new Uint8Array(await encoders.jpeg(asImage(raster), { quality })),
    png: async (raster) => new Uint8Array(await encoders.png(asImage(raster))),
  };
}

const quiet = { printErr: (): void => undefined };
