/** A backlog for scripts: JSON, one result per line, or CSV. Lengths in inches. */
import { cautions } from '../numbers/cautions.ts';
import { jsonLine, rounded, roundedChance } from '../pages/json.ts';
import { phraseText, type Units } from '../units/text.ts';
import { names } from '../words/names.ts';
import type { ColumnName } from '../work/columns.ts';
import type { Cell, Cells } from '../work/row.ts';
import { tableCsv, rowCsv, type Values } from './table.ts';

/** Prints each row as it comes. */
export interface BacklogPrinter {
  readonly head: string;
  readonly row: (cells: Cells) => string;
  readonly before: string;
  readonly between: string;
  /** `sized`: a row holds a spec; `any`: there is a row. */
  readonly foot: (sized: boolean, any: boolean) => string;
}

/** Grouped as in `size`. */
function valueOf(cells: Cells, chosen: readonly ColumnName[]): Values {
  const value: Record<string, unknown> = {};
  for (const name of chosen) {
    const [head, inner] = names[name].path as readonly [string, string?];
    const cell = dataOf(name, cells);
    value[head] = inner === undefined ? cell : { ...(value[head] as object | undefined), [inner]: cell };
  }
  return value;
}

/** Rounded; null when empty. */
function dataOf(name: ColumnName, cells: Cells): string | number | null {
  const cell = cells[name] ?? null;
  if (typeof cell === 'number') return names[name].unit === 'chance' ? roundedChance(cell) : rounded(cell);
  return cell === null || typeof cell === 'string' ? cell : phraseOf(name, cell, 'in');
}

/** The reason names "the other" spec, which has no row here. */
export function phraseOf(
  name: ColumnName,
  cell: Exclude<Cell, string | number | null>,
  units: Units,
): string {
  const text = phraseText(cell, units);
  return name === 'becauseOf' ? text.replace(/^the other\b/, 'no. 2') : text;
}

/** `{ schema, results, cautions }`. */
export const backlogJson = (chosen: readonly ColumnName[]): BacklogPrinter => ({
  head: `{\n  "schema": "cinchwright/backlog/1",\n  "results": [`,
  row: (cells) => `    ${jsonLine(valueOf(cells, chosen)).trimEnd()}`,
  before: '\n',
  between: ',\n',
  foot: (sized, any) => `${any ? '\n  ' : ''}],\n  "cautions": ${JSON.stringify(sized ? cautions : [])}\n}\n`,
});

const plain = { before: '', between: '', foot: () => '' };

/** One result per line. */
export const backlogLines = (chosen: readonly ColumnName[]): BacklogPrinter => ({
  ...plain,
  head: '',
  row: (cells) => jsonLine(valueOf(cells, chosen)),
});

/** A table for spreadsheets. */
export const backlogCsv = (chosen: readonly ColumnName[]): BacklogPrinter => ({
  ...plain,
  head: tableCsv(chosen, []),
  row: (cells) => rowCsv(chosen, valueOf(cells, chosen)),
});
