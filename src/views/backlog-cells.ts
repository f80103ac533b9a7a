/** Cells of a backlog row: data for scripts, text for people. */
import type { ColumnName } from '../work/columns.ts';
import type { Cell, Cells } from '../work/row.ts';
import { decimals, formatLength } from '../units/print.ts';
import { rounded, roundedChance } from '../pages/json.ts';
import { chanceText, phraseText, type Units } from '../units/text.ts';
import { names } from '../words/names.ts';

/** Prints row by row, so no row waits for the last. */
export interface BacklogPrinter {
  readonly head: string;
  readonly row: (cells: Cells) => string;
  /** Printed before the first row, and between rows. */
  readonly before: string;
  readonly between: string;
  /** `sized` when a row holds a spec; `any` when there is a row. */
  readonly foot: (sized: boolean, any: boolean) => string;
}

/** Rounded; null when empty. */
export function dataOf(name: ColumnName, cells: Cells): string | number | null {
  const cell = cells[name] ?? null;
  if (typeof cell === 'number') return names[name].unit === 'chance' ? roundedChance(cell) : rounded(cell);
  return cell === null || typeof cell === 'string' ? cell : phrase(name, cell, 'in');
}

/** With units and percents; "" when empty. */
export function textOf(name: ColumnName, cells: Cells, units: Units): string {
  const cell = cells[name] ?? null;
  if (cell === null || typeof cell === 'string') return cell ?? '';
  return typeof cell === 'number' ? numberText(name, cell, units) : phrase(name, cell, units);
}

/** The reason names "the other" spec, which has no row here. */
function phrase(name: ColumnName, cell: Exclude<Cell, string | number | null>, units: Units): string {
  const text = phraseText(cell, units);
  return name === 'becauseOf' ? text.replace(/^the other\b/, 'no. 2') : text;
}

/** Lengths we cut to print in quarters; derived ones with decimals. */
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
