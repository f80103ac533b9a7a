/** docs/backlog.md names every key and column that materials and schedule print. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { materialsColumns } from '../../src/report/materials-csv.ts';
import { scheduleColumns } from '../../src/report/schedule-csv.ts';
import { repo, run } from '../support/run-cli.ts';

const text = fs.readFileSync(path.join(repo, 'docs', 'backlog.md'), 'utf8');
const named = new Set([...text.matchAll(/`([^`]+)`/g)].map(([, code]) => code!));

/** Keys at any depth; a spec and the error of a file are those of `size`. */
function keysIn(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(keysIn);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    key === 'spec' || key === 'error' ? [key] : [key, ...keysIn(inner)],
  );
}

test.each([
  ['materials', []],
  ['schedule', ['--hours', '3']],
])('every key of %s', async (command, more) => {
  const { stdout } = await run([command, 'examples/orders', ...more, '--format', 'json']);
  const keys = new Set(keysIn(JSON.parse(stdout)).filter((key) => key !== 'schema'));
  expect(keys.size).toBeGreaterThan(15);
  expect([...keys].filter((key) => !named.has(key))).toEqual([]);
});

test.each([
  ['materials', materialsColumns],
  ['schedule', scheduleColumns],
])('every column of %s, in order', (command, columns) => {
  const section = text.split(`\`${command}\` has `).at(-1)!;
  const rows = [...section.matchAll(/^\| `(\w+)` +\| (.+?) +\|$/gm)].map(([, name, about]) => [name, about]);
  expect(rows.slice(0, columns.length)).toEqual(columns.map((column) => [...column]));
});
