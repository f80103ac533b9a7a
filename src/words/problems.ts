/** Errors in files: place, found, expected, a hint. */
import type { Problem } from '../yaml/problem.ts';
import { visible } from '../units/clean.ts';
import { pageFor, pageText, sentence, type Page } from '../pages/page.ts';
import { capital } from '../units/text.ts';
import type { ReportOptions } from '../pages/page.ts';

/** The place comes first so editors can jump to it. */
export function problemsText(
  problems: readonly Problem[],
  options: Pick<ReportOptions, 'color' | 'width'>,
): string {
  if (problems.length === 0) return '';
  const page = pageFor({ ...options, units: 'in' });
  return pageText(problems.flatMap((problem) => problemLines(problem, page)));
}

/** Without the place. */
export const faultText = (problem: Problem): string => faultSentences(problem).join(' ');

function faultSentences({ found, expected, hint }: Problem): string[] {
  const stands = found === undefined ? 'Nothing here' : visible(found);
  const told = ended(`${stands}: expected ${visible(expected)}`);
  return hint === undefined ? [told] : [told, ended(capital(visible(hint)))];
}

function problemLines(problem: Problem, page: Page): string[] {
  const { file, line, column, path, document, order } = problem;
  const place = `${visible(file)}:${String(line)}:${String(column)}:`;
  const which = [
    document === undefined
      ? ''
      : order === undefined
        ? `document ${String(document)}`
        : `order ${visible(order)}`,
    path === '' ? '' : visible(path),
  ].filter((part) => part !== '');
  const key = which.length === 0 ? '' : ` ${which.join(', ')}`;
  return [
    // Not wrapped: editors must read the place.
    page.pen.strong(place) + key,
    ...faultSentences(problem).flatMap((text) => sentence(page, text, 2)),
  ];
}

const ended = (text: string): string => (/[.?!"]$/.test(text) ? text : `${text}.`);
