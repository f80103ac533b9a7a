/** An order's errors in one cell: the first, and how many more. */
import { pick } from '../units/pick.ts';
import type { Problem } from '../yaml/problem.ts';

/** "line 4, column 11, horse.height: found 15.4 hh; expected ...". */
export function problemText(problems: readonly Problem[]): string {
  const { line, column, path, found, expected, hint } = pick(problems, 0);
  const place = `line ${String(line)}, column ${String(column)}${path === '' ? '' : `, ${path}`}`;
  const stands = found === undefined ? '' : `found ${found}; `;
  const more = problems.length - 1;
  const also = more === 0 ? '' : ` (and ${String(more)} more)`;
  return `${place}: ${stands}expected ${expected}${hint === undefined ? '' : `; hint: ${hint}`}${also}`;
}
