/** Tables for spreadsheets: RFC 4180, and a text can never become a formula. */
import { visible } from '../units/clean.ts';

/** A number is written bare; a text is guarded; nothing is an empty cell. */
export type Cell = string | number | undefined;

/**
 * Guarded is what begins with a sign that makes a spreadsheet calculate, plain or full width (OWASP, CSV Injection), blanks before it or
 * not; and what begins with an apostrophe already, so that taking one off is always right.
 */
const toGuard = /^\p{Zs}*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]|^'/u;
const toQuote = /^[' ]|[",;\t\r\n]| $/;

/** A text that no spreadsheet takes for a formula: an apostrophe goes before it. */
export const guard = (text: string): string => (toGuard.test(text) ? `'${text}` : text);

/** Exactly undoes `guard`: one apostrophe at the start goes, whatever follows. Numbers never have one. */
export const unguard = (cell: string): string => cell.replace(/^'/, '');

/** Rows to text: commas, CRLF after every row. Texts are made visible first, so that looking at the file on a terminal is harmless too. */
export const csvText = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

function cellText(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const text = guard(visible(cell));
  return toQuote.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
