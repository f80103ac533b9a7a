/** Rows of a slice get their place in the whole: lines and documents are counted from the start of the file. */
import type { Problem } from '../order/problem.ts';
import type { Row } from './row.ts';

/** What stands before a slice in its file. */
export interface Before {
  readonly lines: number;
  readonly documents: number;
}

/** The row with lines and documents counted from the start of the file. */
export function moved(row: Row, before: Before): Row {
  if (before.lines === 0 && before.documents === 0) return row;
  const { cells, problems } = row;
  const { line, document } = cells;
  return {
    problems: problems.map((problem) => movedProblem(problem, before)),
    cells: {
      ...cells,
      ...(typeof line === 'number' ? { line: line + before.lines } : {}),
      ...(typeof document === 'number' ? { document: document + before.documents } : {}),
    },
  };
}

/** A fault with its line and document counted from the start of the file. */
export function movedProblem(problem: Problem, { lines, documents }: Before): Problem {
  const { line, document, hint } = problem;
  return {
    ...problem,
    line: line + lines,
    ...(document === undefined ? {} : { document: document + documents }),
    ...(hint === undefined ? {} : { hint: movedHint(hint, lines) }),
  };
}

/** The one hint of the door that names another line. */
const movedHint = (hint: string, lines: number): string =>
  hint.replace(/^it is on line (\d+) already$/, (_, line: string) =>
    lines === 0 ? hint : `it is on line ${String(Number(line) + lines)} already`,
  );

/** The first fault in one line, and how many more there are. */
export function problemText([first, ...more]: readonly Problem[]): string | null {
  if (first === undefined) return null;
  const { line, column, path, found, expected, hint } = first;
  const place = `line ${String(line)}, column ${String(column)}${path === '' ? '' : `, ${path}`}`;
  const stands = found === undefined ? '' : `found ${found}; `;
  const also = more.length === 0 ? '' : ` (and ${String(more.length)} more)`;
  return `${place}: ${stands}expected ${expected}${hint === undefined ? '' : `; hint: ${hint}`}${also}`;
}
