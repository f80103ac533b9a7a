/** One order per line for `size` and `backlog`, whatever wrote it. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { looksByLine } from '../../src/cli/by-line.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const order = (name: string): string =>
  `{"order":"${name}","horse":{"heart-girth":"73 in"},"saddle":{"rigging":"7/8"}}`;
const [a, b, c] = ['a', 'b', 'c'].map(order) as [string, string, string];

const folder = ownFolder();

interface Found {
  readonly order: string | null;
  readonly error?: { readonly problems: readonly { readonly line: number }[] };
}

const cases: readonly (readonly [
  string,
  { text: string; orders: readonly (string | null)[]; line: number },
])[] = [
  ['plain', { text: `${a}\n${b}\n`, orders: ['a', 'b'], line: 0 }],
  ['a mark of byte order', { text: `\ufeff${a}\n${b}\n`, orders: ['a', 'b'], line: 0 }],
  ['ends of lines of Windows', { text: `${a}\r\n${b}\r\n`, orders: ['a', 'b'], line: 0 }],
  ['all of these, and blank lines', { text: `\ufeff\r\n${a}\r\n\r\n${b}`, orders: ['a', 'b'], line: 0 }],
  ['a line that is cut off', { text: `${a}\n${b}\n${c.slice(0, 40)}\n`, orders: ['a', 'b', null], line: 3 }],
  ['a line that is none', { text: `${a}\n${b}\nnone\n${c}\n`, orders: ['a', 'b', null, 'c'], line: 3 }],
];

test.each(cases)('%s', async (_, { text, orders, line }) => {
  for (const name of ['x.ndjson', 'x.txt']) {
    fs.writeFileSync(path.join(folder, name), text);
    const sized = await run(['size', name, '--format', 'json'], { cwd: folder });
    const rows = await run(['backlog', name, '--format', 'json'], { cwd: folder });
    const [ours, theirs] = [sized, rows].map(
      ({ stdout }) => (JSON.parse(stdout) as { results: Found[] }).results,
    );
    expect(ours!.map((each) => each.order ?? null)).toEqual(orders);
    expect(theirs!.map((each) => each.order)).toEqual(orders);
    expect(ours!.flatMap(({ error }) => (error?.problems ?? []).map((problem) => problem.line))).toEqual(
      line === 0 ? [] : [line],
    );
    expect([sized.code, rows.code]).toEqual(line === 0 ? [0, 0] : [3, 3]);
  }
});

test('one order in braces over several lines is not one per line; too short a start decides nothing', () => {
  expect(looksByLine('{ order: 1,\n  horse: {} }\n', false)).toBe(false);
  expect(looksByLine('order: 1\n', false)).toBe(false);
  expect(looksByLine(a.slice(0, 20), true)).toBeUndefined();
  expect(looksByLine('\n', true)).toBeUndefined();
});
