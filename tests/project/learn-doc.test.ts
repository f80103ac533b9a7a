/** docs/learn.md names every result and column of outcomes, and the numbers in force. */
import { expect, test } from 'vitest';
import { usualDrawing } from '../../src/advice/ask.ts';
import { outcomeColumns } from '../../src/order/csv-outcomes.ts';
import { askingNumbers } from '../../src/numbers/asking-numbers.ts';
import { learningNumbers } from '../../src/numbers/learning-numbers.ts';
import { outcomeResults } from '../../src/numbers/outcome-results.ts';
import { repoText } from '../support/run-cli.ts';

const text = repoText('docs/learn.md');
const flat = text.replaceAll(/\s+/g, ' ');

test('results and columns, in order', () => {
  const results = [...text.matchAll(/^- `([\w-]+)`: /gm)].map(([, name]) => name);
  expect(results).toEqual([...outcomeResults]);
  const columns = /The columns of a table: ([^.]+)\./.exec(text)?.[1] ?? '';
  expect([...columns.matchAll(/`([^`]+)`/g)].map(([, name]) => name)).toEqual(Object.keys(outcomeColumns));
});

const percent = (share: number): string => `${String(Math.round(100 * share))}%`;

test.each([
  ['a gain worth asking for', `gains at least ${percent(askingNumbers['worth-gain'].value)}`],
  ['a change worth asking for', `a verdict in at least ${percent(askingNumbers['worth-change'].value)}`],
  ['readings', `by ${String(2 * usualDrawing.strata)} readings a question`],
  ['the start', `R is 1.25 in give or take ${String(learningNumbers['required-sd'].value)}`],
  ['days to rub', `${String(learningNumbers['days-to-rub'].value)} on average`],
  ['days to slack', `after ${String(learningNumbers['days-to-slack'].value)} days on average`],
  ['least settled', `at least ${percent(learningNumbers['least-settled'].value)} of what was unknown`],
])('%s is that in force', (_, words) => {
  expect(flat).toContain(words);
});
