/** Finds and checks an order's picture. */
import path from 'node:path';
import type { Photo } from '../../order/photo-types.ts';
import type { Fault, Problem } from '../../yaml/problem.ts';
import type { PictureSeen } from '../../words/types.ts';
import { printable } from '../fault.ts';
import { readText, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { besideOrder, readPhoto } from './picture.ts';

type Good = Entry & { readonly ok: true };

export type Looked =
  | { readonly ok: true; readonly picture: PictureSeen; readonly path: string | undefined }
  | { readonly ok: false; readonly problem: Problem };

/**
 * A missing picture is fine: marks are enough.
 * @param name the order file, "-" for standard input
 * @param from folder of pictures; the order's by default
 */
export async function lookAtPicture(
  entry: Good,
  photo: Photo,
  at: { name: string; from: string | undefined; io: CliIo },
): Promise<Looked> {
  const { name, from, io } = at;
  const folder = path.resolve(io.cwd, from ?? (name === '-' ? '.' : path.dirname(name)));
  const found = besideOrder(photo.file, folder);
  if (found.is === 'absent') return { ok: true, picture: { there: false }, path: undefined };
  if (found.is === 'fault') {
    const words = {
      key: 'file',
      found: photo.file,
      expected: 'a picture that may be opened',
      hint: found.why,
    };
    return { ok: false, problem: await placed(entry, words, at) };
  }
  const read = readPhoto(found.path);
  if (!read.ok) {
    const words = { key: 'file', found: photo.file, expected: 'a picture that can be read', hint: read.why };
    return { ok: false, problem: await placed(entry, words, at) };
  }
  const { kind, width, height, orientation } = read;
  const [saidWidth, saidHeight] = photo.imageSize;
  if (saidWidth !== width || saidHeight !== height) {
    return { ok: false, problem: await placed(entry, sizeWords(photo, { width, height, orientation }), at) };
  }
  return { ok: true, picture: { there: true, kind, width, height, orientation }, path: found.path };
}

/** Not yet located. */
export interface Words extends Omit<Fault, 'path'> {
  readonly key: string;
}

function sizeWords(
  { imageSize: [width, height], file }: Photo,
  real: { width: number; height: number; orientation: number },
): Words {
  const lying = width === real.height && height === real.width;
  const turned =
    real.orientation >= 5 ? ': it is stored on its side, and marks count on the upright picture' : '';
  return {
    key: 'image-size',
    found: `[${String(width)}, ${String(height)}]`,
    expected: `[${String(real.width)}, ${String(real.height)}], the size of ${printable(file)} as it is shown upright`,
    hint: lying
      ? `width and height are swapped${turned}`
      : 'the picture was resized, cropped or replaced: set the marks on this one',
  };
}

/** Reads the file again, since orders keep no places; piped input is gone. */
export async function placed(
  entry: Good,
  { key, ...words }: Words,
  { name, io }: { name: string; io: CliIo },
): Promise<Problem> {
  const fault = { path: `photo.${key}`, ...words };
  const read = name === '-' ? undefined : await readText(name, io);
  if (read?.ok === true) {
    const { load } = await import('../../yaml/load.ts');
    const document = load(read.text, entry.file).find(({ line }) => line === entry.line);
    if (document !== undefined) return document.locate(fault, ['photo', key]);
  }
  const { found, hint, ...rest } = fault;
  return {
    file: entry.file,
    line: entry.line,
    column: 1,
    ...rest,
    ...(found === undefined ? {} : { found }),
    ...(hint === undefined ? {} : { hint }),
  };
}
