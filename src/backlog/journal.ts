/** Lines of the journal of a backlog: what is done already, each line with a checksum, so that a torn one is never believed. */
import type { Problem } from '../order/problem.ts';
import { columnNames } from './columns.ts';
import type { Cell, Cells, Row } from './row.ts';

/** What the rows depend on besides the orders; equal prints, equal rows. */
export interface Fingerprint {
  /** Version of the program, and a hash of its code where it is known. */
  readonly program: string;
  /** Hash of the shop. */
  readonly shop: string;
}

/** A short hash of a text; the caller has the function for it. */
export type Digest = (text: string) => string;

/** A file, or a slice of one, that is done. */
export interface Finished {
  readonly id: string;
  /** Of its contents. */
  readonly hash: string;
  /** Its rows as `encodeRows` wrote them. */
  readonly body: string;
}

const journalName = 'cinchwright/backlog-journal/1';

/** Rows as one line of JSON, cells in the order of the columns. */
export const encodeRows = (rows: readonly Row[]): string =>
  JSON.stringify(
    rows.map(({ cells, problems }) => [columnNames.map((name) => cells[name] ?? null), ...problems]),
  );

/** Rows from what `encodeRows` wrote. */
export function decodeRows(body: string): Row[] {
  const rows = JSON.parse(body) as [Cell[], ...Problem[]][];
  return rows.map(([cells, ...problems]) => ({ cells: named(cells), problems }));
}

function named(cells: readonly Cell[]): Cells {
  const row: Record<string, Cell> = {};
  for (let i = 0; i < columnNames.length; i++) row[columnNames[i] as string] = cells[i] ?? null;
  return row;
}

/** The line that starts a journal, and starts anew in it when program or shop are others. */
export const headerLine = (print: Fingerprint, digest: Digest): string =>
  checked(JSON.stringify({ journal: journalName, ...print }), '', digest);

/** The line of something finished. Its checksum covers the fingerprint too: under another one it does not count. */
export const finishedLine = ({ id, hash, body }: Finished, print: Fingerprint, digest: Digest): string =>
  checked(`[${JSON.stringify(id)},${JSON.stringify(hash)},${body}]`, seedOf(print), digest);

const checked = (text: string, seed: string, digest: Digest): string => `${digest(seed + text)} ${text}\n`;

const seedOf = ({ program, shop }: Fingerprint): string => `${program} ${shop} `;

/** The fingerprint of a header line; undefined for every other line, and for a damaged one. */
export function readHeader(line: string, digest: Digest): Fingerprint | undefined {
  const text = textOf(line, '', digest);
  if (text?.startsWith('{') !== true) return undefined;
  const { program, shop } = JSON.parse(text) as Fingerprint;
  return { program, shop };
}

/** What a line says is finished, under this fingerprint; undefined for every other line, and for a damaged one. */
export function readFinished(line: string, print: Fingerprint, digest: Digest): Finished | undefined {
  const text = textOf(line, seedOf(print), digest);
  if (text?.startsWith('[') !== true) return undefined;
  // Id and hash are read alone: most of the line is rows, and they are not asked for yet.
  const head = /^\[("(?:[^"\\]|\\.)*"),("[0-9a-f]*"),/.exec(text);
  if (head === null) return undefined;
  const [start, id = '""', hash = '""'] = head;
  return {
    id: JSON.parse(id) as string,
    hash: JSON.parse(hash) as string,
    body: text.slice(start.length, -1),
  };
}

/** The text behind the checksum, when it is the text's own. */
function textOf(line: string, seed: string, digest: Digest): string | undefined {
  const space = line.indexOf(' ');
  if (space === -1) return undefined;
  const text = line.slice(space + 1);
  return digest(seed + text) === line.slice(0, space) ? text : undefined;
}
