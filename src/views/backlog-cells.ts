/** Cells of a backlog's rows: as data for scripts, as text for people. */
import { columnOf, type ColumnName, type Kind } from '../work/columns.ts';
import type { Cell, Cells } from '../work/row.ts';
import { decimals, formatLength } from '../units/print.ts';
import { rounded, roundedChance } from '../pages/json.ts';
import { chanceText, phraseText, type Units } from '../units/text.ts';

/** One way to print a backlog, row by row, so that no row needs to wait for the last. */
export interface BacklogPrinter {
  readonly head: string;
  readonly row: (cells: Cells) => string;
  /** What stands before the first row, and between two. */
  readonly before: string;
  readonly between: string;
  /** `sized` when at least one row holds a spec; `any` when there is a row at all. */
  readonly foot: (sized: boolean, any: boolean) => string;
}

/** Numbers rounded, lengths in inches, phrases as text; null where there is nothing. */
export function dataOf(name: ColumnName, cells: Cells): string | number | null {
  const cell = cells[name] ?? null;
  if (typeof cell === 'number') return columnOf(name).kind === 'chance' ? roundedChance(cell) : rounded(cell);
  return cell === null || typeof cell === 'string' ? cell : phrase(name, cell, 'in');
}

/** The same for a reader: lengths with their unit, a chance in percent; empty where there is nothing. */
export function textOf(name: ColumnName, cells: Cells, units: Units): string {
  const cell = cells[name] ?? null;
  if (cell === null || typeof cell === 'string') return cell ?? '';
  return typeof cell === 'number' ? numberText(cell, columnOf(name).kind, units) : phrase(name, cell, units);
}

/** The reason of the first spec calls the second "the other", which does not stand in the row. */
function phrase(name: ColumnName, cell: Exclude<Cell, string | number | null>, units: Units): string {
  const text = phraseText(cell, units);
  return name === 'because' ? text.replace(/^the other\b/, 'no. 2') : text;
}

function numberText(value: number, kind: Kind, units: Units): string {
  switch (kind) {
    case 'length':
      return formatLength(value, units, 'finished');
    case 'distance':
      return formatLength(value, units, 'computed');
    case 'chance':
      return chanceText(value);
    default:
      return decimals(value, 0);
  }
}
