/** JSON results as spreadsheet rows: names in snake_case, lengths with units. */
import { csvText, type Cell } from '../pages/csv.ts';
import { headOf, names, type Name } from '../words/names.ts';

export type Values = Readonly<Record<string, unknown>>;

/** The table. */
export const tableCsv = (columns: readonly Name[], rows: readonly Values[]): string =>
  csvText([columns.map(headOf)]) + rows.map((row) => rowCsv(columns, row)).join('');

/** One row of it. */
export const rowCsv = (columns: readonly Name[], row: Values): string =>
  csvText([columns.map((name) => cellAt(row, name))]);

function cellAt(row: Values, name: Name): Cell {
  const value = names[name].path.reduce<unknown>(
    (inner, key) => (inner as Values | null | undefined)?.[key],
    row,
  );
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  // As text it would be guarded as a formula.
  if (names[name].unit === 'money' && typeof value === 'string' && value.startsWith('-'))
    return Number(value);
  return typeof value === 'string' || typeof value === 'number' ? value : undefined;
}
