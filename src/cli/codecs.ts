/** Loads the build's photo codecs. */
import fs from 'node:fs';
import path from 'node:path';
import type { Codecs } from '../photo/pixels/codecs.ts';
import { besideProgram } from './built.ts';

/** Throws the system's error. */
export async function photoCodecs(): Promise<Codecs> {
  const { codecsOf, Pixels } = await import('../photo/pixels/codecs.ts');
  const scope = globalThis as unknown as { ImageData?: unknown; WebAssembly: WebAssemblyHere };
  scope.ImageData ??= Pixels;
  const compiled = (name: string): Promise<object> =>
    scope.WebAssembly.compile(fs.readFileSync(path.join(besideProgram, name)));
  return codecsOf({
    jpegDecoder: await compiled('jpeg-decoder.wasm'),
    jpegEncoder: await compiled('jpeg-encoder.wasm'),
    png: await compiled('png.wasm'),
  });
}

/** Missing from Node's types. */
interface WebAssemblyHere {
  readonly compile: (bytes: Uint8Array) => Promise<object>;
}
