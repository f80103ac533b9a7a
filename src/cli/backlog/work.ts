/** One piece of a backlog, a file or a slice of one, becomes finished rows; the same in a worker and without. */
import { createHash } from 'node:crypto';
import fs from 'node:fs';
import { encodeRows, finishedLine, type Fingerprint } from '../../backlog/journal.ts';
import { faultyRow, rowOf, type Cells, type Place, type Row } from '../../backlog/row.ts';
import { moved } from '../../backlog/settle.ts';
import { sizeOrder } from '../../index.ts';
import { readOrders, type OrderRead } from '../../order/read-orders.ts';
import type { Shop } from '../../order/types.ts';
import type { BacklogPrinter } from '../../report/backlog-cells.ts';
import { printable } from '../fault.ts';
import { readUpTo } from '../files.ts';
import { systemWords } from '../system-error.ts';
import { mostBytes, textOf } from '../text-file.ts';
import { digest } from './digest.ts';
import { piecesOf } from './pieces.ts';
import { printerFor, type Look } from './printers.ts';

/** What is to be done. */
export interface Unit {
  /** The name of the file, and which slice of it: the same in the next run. */
  readonly id: string;
  /** Name of the file as messages give it. */
  readonly label: string;
  /** Where the file is, or what was read of it already. */
  readonly from:
    | { readonly path: string }
    | { readonly bytes: Uint8Array<ArrayBuffer> }
    /** Why there is nothing to read. */
    | { readonly fault: string };
  /** A slice of something longer. */
  readonly part: boolean;
  /** Every line is an order; found out from the text when it is not known. */
  readonly byLine?: boolean | undefined;
  /** Hash under which it was done in an earlier run. */
  readonly known?: string | undefined;
}

export interface Done {
  /** Of the contents; empty when they could not be read. */
  readonly hash: string;
  /** Rows as the journal keeps them; undefined when nothing has changed since the earlier run. */
  readonly body: string | undefined;
  /** The line of the journal, where one is kept. */
  readonly line?: string | undefined;
  readonly printed?: Printed | undefined;
}

/** The only row of a file, printed as it stands if no order before it had its number. */
export interface Printed {
  /** Those that collecting looks at. */
  readonly cells: Cells;
  readonly text: string;
}

/** What units are done with. */
export interface Bench {
  readonly shop: Shop;
  readonly printer: BacklogPrinter;
  /** What the journal goes by; undefined when none is kept. */
  readonly print: Fingerprint | undefined;
}

/** The same as plain data, which a worker can be told. */
export interface WorkBy extends Omit<Bench, 'printer'> {
  readonly look: Look;
}

/** Fetches what that needs. */
export async function benchFor({ shop, look, print }: WorkBy): Promise<Bench> {
  return { shop, print, printer: await printerFor(look) };
}

/** Reads, sizes, puts into rows and prints. Never throws: what goes wrong is a row. */
export function doUnit(unit: Unit, { shop, printer, print }: Bench): Done {
  const read = bytesOf(unit);
  const hash = read.ok ? createHash('sha256').update(read.bytes).digest('hex').slice(0, 32) : '';
  if (read.ok && hash === unit.known) return { hash, body: undefined };
  const rows = read.ok ? rowsOf(read.bytes, unit, shop) : [failed(read.why, placeIn(unit, 0))];
  const body = encodeRows(rows);
  const line = print === undefined ? undefined : finishedLine({ id: unit.id, hash, body }, print, digest);
  return { hash, body, line, printed: printedOf(rows, unit, printer) };
}

function printedOf([row, ...more]: readonly Row[], unit: Unit, printer: BacklogPrinter): Printed | undefined {
  // Several rows, and those of a slice, are counted and numbered by the one who collects them.
  if (row === undefined || more.length > 0 || unit.part || row.problems.length > 0) return undefined;
  const { order = null, file = null, line = null, verdict = null } = row.cells;
  return { cells: { order, file, line, verdict }, text: printer.row(row.cells) };
}

type BytesRead = { ok: true; bytes: Buffer } | { ok: false; why: string };

function bytesOf({ from }: Unit): BytesRead {
  if ('bytes' in from) return { ok: true, bytes: Buffer.from(from.bytes.buffer) };
  if ('fault' in from) return { ok: false, why: from.fault };
  try {
    return { ok: true, bytes: readWhole(from.path) };
  } catch (error) {
    return { ok: false, why: systemWords(error) ?? programFault(error) };
  }
}

/** One buffer for all files: a new one for each would be most of what there is to clear away. What is read is used before the next. */
const scratch = Buffer.allocUnsafeSlow(65_536);

function readWhole(file: string): Buffer {
  const handle = fs.openSync(file, 'r');
  try {
    let length = 0;
    while (length < scratch.length) {
      const read = fs.readSync(handle, scratch, length, scratch.length - length, null);
      if (read === 0) return scratch.subarray(0, length);
      length += read;
    }
  } finally {
    fs.closeSync(handle);
  }
  return readUpTo(file, mostBytes);
}

const placeIn = ({ label }: Unit, done: number): Place => ({ file: label, document: done + 1, line: 1 });

function rowsOf(bytes: Buffer, unit: Unit, shop: Shop): Row[] {
  const rows: Row[] = [];
  for (const { bytes: piece, lines } of piecesOf(bytes, unit.byLine)) {
    const read = textOf(piece);
    const found = read.ok
      ? readOrders(read.text, unit.label).map((order, i) =>
          rowFor(order, placeIn(unit, rows.length + i), shop),
        )
      : [failed(read.why, { ...placeIn(unit, rows.length), line: read.line })];
    rows.push(...found.map((row) => moved(row, { lines, documents: 0 })));
  }
  // One order a file needs no number in its messages.
  return rows.length > 1 || unit.part ? rows.map(numbered) : rows;
}

function rowFor(read: OrderRead, { file, document }: Place, shop: Shop): Row {
  const place = { file, document, line: read.line };
  if (!read.ok) return faultyRow(read.order, read.problems, place);
  try {
    return rowOf(sizeOrder(read.order, shop), place);
  } catch (error) {
    return failed(programFault(error), place, read.order.order);
  }
}

function numbered({ cells, problems }: Row): Row {
  const { document } = cells;
  if (problems.length === 0 || typeof document !== 'number') return { cells, problems };
  return { cells, problems: problems.map((problem) => ({ ...problem, document })) };
}

function failed(why: string, place: Place, order?: string): Row {
  const { file, line } = place;
  const expected = order === undefined ? 'a file that can be read' : 'an order that can be sized';
  return faultyRow(order, [{ file, line, column: 1, path: '', expected, hint: why }], place);
}

/** A fault of our own costs the one order, not the backlog. */
function programFault(error: unknown): string {
  const what = printable(error instanceof Error ? error.message : String(error)).slice(0, 200);
  return `something is wrong in the program itself (${what}); please report this, with the order`;
}
