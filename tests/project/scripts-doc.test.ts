/** docs/scripts.md is right about texts in tables and written files. */
import { execFileSync } from 'node:child_process';
import vm from 'node:vm';
import { describe, expect, test } from 'vitest';
import { visible } from '../../src/units/clean.ts';
import { csvText } from '../../src/pages/csv.ts';
import { formulas } from '../unit/report-payloads.ts';
import { repoText } from '../support/run-cli.ts';
import { installed } from '../support/shells.ts';

const text = repoText('docs/scripts.md');
const section = text.split('## Cells that could be formulas\n')[1]?.split('\n## ')[0] ?? '';

describe('cells', () => {
  const rows = [...section.matchAll(/^- `(.+)` becomes `(.+)`$/gm)].map(([, json, cell]) => [json!, cell!]);
  test('there are some', () => {
    expect(rows.length).toBeGreaterThan(7);
  });
  test.each(rows)('%s is written %s', (json, cell) => {
    expect(csvText([[JSON.parse(json) as string]])).toBe(`${cell}\r\n`);
  });
});

describe('signs', () => {
  const kinds = [...section.matchAll(/^- .+: (`.+ is shown as .+)$/gm)].map(([, shown]) => shown!);
  const pairs = kinds.flatMap((shown) => [...shown.matchAll(/`([^`]+)`(?: is shown)? as `([^`]+)`/g)]);
  test('every kind has examples', () => {
    expect([kinds.length, pairs.length]).toEqual([5, 8]);
  });
  test.each(pairs.map(([, json, shown]) => [json!, shown!]))('%s: %s', (json, shown) => {
    expect(visible(JSON.parse(json) as string)).toBe(shown);
  });
});

describe('undoing', () => {
  const how = (language: string): string => new RegExp(`${language}\\s+\`([^\`]+)\``).exec(section)![1]!;
  const texts = [...formulas, "'", "''", "'=1", ' =1', 'Dusty', "O'Neil"];
  const csv = csvText([texts]);

  test('in JavaScript', () => {
    const undo = (cell: string): unknown => vm.runInNewContext(how('JavaScript'), { cell });
    expect(texts.map((one) => undo(one.startsWith("'") ? `'${one}` : one))).toEqual(texts);
  });
  test.skipIf(!installed('python3'))('in Python, with its own reader of CSV', () => {
    const code = `import csv, json, sys
print(json.dumps([${how('Python')} for row in csv.reader(sys.stdin) for cell in row]))`;
    const out = execFileSync('python3', ['-c', code], {
      input: csv,
      encoding: 'utf8',
      env: { PATH: process.env['PATH'], PYTHONUTF8: '1' },
    });
    expect(JSON.parse(out)).toEqual(texts);
  });
});

test('every option that names something to write is told', () => {
  const written = ['--out', '--out-dir', '--errors', '--picture', '--write', '--in-place'];
  expect(written.filter((option) => !text.includes(`\`${option}\``))).toEqual([]);
});
