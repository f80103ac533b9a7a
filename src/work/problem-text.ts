/** An order's errors in one cell: the first, and how many more. */
import type { Problem } from '../yaml/problem.ts';

/** "line 4, column 11, horse.height: found 15.4 hh; expected ..."; null without errors. */
export function problemText([first, ...more]: readonly Problem[]): string | null {
  if (first === undefined) return null;
  const { line, column, path, found, expected, hint } = first;
  const place = `line ${String(line)}, column ${String(column)}${path === '' ? '' : `, ${path}`}`;
  const stands = found === undefined ? '' : `found ${found}; `;
  const also = more.length === 0 ? '' : ` (and ${String(more.length)} more)`;
  return `${place}: ${stands}expected ${expected}${hint === undefined ? '' : `; hint: ${hint}`}${also}`;
}
