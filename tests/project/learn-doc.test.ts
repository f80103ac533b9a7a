/** docs/learn.md names every result and column, the numbers in force, and what the example gives. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { outcomeColumns } from '../../src/order/csv-outcomes.ts';
import { learningNumbers } from '../../src/sources/learning-numbers.ts';
import { outcomeResults } from '../../src/sources/outcome-results.ts';
import { repo, run } from '../support/run-cli.ts';

const text = fs.readFileSync(path.join(repo, 'docs', 'learn.md'), 'utf8');

test('results and columns, in order', () => {
  const rows = [...text.matchAll(/^\| `([\w-]+)` +\|/gm)].map(([, name]) => name);
  expect(rows).toEqual([...outcomeResults]);
  const columns = /The columns of a table: ([^.]+)\./.exec(text)?.[1] ?? '';
  expect([...columns.matchAll(/`([^`]+)`/g)].map(([, name]) => name)).toEqual(Object.keys(outcomeColumns));
});

test('numbers are those in force', () => {
  const value = (key: keyof typeof learningNumbers): number => learningNumbers[key].value;
  expect(text).toContain(`R is 1.25 in give or take ${value('required-sd')}, s is ${value('softness')} in`);
  expect(text).toContain(`${value('days-to-rub')} on average`);
  expect(text).toContain(`after ${value('days-to-slack')} days on average`);
  expect(text).toContain(`more than ${value('one-by-one')}`);
  expect(text.replace(/\s+/g, ' ')).toContain(
    `at least ${100 * value('least-settled')} % of what was unknown`,
  );
});

test('the blocks shown are those that are written', async () => {
  const { stdout } = await run(['learn', 'examples/outcomes.csv', '--format', 'json']);
  const [clearance] = (JSON.parse(stdout) as { numbers: { value: number; outcomes: number }[] }).numbers;
  expect(text).toContain(`required-clearance: ${clearance!.value} in`);
  expect(text).toContain(`from ${clearance!.outcomes} outcomes of this shop`);
});
