/** Reads a CSV table (RFC 4180): cells with the place where each starts, or the first fault of its form. */
import { Lines } from './lines.ts';

export interface CsvCell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

export type CsvRead =
  | { readonly ok: true; readonly rows: readonly (readonly CsvCell[])[] }
  | {
      readonly ok: false;
      readonly line: number;
      readonly column: number;
      readonly expected: string;
      /** The rest of the line. */
      readonly found: string;
    };

/** Cell by cell: a quoted text, in which quotes are doubled, or all up to the next comma or the end of the line. */
const cell = /"((?:[^"]|"")*)"|([^,\r\n]*)/y;
const end = /,|\r\n|\n|\r|$/y;

/** Rows of a table, blank lines left out. A quote inside an unquoted cell and text after a closing quote are faults. */
export function csvRows(raw: string): CsvRead {
  const text = raw.replace(/^\ufeff/, '');
  const lines = new Lines(text);
  const rows: CsvCell[][] = [];
  let row: CsvCell[] = [];
  let at = 0;
  for (;;) {
    cell.lastIndex = at;
    const [whole = '', quoted, plain = ''] = cell.exec(text) ?? [];
    const place = lines.at(at);
    const stop = at + whole.length;
    const fault = faultOf({ text, at, stop, isQuoted: quoted !== undefined, plain });
    if (fault !== undefined) {
      const [found = ''] = text.slice(fault.at, fault.at + 200).split(/[\r\n]/);
      return { ok: false, ...lines.at(fault.at), expected: fault.expected, found };
    }
    row.push({ text: quoted === undefined ? plain : quoted.replaceAll('""', '"'), ...place });
    end.lastIndex = stop;
    const [separator = ''] = end.exec(text) ?? [];
    at = stop + separator.length;
    if (separator === ',') continue;
    if (row.length > 1 || row[0]?.text !== '') rows.push(row);
    row = [];
    if (separator === '' || at >= text.length) return { ok: true, rows };
  }
}

interface Around {
  readonly text: string;
  readonly at: number;
  readonly stop: number;
  readonly isQuoted: boolean;
  readonly plain: string;
}

function faultOf({ text, at, stop, isQuoted, plain }: Around): { at: number; expected: string } | undefined {
  if (!isQuoted && text[at] === '"') return { at, expected: 'the quote that opens here to be closed' };
  if (isQuoted && stop < text.length && !/[,\r\n]/.test(text[stop] ?? '')) {
    return { at: stop, expected: 'a comma or the end of the line after a closing quote' };
  }
  const quote = isQuoted ? -1 : plain.indexOf('"');
  return quote < 0
    ? undefined
    : {
        at: at + quote,
        expected: 'a cell with a quote in it to stand in quotes, and the quote to be doubled',
      };
}
