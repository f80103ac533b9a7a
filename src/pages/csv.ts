/** CSV (RFC 4180) in which no text can become a formula. */
import { visible } from '../units/clean.ts';

/** Numbers are bare, texts guarded, undefined is empty. */
export type Cell = string | number | undefined;

/**
 * Starts with a formula sign, plain or full width, after any blanks (OWASP, CSV Injection); or with an apostrophe,
 * so `unguard` restores it.
 */
const toGuard = /^\p{Zs}*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]|^'/u;
const toQuote = /^[' ]|[",;\t\r\n]| $/;

/** Puts an apostrophe before it. */
export const guard = (text: string): string => (toGuard.test(text) ? `'${text}` : text);

/** Exact inverse of `guard`; numbers have no apostrophe. */
export const unguard = (cell: string): string => cell.replace(/^'/, '');

/** CRLF rows. Control characters become visible, so terminals are safe. */
export const csvText = (rows: readonly (readonly Cell[])[]): string =>
  rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');

function cellText(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const text = guard(visible(cell));
  return toQuote.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
