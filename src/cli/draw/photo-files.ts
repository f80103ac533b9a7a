/** Finds the photos of orders; reports missing ones. */
import { readEntries, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { lookAtPicture, placed, type Words } from '../photo/look.ts';
import type { DrawOptions } from './asked.ts';

export interface Found {
  readonly looked: Entry[];
  readonly found: { readonly entry: Entry & { ok: true }; readonly file: string }[];
  /** No photo block. */
  readonly without: string[];
}

/** In input order. */
export async function findPhotos(
  names: readonly string[],
  { photosFrom: from }: DrawOptions,
  io: CliIo,
): Promise<Found> {
  const looked: Entry[] = [];
  const found: Found['found'] = [];
  const without: string[] = [];
  for (const name of names) {
    for (const entry of await readEntries([name], io)) {
      looked.push(entry);
      if (!entry.ok) continue;
      const { photo } = entry.order;
      if (photo === undefined) {
        without.push(entry.order.order);
        continue;
      }
      const seen = await lookAtPicture(entry, photo, { name, from, io });
      if (seen.ok && seen.path !== undefined) found.push({ entry, file: seen.path });
      else
        looked[looked.length - 1] = faulty(
          entry,
          seen.ok ? await placed(entry, absent(photo.file), { name, io }) : seen.problem,
        );
    }
  }
  return { looked, found, without };
}

type Problem = (Entry & { ok: false })['problems'][number];

const faulty = ({ file, line, order }: Entry & { ok: true }, problem: Problem): Entry => ({
  ok: false,
  file,
  line,
  order: order.order,
  problems: [problem],
});

const absent = (name: string): Words => ({
  key: 'file',
  found: name,
  expected: 'a picture to draw on',
  hint: 'it is missing: put it next to the order file, or name its folder with --photos-from',
});
