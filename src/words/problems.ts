/** Faults of files as a person can put a finger on them: place, what was found, what was expected, a hint. */
import type { Problem } from '../yaml/problem.ts';
import { visible } from '../units/clean.ts';
import { pageFor, pageText, sentence, type Page } from '../pages/page.ts';
import { capital } from '../units/text.ts';
import type { ReportOptions } from '../pages/page.ts';

/** All problems, each with its place first, so that editors can jump there. Empty for none. */
export function problemsText(
  problems: readonly Problem[],
  options: Pick<ReportOptions, 'color' | 'width'>,
): string {
  if (problems.length === 0) return '';
  const page = pageFor({ ...options, units: 'in' });
  return pageText(problems.flatMap((problem) => problemLines(problem, page)));
}

/** What is wrong and what to write, where the reader sees the place. */
export const faultText = (problem: Problem): string => faultSentences(problem).join(' ');

function faultSentences({ found, expected, hint }: Problem): string[] {
  const stands = found === undefined ? 'Nothing here' : visible(found);
  const told = ended(`${stands}: expected ${visible(expected)}`);
  return hint === undefined ? [told] : [told, ended(capital(visible(hint)))];
}

function problemLines(problem: Problem, page: Page): string[] {
  const { file, line, column, path, document } = problem;
  const place = `${visible(file)}:${String(line)}:${String(column)}:`;
  const which = [
    document === undefined ? '' : `document ${String(document)}`,
    path === '' ? '' : visible(path),
  ].filter((part) => part !== '');
  const key = which.length === 0 ? '' : ` ${which.join(', ')}`;
  return [
    // Never wrapped: a place that is cut in two is no place.
    page.pen.strong(place) + key,
    ...faultSentences(problem).flatMap((text) => sentence(page, text, 2)),
  ];
}

const ended = (text: string): string => (/[.?!"]$/.test(text) ? text : `${text}.`);
