/** What `backlog` writes: the same rows in every format, whoever does the work, and nothing in them that does harm. */
import fs from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { stringify } from 'yaml';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { columnNames, screenColumns } from '../../src/backlog/columns.ts';
import { decodeRows, encodeRows } from '../../src/backlog/journal.ts';
import { progressText, timeText } from '../../src/cli/backlog/progress.ts';
import { visible } from '../../src/report/clean.ts';
import { unguard } from '../../src/report/csv.ts';
import { columns } from '../../src/report/width.ts';
import { newFolder, orderLine, writeOrders } from '../support/backlogs.ts';
import { repo, run } from '../support/run-cli.ts';
import { start } from '../support/start.ts';
import { formulas } from './report-payloads.ts';

let home = '';
beforeAll(() => {
  home = newFolder();
  writeOrders(path.join(home, 'orders'), 60);
  fs.writeFileSync(
    path.join(home, 'z.jsonl'),
    Array.from({ length: 120 }, (_, i) => orderLine(i)).join('\n'),
  );
});
afterAll(() => {
  fs.rmSync(home, { recursive: true });
});

type Row = Record<string, string | number | null>;
const resultsOf = (json: string): Row[] => (JSON.parse(json) as { results: Row[] }).results;

test.each(['table', 'csv', 'json', 'ndjson', 'markdown'])(
  '%s is the same byte for byte with one worker, two, three, and in the process of the test',
  async (format) => {
    const args = ['backlog', 'orders', 'z.jsonl', '--format', format];
    const here = await run(args, { cwd: home });
    for (const jobs of ['1', '2', '3']) {
      const { code, stdout, stderr } = await start([...args, '--jobs', jobs], { cwd: home });
      expect({ code, stdout, stderr }).toEqual(here);
    }
  },
  120_000,
);

const nasty = fc.oneof(
  fc.constantFrom(
    ...formulas,
    'a,b;"c"',
    "'=1",
    "''",
    ' x ',
    'נעמי, סוס',
    'حصان',
    '🐴👩‍🚀',
    'a\tb',
    '\u202egnp.exe',
    '-',
    '#',
  ),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 }),
);

test('CSV read back by another library is the JSON: formulas, quotes, commas, emoji, letters from right to left', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(fc.tuple(nasty, nasty, nasty), { minLength: 1, maxLength: 6 }), async (all) => {
      const stdin = all
        .map(([order, name, horse]) =>
          stringify(
            {
              order,
              customer: { name },
              horse: { name: horse, height: '15 hh' },
              saddle: { rigging: '7/8' },
            },
            { defaultStringType: 'QUOTE_DOUBLE', lineWidth: 0 },
          ),
        )
        .join('---\n');
      const [csv, json] = await Promise.all(
        ['csv', 'json'].map((format) => run(['backlog', '--format', format], { stdin })),
      );
      const rows = parse(csv!.stdout, { columns: true }) as Record<string, string>[];
      const back = rows.map((row) => Object.entries(row).map(([name, cell]) => [name, unguard(cell)]));
      const cellOf = (cell: string | number | null): string =>
        typeof cell === 'string' ? visible(cell) : String(cell ?? '');
      expect(back).toEqual(
        resultsOf(json!.stdout).map((row) => Object.entries(row).map(([name, cell]) => [name, cellOf(cell)])),
      );
    }),
    { numRuns: 60 },
  );
}, 120_000);

test('NDJSON is the results of JSON, one a line; columns stand in the order asked for', async () => {
  const asked = ['chance', 'order', 'same-number-as'];
  const args = ['backlog', 'orders', '--columns', asked.join(','), '--format'];
  const [json, lines, csv] = await Promise.all(
    ['json', 'ndjson', 'csv'].map((format) => run([...args, format], { cwd: home })),
  );
  const rows = lines!.stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Row);
  expect(rows).toEqual(resultsOf(json!.stdout));
  expect(rows.every((row) => Object.keys(row).join() === asked.join())).toBe(true);
  expect(csv!.stdout.split('\r\n')[0]).toBe(asked.join(','));
});

test('what several orders have in common with an earlier one is found, and told in the summary', async () => {
  const { stdout, stderr } = await run(['backlog', 'orders', '--format', 'json'], { cwd: home });
  const rows = resultsOf(stdout);
  const first = new Map<unknown, string>();
  for (const { order, file, line, 'same-number-as': same } of rows) {
    expect(same).toBe(first.get(order) ?? null);
    if (order !== null && !first.has(order)) first.set(order, `${String(file)}:${String(line)}`);
  }
  const twice = rows.filter((row) => row['same-number-as'] !== null).length;
  expect(twice).toBeGreaterThan(10);
  expect(stderr).toContain(`${twice} orders have the number of an earlier one`);
});

test('the row says what `size` says of the same order', async () => {
  const names = fs
    .readdirSync(path.join(repo, 'examples/orders'))
    .filter((name) => /^[01]/.test(name))
    .map((name) => `examples/orders/${name}`);
  const rows = resultsOf((await run(['backlog', ...names, '--format', 'json'])).stdout);
  const sized = (
    JSON.parse((await run(['size', ...names, '--format', 'json'])).stdout) as {
      results: Record<string, never>[];
    }
  ).results;
  expect(rows).toHaveLength(sized.length);
  sized.forEach(
    (
      result: { specs?: Record<string, unknown>[]; refused?: { text: string }[]; ask?: { input: string }[] },
      i,
    ) => {
      const row = rows[i]!;
      const best = result.specs?.[0] as
        | {
            style: string;
            strands: number;
            width: number;
            length: number;
            clearance: { inches: number; sd: number; chance: number };
            run: { inches: number };
            becauseOf: { text: string };
          }
        | undefined;
      expect([row['style'], row['strands'], row['width'], row['length']]).toEqual([
        best?.style ?? null,
        best?.strands ?? null,
        best?.width ?? null,
        best?.length ?? null,
      ]);
      if (best !== undefined) {
        expect([row['clearance'], row['clearance-sd'], row['chance']]).toEqual([
          best.clearance.inches,
          best.clearance.sd,
          best.clearance.chance,
        ]);
        expect([row['latigo-run'], row['because']]).toEqual([best.run.inches, best.becauseOf.text]);
      } else if (result.refused !== undefined) {
        expect(row['reason']).toContain(result.refused[0]!.text);
        expect(row['verdict']).toBe('none fits');
      } else expect(row['verdict']).toBe('faulty');
      expect(row['measure-first'] ?? undefined)[
        result.ask?.[0] === undefined ? 'toBeUndefined' : 'toContain'
      ](result.ask?.[0]?.input as never);
    },
  );
});

test('the table fits 80 columns whatever stands in it, in inches and centimeters', async () => {
  const stdin = Array.from({ length: 9 }, (_, i) =>
    orderLine(i)
      .replace('Horse', '🐴'.repeat(12))
      .replace('"order":"N', `"order":"${'馬'.repeat(20)}`),
  ).join('\n');
  for (const more of [[], ['--units', 'cm'], ['--columns', columnNames.slice(0, 9).join()]]) {
    const { stdout } = await run(['backlog', ...more], { stdin });
    expect(stdout.split('\n').filter((line) => columns(line) > 80)).toEqual([]);
  }
  expect(screenColumns.every((name) => columnNames.includes(name))).toBe(true);
});

test('all faults stand in the table of --errors, as many as `size` tells', async () => {
  const folder = path.join(home, 'faults');
  fs.cpSync(path.join(repo, 'examples', 'orders'), folder, { recursive: true });
  const { code } = await run(['backlog', 'faults', '--errors', 'errors.csv'], { cwd: home });
  expect(code).toBe(3);
  const rows = parse(fs.readFileSync(path.join(home, 'errors.csv')), { columns: true }) as Record<
    string,
    string
  >[];
  const names = fs
    .readdirSync(folder)
    .sort()
    .map((name) => `faults/${name}`);
  const { stderr } = await run(['size', ...names], { cwd: home });
  const places = stderr
    .split('\n')
    .flatMap((line) => /^(faults\S+?):(\d+):(\d+):/.exec(line)?.slice(1, 4).join(':') ?? []);
  expect(rows.map(({ file, line, column }) => [file, line, column].join(':'))).toEqual(places);
  expect(Object.keys(rows[0]!)).toEqual([
    'order',
    'file',
    'document',
    'line',
    'column',
    'key',
    'found',
    'expected',
    'hint',
  ]);
});

describe('the command line', () => {
  test.each([
    [['--columns', 'oder'], 'there is no column called "oder"\nDid you mean order?'],
    [['--columns', 'order,,file'], '--columns has an empty name'],
    [['--columns', 'order,order'], '--columns has "order" twice'],
    [['--resume'], '--resume goes with --out FILE'],
    [['--out', 'x', '--errors', 'x'], '--errors would write over x'],
    [['--out', 'z.jsonl'], '--out would write over z.jsonl, which is read'],
    [['--jobs', '0'], '--jobs takes a whole number from 1 to 64'],
    [['-', '-'], 'standard input can be named only once'],
    [['--format', 'jsonl'], '--format takes table, csv, json, ndjson or markdown'],
  ])('%j is refused', async (more, words) => {
    const { code, stderr, stdout } = await run(['backlog', 'z.jsonl', ...more], { cwd: home, stdin: '' });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(words);
  });

  test('the columns can be listed', async () => {
    const { code, stdout } = await run(['backlog', '--columns', 'help']);
    expect(code).toBe(0);
    for (const name of columnNames) expect(stdout).toMatch(new RegExp(`^${name} `, 'm'));
  });

  test('the word by which the program starts its workers is no command', async () => {
    const { code, stderr } = await start(['--as-worker-of-backlog']);
    expect(code).toBe(2);
    expect(stderr).toContain('unknown option');
  });
});

describe('how far it is', () => {
  test('says orders, part, rate and time left', () => {
    expect(progressText(300, 0.25, 1000)).toBe('300 orders, 25 %, 300 a second, 3 s left');
    expect(progressText(300, undefined, 1000)).toBe('300 orders, 300 a second');
    expect(progressText(3, 0.5, 10)).toBe('3 orders, 50 %');
    expect([timeText(125_000), timeText(4_320_000)]).toEqual(['2 min 5 s', '1 h 12 min']);
  });

  test.each([
    ['a terminal', {}, true],
    ['a terminal that knows no codes', { TERM: 'dumb' }, false],
  ])('is drawn on %s, without colors, and taken away', async (_, env, drawn) => {
    const args = ['backlog', 'orders', 'z.jsonl', '--format', 'csv', '--out', 'seen.csv'];
    const { stderr } = await run(args, { cwd: home, env, columns: 100 });
    const codes = stderr.match(/\u001b\[[^K]*[A-JL-Za-z]/g);
    expect(codes).toBeNull();
    expect(stderr.includes('\r')).toBe(drawn);
    if (drawn) expect(stderr).toMatch(/\r[^\r]*orders[^\r]*\u001b\[K\r\u001b\[Kwrote seen\.csv\n/);
  });

  test('is drawn nowhere else', async () => {
    const { stderr } = await run(['backlog', 'orders', 'z.jsonl', '--format', 'csv', '--out', 'unseen.csv'], {
      cwd: home,
    });
    expect(stderr).toMatch(/^wrote unseen\.csv\n/);
  });
});

test('rows come out of the journal as they went in', () => {
  const because = {
    words: ['wider: ', ' against ', ''],
    values: [{ value: 4.75, as: 'length' as const }, 'x'],
  };
  const problem = { file: 'f', line: 1, column: 2, path: 'a.b', expected: 'x', found: '\u2028"' };
  const rows = [
    {
      cells: Object.fromEntries(
        columnNames.map((name) => [
          name,
          name === 'because' ? because : name === 'chance' ? 0.123456789012345 : null,
        ]),
      ),
      problems: [],
    },
    { cells: Object.fromEntries(columnNames.map((name) => [name, name])), problems: [problem, problem] },
  ];
  expect(decodeRows(encodeRows(rows))).toEqual(rows);
});
