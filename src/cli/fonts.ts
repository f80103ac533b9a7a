/** The program's own fonts. */
import fs from 'node:fs';
import path from 'node:path';
import type { Face } from '../pages/pdf/letters.ts';

/** Two levels up; see bin/build.cjs. */
const home = path.join(import.meta.dirname, '..', '..', 'bin', 'fonts');

const files: Readonly<Record<Face, string>> = {
  text: 'SourceSans3-Regular.ttf',
  strong: 'SourceSans3-Semibold.ttf',
  head: 'SourceSerif4-Semibold.ttf',
};

/** Their full paths. */
export const fontFiles = (): string[] => Object.values(files).map((file) => path.join(home, file));

/** Throws the system's error. */
export function paperFonts(): Record<Face, Uint8Array> {
  const read = (face: Face): Uint8Array => fs.readFileSync(path.join(home, files[face]));
  return { text: read('text'), strong: read('strong'), head: read('head') };
}
