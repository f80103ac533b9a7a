/** The command line of `backlog`, and the line that says how far it is. */
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { columnNames } from '../../src/backlog/columns.ts';
import { progressText, timeText } from '../../src/cli/backlog/progress.ts';
import { newFolder, orderLine, writeOrders } from '../support/backlogs.ts';
import { run } from '../support/run-cli.ts';
import { start } from '../support/start.ts';

let home = '';
beforeAll(() => {
  home = newFolder();
  writeOrders(path.join(home, 'orders'), 40);
  fs.writeFileSync(
    path.join(home, 'z.jsonl'),
    Array.from({ length: 200 }, (_, i) => orderLine(i)).join('\n'),
  );
});
afterAll(() => {
  fs.rmSync(home, { recursive: true });
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
