/** Cells of a backlog's rows: as data for scripts, as text for people. */
import type { ColumnName } from '../work/columns.ts';
import type { Cell, Cells } from '../work/row.ts';
import { decimals, formatLength } from '../units/print.ts';
import { rounded, roundedChance } from '../pages/json.ts';
import { chanceText, phraseText, type Units } from '../units/text.ts';
import { names } from '../words/names.ts';

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
  if (typeof cell === 'number') return names[name].unit === 'chance' ? roundedChance(cell) : rounded(cell);
  return cell === null || typeof cell === 'string' ? cell : phrase(name, cell, 'in');
}

/** The same for a reader: lengths with their unit, a chance in percent; empty where there is nothing. */
export function textOf(name: ColumnName, cells: Cells, units: Units): string {
  const cell = cells[name] ?? null;
  if (cell === null || typeof cell === 'string') return cell ?? '';
  return typeof cell === 'number' ? numberText(name, cell, units) : phrase(name, cell, units);
}

/** The reason of the first spec calls the second "the other", which does not stand in the row. */
function phrase(name: ColumnName, cell: Exclude<Cell, string | number | null>, units: Units): string {
  const text = phraseText(cell, units);
  return name === 'becauseOf' ? text.replace(/^the other\b/, 'no. 2') : text;
}

/** What is tied to such a length is told to the quarter inch; what only comes of it, with decimals. */
const tied: ReadonlySet<ColumnName> = new Set(['width', 'buckleWidth', 'flareStart', 'length']);

function numberText(name: ColumnName, value: number, units: Units): string {
  switch (names[name].unit) {
    case 'in':
      return formatLength(value, units, tied.has(name) ? 'finished' : 'computed');
    case 'chance':
      return chanceText(value);
    default:
      return decimals(value, 0);
  }
}
