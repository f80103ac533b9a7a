/** A backlog for scripts: JSON, one result per line, or CSV. Lengths in inches. */
import type { ColumnName } from '../work/columns.ts';
import type { Cells } from '../work/row.ts';
import { cautions } from '../numbers/cautions.ts';
import { dataOf, type BacklogPrinter } from './backlog-cells.ts';
import { csvText } from '../pages/csv.ts';
import { jsonLine } from '../pages/json.ts';
import { headOf, names } from '../words/names.ts';

/** Grouped as in `size`. */
function valueOf(cells: Cells, chosen: readonly ColumnName[]): Record<string, unknown> {
  const value: Record<string, unknown> = {};
  for (const name of chosen) {
    const [head, inner] = names[name].path as readonly [string, string?];
    const cell = dataOf(name, cells);
    value[head] = inner === undefined ? cell : { ...(value[head] as object | undefined), [inner]: cell };
  }
  return value;
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
  head: csvText([chosen.map(headOf)]),
  row: (cells) => csvText([chosen.map((name) => dataOf(name, cells) ?? undefined)]),
});
