/** Every fault has a place, what was expected, and what was found. */
import type { Problem } from '../../src/yaml/problem.ts';
import { hold } from './target.ts';

/** @throws Slip for the first bad fault */
export function holdProblems(problems: readonly Problem[], file: string, text: string): void {
  hold(problems.length > 0, () => 'faulty, and no fault is told');
  const lines = text.replace(/^\ufeff/gm, '').split('\n');
  for (const problem of problems) {
    const said = (): string => JSON.stringify(problem);
    hold(problem.file === file, () => `another file is named: ${said()}`);
    hold(inside(problem, lines), () => `the place is outside of the file: ${said()}`);
    hold(problem.expected.trim() !== '', () => `nothing is expected: ${said()}`);
    hold(problem.found !== '', () => `what was found is empty: ${said()}`);
    // Readers see "found nothing": nothing must be there, or a part missing.
    hold(
      problem.found !== undefined || mayBeMissing(problem, lines),
      () => `what was found is not told: ${said()}`,
    );
  }
}

function inside({ line, column }: Problem, lines: readonly string[]): boolean {
  if (!Number.isInteger(line) || !Number.isInteger(column) || line < 1 || column < 1) return false;
  const text = lines[line - 1];
  return text !== undefined && column <= text.length + 1;
}

/** A missing key or value, or an empty file or block. */
const mayBeMissing = ({ path, line }: Problem, lines: readonly string[]): boolean =>
  path !== '' || line === 1 || (lines[line - 1] ?? '').trim() === '';
