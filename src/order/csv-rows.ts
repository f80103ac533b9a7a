/** Reads CSV (RFC 4180): cells with their places, or the first fault. */
import { Lines } from '../yaml/lines.ts';

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
      readonly found: string;
    };

/** Enough for thousands of outcomes. */
const mostCells = 60_000;

/** Quoted, or up to the next comma or line end. */
const cell = /"((?:[^"]|"")*)"|([^,\r\n]*)/y;
const end = /,|\r\n|\n|\r|$/y;

/** Skips blank lines. Not csv-parse, which counts cells, not columns, and misplaces an unclosed quote. */
export function csvRows(raw: string): CsvRead {
  const text = raw.replace(/^\ufeff/, '');
  const lines = new Lines(text);
  const rows: CsvCell[][] = [];
  let row: CsvCell[] = [];
  let at = 0;
  let count = 0;
  const fault = (from: number, expected: string): CsvRead => {
    const [found = ''] = text.slice(from, from + 200).split(/[\r\n]/);
    return { ok: false, ...lines.at(from), expected, found };
  };
  do {
    const next = cellAt(text, at);
    if (next.fault !== undefined) return fault(next.fault.at, next.fault.expected);
    count += 1;
    if (count > mostCells) return fault(at, `at most ${String(mostCells)} cells in a table`);
    row.push({ text: next.text, ...lines.at(at) });
    end.lastIndex = next.stop;
    const [separator = ''] = end.exec(text) ?? [];
    at = next.stop + separator.length;
    if (separator === ',') continue;
    if (row.length > 1 || row[0]?.text !== '') rows.push(row);
    row = [];
  } while (at < text.length || row.length > 0);
  return { ok: true, rows };
}

function cellAt(text: string, at: number): { text: string; stop: number; fault: ReturnType<typeof faultOf> } {
  cell.lastIndex = at;
  const [whole = '', quoted, plain = ''] = cell.exec(text) ?? [];
  const stop = at + whole.length;
  const isQuoted = quoted !== undefined;
  const fault = faultOf({ text, at, stop, isQuoted, plain });
  return { text: isQuoted ? quoted.replaceAll('""', '"') : plain, stop, fault };
}

interface Around {
  readonly text: string;
  readonly at: number;
  readonly stop: number;
  readonly isQuoted: boolean;
  readonly plain: string;
}

function faultOf({ text, at, stop, isQuoted, plain }: Around): { at: number; expected: string } | undefined {
  if (!isQuoted && text[at] === '"') return { at, expected: 'an end to the quote that opens here' };
  if (isQuoted && stop < text.length && !/[,\r\n]/.test(text[stop] ?? '')) {
    return { at: stop, expected: 'a comma or the end of the line after a closing quote' };
  }
  const quote = isQuoted ? -1 : plain.indexOf('"');
  return quote < 0
    ? undefined
    : {
        at: at + quote,
        expected: 'quotes around a cell that has a quote in it, and that quote doubled',
      };
}
