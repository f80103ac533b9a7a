/** docs/ask.md names every column and key that ask prints, and the numbers it goes by. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { usualDrawing } from '../../src/ask/ask.ts';
import { askColumns } from '../../src/report/ask-csv.ts';
import { askingNumbers } from '../../src/sources/asking-numbers.ts';
import { repo, run } from '../support/run-cli.ts';

const text = fs.readFileSync(path.join(repo, 'docs', 'ask.md'), 'utf8');
const prose = text.replace(/^```[^]*?^```$/gm, '');
const named = new Set([...prose.matchAll(/`([^`]+)`/g)].map(([, code]) => code!));

test('every column, in order, with what it holds', () => {
  const rows = [...text.matchAll(/^\| `(\w+)` +\| (.+?) +\|$/gm)].map(([, name, about]) => [name, about]);
  expect(rows).toEqual(Object.entries(askColumns));
});

function keysIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(keysIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === 'error' ? [key] : [key, ...keysIn(inner)]));
}

test('every key', async () => {
  const files = ['examples/orders/03-pony.yaml', 'examples/orders/faulty-24-empty.yaml'];
  const { stdout } = await run(['ask', ...files, '--format', 'json', '--draws', '8']);
  const keys = new Set(keysIn(JSON.parse(stdout)));
  expect(keys.size).toBeGreaterThan(25);
  expect([...keys].filter((key) => !named.has(key))).toEqual([]);
});

test('thresholds and draws are those in force', () => {
  const percent = (share: number): string => `${String(Math.round(100 * share))} %`;
  expect(text).toContain(`gains at least ${percent(askingNumbers['worth-gain'].value)}`);
  expect(text).toContain(`a verdict in at least ${percent(askingNumbers['worth-change'].value)}`);
  expect(text).toContain(`by ${String(2 * usualDrawing.strata)} readings a question`);
});
