/** Makes the page to click landmarks on, in one file. */
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { photoBounds } from '../../numbers/photo-bounds.ts';
import { besideProgram } from '../built.ts';
import { emit, guardInputs } from '../emit.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { besideOrder, readPhoto } from './picture.ts';

export interface PickAsked {
  readonly image: string;
  readonly out: string | undefined;
  /** Order files, which are refused. */
  readonly files: readonly string[];
}

/** Without --out, into the current folder. */
export async function pickTo({ image, out, files }: PickAsked, io: CliIo): Promise<ExitCode> {
  if (files.length > 0)
    throw new CliFault('--pick makes a page for one picture: leave out the order files', {
      hint: 'The page gives the "photo" block to put into the order.',
    });
  const place = out ?? pageName(image);
  guardInputs(place, [image], io);
  const name = printable(image);
  const read = readPhoto(path.resolve(io.cwd, image));
  if (!read.ok) throw new CliFault(`${name}: ${read.why}`, { code: exit.input });
  const { pickPage } = await import('../../photo/pick/page.ts');
  const { width, height, kind, bytes } = read;
  const { min, max } = photoBounds.imageSide;
  if (Math.min(width, height) < min || Math.max(width, height) > max)
    throw new CliFault(
      `${name}: it is ${String(width)} x ${String(height)} pixels, and an order takes ${String(min)} to ${String(max)} per side`,
      { code: exit.input },
    );
  await guardName(image, io);
  const page = pickPage(
    { file: path.basename(image), width, height },
    {
      base64: bytes.toString('base64'),
      kind,
      script: pageScript(),
      hash: (text) => createHash('sha256').update(text).digest('base64'),
    },
  );
  emit(page, place, io);
  if (place !== '-')
    io.stderr('open it in a browser, on this machine or a phone; it needs no network and sends nothing\n');
  return exit.good;
}

/** Errors: a name or place no order takes. */
async function guardName(image: string, io: CliIo): Promise<void> {
  const { pictureName } = await import('../../order/photo-schema.ts');
  const full = path.resolve(io.cwd, image);
  const file = path.basename(full);
  const found = besideOrder(file, path.dirname(full));
  const why = found.is === 'fault' ? found.why : pictureName.safeParse(file).error?.issues[0]?.message;
  if (why === undefined) return;
  throw new CliFault(`${printable(image)}: an order cannot use this picture's name: ${why}`, {
    code: exit.input,
    hint: 'Copy it to a plain name first.',
  });
}

/** "juniper-side-landmarks.html". */
const pageName = (image: string): string => `${path.basename(image, path.extname(image))}-landmarks.html`;

function pageScript(): string {
  const file = path.join(besideProgram, 'pick.js');
  if (!fs.existsSync(file))
    throw new CliFault("the page's script is missing", { hint: 'Build the program: npm run build' });
  return fs.readFileSync(file, 'utf8').trimEnd();
}
