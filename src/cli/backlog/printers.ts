/** Loads the printer of a format on demand. */
import { columnNames, type ColumnName } from '../../work/columns.ts';
import type { BacklogPrinter } from '../../views/backlog-data.ts';
import { nearestWord } from '../../units/nearest.ts';
import { CliFault, didYouMean, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { reportOptions } from '../screen.ts';
import type { BacklogFormat } from './formats.ts';

interface Asked {
  readonly format: BacklogFormat;
  readonly columns?: readonly ColumnName[] | undefined;
  readonly units: 'in' | 'cm';
  readonly color: boolean;
  readonly out?: string;
}

export interface Look {
  readonly format: BacklogFormat;
  /** undefined means the format's own. */
  readonly columns: readonly ColumnName[] | undefined;
  readonly units: 'in' | 'cm';
  readonly color: boolean;
  readonly width: number;
}

/** For this screen or that file. */
export function lookOf(asked: Asked, io: CliIo): Look {
  const { format, columns } = asked;
  const { units, color, width } = reportOptions(asked, io);
  return { format, columns, units, color, width };
}

/** With all columns, or those chosen. */
export async function printerFor(look: Look): Promise<BacklogPrinter> {
  const { format, columns, units } = look;
  if (format === 'table' || format === 'markdown') {
    const pages = await import('../../views/backlog-pages.ts');
    return format === 'table'
      ? pages.backlogTable(columns ?? pages.screenColumns, columns === undefined, look)
      : pages.backlogMarkdown(columns ?? pages.pageColumns, units);
  }
  const data = await import('../../views/backlog-data.ts');
  const make = { json: data.backlogJson, ndjson: data.backlogLines, csv: data.backlogCsv }[format];
  return make(columns ?? columnNames);
}

/** From "a,b,c". Errors: an unknown name, a name twice, none. */
export function columnsAsked(text: string): readonly ColumnName[] {
  const names = text.split(',').map((name) => name.trim());
  const chosen = names.map(columnAsked);
  const twice = chosen.find((name, i) => chosen.indexOf(name) !== i);
  if (twice !== undefined) throw new CliFault(`--columns has "${twice}" twice`);
  return chosen;
}

/** `buckleWidth`, `buckle_width_in` and "buckle width" are one. */
const plain = (name: string): string => name.replace(/_in$/, '').replaceAll(/[ _-]/g, '').toLowerCase();

function columnAsked(name: string): ColumnName {
  const found = columnNames.find((column) => plain(column) === plain(name));
  if (found !== undefined) return found;
  const near = nearestWord(name, columnNames);
  throw new CliFault(
    name === '' ? '--columns has an empty name' : `there is no column called "${printable(name)}"`,
    { hint: didYouMean(near) ?? 'Run "cinchwright backlog --columns help" to see them all.' },
  );
}
