/** `backlog` writes the same harmless rows in every format. */
import fs from 'node:fs';
import path from 'node:path';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { stringify } from 'yaml';
import { beforeAll, expect, test } from 'vitest';
import { columnNames } from '../../src/work/columns.ts';
import { screenColumns } from '../../src/views/backlog-pages.ts';
import { headOf, names, type Name } from '../../src/words/names.ts';
import { visible } from '../../src/units/clean.ts';
import { unguard } from '../../src/pages/csv.ts';
import { columns } from '../../src/units/width.ts';
import { cases, long } from '../support/cases.ts';
import { orderLine, writeOrders } from '../support/backlogs.ts';
import { ownFolder } from '../support/own-folder.ts';
import { repo, repoText, run } from '../support/run-cli.ts';
import { start } from '../support/start.ts';
import { formulas } from './report-payloads.ts';

const home = ownFolder();
beforeAll(() => {
  writeOrders(path.join(home, 'orders'), cases(30, 60));
  fs.writeFileSync(
    path.join(home, 'z.jsonl'),
    Array.from({ length: cases(60, 120) }, (_, i) => orderLine(i)).join('\n'),
  );
});

type Cell = string | number | null;
type Row = Record<string, Cell | Record<string, Cell>>;
const resultsOf = (json: string): Row[] => (JSON.parse(json) as { results: Row[] }).results;
const cellAt = (row: Row, name: Name): Cell =>
  names[name].path.reduce<unknown>((inner, key) => (inner as Row | null | undefined)?.[key], row) as Cell;

test.each(long ? ['table', 'csv', 'json', 'ndjson', 'markdown'] : ['csv'])(
  '%s is the same byte for byte from the built program and in the process of the test',
  async (format) => {
    const args = ['backlog', 'orders', 'z.jsonl', '--format', format];
    const here = await run(args, { cwd: home });
    const { code, stdout, stderr } = await start(args, { cwd: home });
    expect({ code, stdout, stderr }).toEqual(here);
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
      const rows = parse<Record<string, string>>(csv!.stdout, { columns: true });
      const back = rows.map((row) => Object.entries(row).map(([name, cell]) => [name, unguard(cell)]));
      const cellOf = (cell: Cell): string => (typeof cell === 'string' ? visible(cell) : String(cell ?? ''));
      expect(back).toEqual(
        resultsOf(json!.stdout).map((row) =>
          columnNames.map((name) => [headOf(name), cellOf(cellAt(row, name))]),
        ),
      );
    }),
    { numRuns: cases(20, 60) },
  );
}, 120_000);

test('NDJSON is the results of JSON, one a line; columns stand in the order asked for', async () => {
  const args = ['backlog', 'orders', '--columns', 'latigoRun,order,same_number_as', '--format'];
  const [json, lines, csv] = await Promise.all(
    ['json', 'ndjson', 'csv'].map((format) => run([...args, format], { cwd: home })),
  );
  const rows = lines!.stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as Row);
  expect(rows).toEqual(resultsOf(json!.stdout));
  expect(rows.every((row) => Object.keys(row).join() === 'latigoRun,order,sameNumberAs')).toBe(true);
  expect(csv!.stdout.split('\r\n')[0]).toBe('latigo_run_in,order,same_number_as');
});

test('orders that repeat an earlier one are found and told in the summary', async () => {
  const { stdout, stderr } = await run(['backlog', 'orders', '--format', 'json'], { cwd: home });
  const rows = resultsOf(stdout);
  const first = new Map<unknown, string>();
  for (const { order, file, line, sameNumberAs: same } of rows) {
    expect(same).toBe(first.get(order) ?? null);
    if (order !== null && !first.has(order)) first.set(order, `${file as string}:${line as number}`);
  }
  const twice = rows.filter((row) => row['sameNumberAs'] !== null).length;
  expect(twice).toBeGreaterThan(cases(5, 10));
  expect(stderr).toContain(`${twice} orders repeat an earlier number`);
});

interface Sized {
  specs?: Row[];
  ask?: { input: string; how: string }[];
  [key: string]: unknown;
}

/** The JSON of `size` cut down to a row. */
function rowFrom({ specs = [], ask: [next] = [], ...order }: Sized): Row {
  const ask = next === undefined ? null : `${next.input}: ${next.how}`;
  return { ...order, ...specs[0], ask };
}

test('the row says what `size` says of the same order', async () => {
  const names = fs
    .readdirSync(path.join(repo, 'examples/orders'))
    .map((name) => `examples/orders/${name}`)
    .sort();
  // Elbow room from good over tight to none.
  const stdin = Array.from(
    { length: 30 },
    (_, i) =>
      `order: T-${i}\nhorse: { heart-girth: 72 in, elbow-room: ${(4 - i / 15).toFixed(2)} in }\nsaddle: { rigging: full }\n`,
  ).join('---\n');
  const [backlog, size] = await Promise.all(
    ['backlog', 'size'].map((command) => run([command, ...names, '-', '--format', 'json'], { stdin })),
  );
  const rows = resultsOf(backlog!.stdout);
  const wanted = (JSON.parse(size!.stdout) as { results: Sized[] }).results.map(rowFrom);
  expect(rows.map(({ verdict }) => verdict)).toEqual(wanted.map(({ verdict }) => verdict));
  expect(new Set(rows.map(({ verdict }) => verdict))).toEqual(
    new Set(['sized', 'tight', 'none fits', 'faulty']),
  );
  const both: readonly Name[] = [
    ...([
      'order',
      'file',
      'verdict',
      'room',
      'roomSd',
      'style',
      'strands',
      'layers',
      'width',
      'buckleWidth',
    ] as const),
    ...(['flareStart', 'buckle', 'length', 'clearance', 'clearanceSd', 'chance', 'latigoRun'] as const),
    ...(['becauseOf', 'ask', 'reason'] as const),
  ];
  const cells = (row: Row): unknown[] => both.map((name) => [name, cellAt(row, name) ?? null]);
  expect(rows.map(cells)).toEqual(wanted.map(cells));
});

test('every column is filled by some order', async () => {
  const again = repoText('examples/orders/01-height-only.yaml');
  const stdin = `${again}---
order: doubtful
horse: { heart-girth: 73 in }
saddle: { rigging: 7/8, ring-to-ring: 55 in }
`;
  const rows = resultsOf(
    (await run(['backlog', 'examples/orders', '-', '--format', 'json'], { stdin })).stdout,
  );
  const empty = columnNames.filter((name) => rows.every((row) => cellAt(row, name) === null));
  expect(empty, 'src/work/row.ts, or an order in examples/ that has it').toEqual([]);
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
  const rows = parse<Record<string, string>>(fs.readFileSync(path.join(home, 'errors.csv')), {
    columns: true,
  });
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
