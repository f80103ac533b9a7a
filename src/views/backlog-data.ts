/** A backlog for scripts and spreadsheets: JSON, one result a line, CSV. Lengths are inches. */
import type { ColumnName } from '../work/columns.ts';
import type { Cells } from '../work/row.ts';
import { cautions } from '../numbers/cautions.ts';
import { dataOf, type BacklogPrinter } from './backlog-cells.ts';
import { csvText } from '../pages/csv.ts';
import { jsonLine } from '../pages/json.ts';

const backlogSchema = 'cinchwright/backlog/1';

const valueOf = (cells: Cells, chosen: readonly ColumnName[]): Record<string, string | number | null> =>
  Object.fromEntries(chosen.map((name) => [name, dataOf(name, cells)]));

/** One document, `{ schema, results, cautions }`, one result a line. */
export const backlogJson = (chosen: readonly ColumnName[]): BacklogPrinter => ({
  head: `{\n  "schema": ${JSON.stringify(backlogSchema)},\n  "results": [`,
  row: (cells) => `    ${jsonLine(valueOf(cells, chosen)).trimEnd()}`,
  before: '\n',
  between: ',\n',
  foot: (sized, any) => `${any ? '\n  ' : ''}],\n  "cautions": ${JSON.stringify(sized ? cautions : [])}\n}\n`,
});

/** One result a line, nothing else. */
export const backlogLines = (chosen: readonly ColumnName[]): BacklogPrinter => ({
  head: '',
  row: (cells) => jsonLine(valueOf(cells, chosen)),
  before: '',
  between: '',
  foot: () => '',
});

/** A table for a spreadsheet. */
export const backlogCsv = (chosen: readonly ColumnName[]): BacklogPrinter => ({
  head: csvText([chosen]),
  row: (cells) => csvText([chosen.map((name) => dataOf(name, cells) ?? undefined)]),
  before: '',
  between: '',
  foot: () => '',
});
