/** What photos give as a table: one row a length. */
import { seenEntries } from '../words/about-photo.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { unreadNote } from '../words/unread-note.ts';
import { rounded } from '../pages/json.ts';
import { errorNames } from '../words/photo-errors.ts';
import type { PhotoResult } from '../words/types.ts';

/** Columns in order, each with what it holds. Lengths are inches. */
export const photoColumns = [
  ['order', 'the order'],
  ['file', 'the file it came from'],
  ['picture', 'the picture, as the order names it'],
  ['length', 'which length the photo shows'],
  ['inches', 'how long it is'],
  ['sd', 'its spread'],
  ...errorNames.map(
    (source) => [source, `share of the square of the spread that is due to ${source}`] as const,
  ),
  ['note', 'why the order was not read'],
] as const;

type Row = Partial<Record<(typeof photoColumns)[number][0], Cell>>;

/** The table with its head. */
export function photoCsv(results: readonly PhotoResult[]): string {
  return csvText([
    photoColumns.map(([name]) => name),
    ...results.flatMap(rowsOf).map((row) => photoColumns.map(([name]) => row[name])),
  ]);
}

function rowsOf(result: PhotoResult): Row[] {
  if (!result.ok) return [{ order: result.order, file: result.file, note: unreadNote(result) }];
  const { file, photo, advice } = result;
  const { order } = advice.facts.order;
  return seenEntries(photo).map(({ name, seen }): Row => ({
    order,
    file,
    picture: photo.photo.file,
    length: name,
    inches: rounded(seen.value) ?? undefined,
    sd: rounded(seen.sd) ?? undefined,
    ...Object.fromEntries(errorNames.map((source) => [source, rounded(seen.shares[source]) ?? undefined])),
  }));
}
