/** docs/csv.md says what the program does: every row of its tables is tried. */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import vm from 'node:vm';
import { describe, expect, test } from 'vitest';
import { visible } from '../../src/report/clean.ts';
import { csvText } from '../../src/report/csv.ts';
import { formulas } from '../unit/report-payloads.ts';
import { repo } from '../support/run-cli.ts';
import { installed } from '../support/shells.ts';

const text = fs.readFileSync(path.join(repo, 'docs', 'csv.md'), 'utf8');

/** Code of each cell of the table under a heading, row by row. */
function tableUnder(heading: string): string[][][] {
  const section = text.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '';
  const rows = section.split('\n').filter((line) => line.startsWith('|'));
  return rows
    .slice(2)
    .map((row) => row.split(' | ').map((cell) => [...cell.matchAll(/`([^`]+)`/g)].map(([, code]) => code!)));
}

describe('cells', () => {
  const rows = tableUnder('Cells that could be formulas');
  test('there are some', () => {
    expect(rows.length).toBeGreaterThan(10);
  });
  test.each(rows)('%s is written %s', ([json], [cell]) => {
    expect(csvText([[JSON.parse(json!) as string]])).toBe(`${cell!}\r\n`);
  });
});

describe('signs', () => {
  const rows = tableUnder('Signs that steer a screen or cannot be seen').map(
    ([, from, to]) => [from!, to!] as const,
  );
  test('every kind has examples', () => {
    expect(rows).toHaveLength(5);
    for (const [from, to] of rows) expect([from.length, to.length]).toEqual([to.length, from.length]);
  });
  test.each(rows.flatMap(([from, to]) => from.map((json, i) => [json, to[i]!] as const)))(
    '%s: %s',
    (json, shown) => {
      expect(visible(JSON.parse(json) as string)).toBe(shown);
    },
  );
});

describe('undoing', () => {
  const how = new Map(
    text
      .split('\n')
      .filter((line) => /^\| (JavaScript|Python) /.test(line))
      .map((line) => [line.split(' ')[1]!, /`([^`]+)`/.exec(line)![1]!]),
  );
  const texts = [...formulas, "'", "''", "'=1", ' =1', 'Dusty', "O'Neil"];
  const csv = csvText([texts]);

  test('in JavaScript', () => {
    const undo = (cell: string): unknown => vm.runInNewContext(how.get('JavaScript')!, { cell });
    expect(texts.map((one) => undo(one.startsWith("'") ? `'${one}` : one))).toEqual(texts);
  });
  test.skipIf(!installed('python3'))('in Python, with its own reader of CSV', () => {
    const code = `import csv, json, sys
print(json.dumps([${how.get('Python')!} for row in csv.reader(sys.stdin) for cell in row]))`;
    const out = execFileSync('python3', ['-c', code], {
      input: csv,
      encoding: 'utf8',
      env: { PATH: process.env['PATH'], PYTHONUTF8: '1' },
    });
    expect(JSON.parse(out)).toEqual(texts);
  });
});
