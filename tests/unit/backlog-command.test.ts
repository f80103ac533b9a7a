/** The command line of `backlog` and its progress line. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { columnNames } from '../../src/work/columns.ts';
import { progressFor, progressText, timeText } from '../../src/cli/backlog/progress.ts';
import { orderLine, writeOrders } from '../support/backlogs.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const home = ownFolder();
beforeAll(() => {
  writeOrders(path.join(home, 'orders'), 40);
  fs.writeFileSync(
    path.join(home, 'z.jsonl'),
    Array.from({ length: 200 }, (_, i) => orderLine(i)).join('\n'),
  );
  fs.symlinkSync('z.jsonl', path.join(home, 'to-z.csv'));
  fs.symlinkSync(path.join('orders', 'part-0', '0000.yaml'), path.join(home, 'to-order.csv'));
  fs.symlinkSync('.', path.join(home, 'here'));
});

describe('the command line', () => {
  test.each([
    [['--columns', 'order,,file'], '--columns has an empty name'],
    [['--columns', 'order,order'], '--columns has "order" twice'],
    [['--out', 'x', '--errors', 'x'], '--errors would write over x'],
    [['--out', 'z.jsonl'], '--out would write over z.jsonl, an input of this command'],
    [['--out', 'to-z.csv'], '--out would write over z.jsonl, an input of this command'],
    [['--errors', 'to-z.csv'], '--errors would write over z.jsonl'],
    [['--out', 'to-order.csv'], '--out would write over to-order.csv, which holds an order'],
    [['--out', 'x.csv', '--errors', 'here/x.csv'], '--errors would write over x.csv'],
    [['-', '-'], 'standard input can be named only once'],
    [['--format', 'jsonl'], '--format takes table, csv, json, ndjson or markdown'],
  ])('%j is refused', async (more, words) => {
    const { code, stderr, stdout } = await run(['backlog', 'z.jsonl', ...more], { cwd: home, stdin: '' });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(words);
  });

  test('a place that cannot be looked at is named', async () => {
    fs.symlinkSync('circle', path.join(home, 'circle'));
    const { code, stderr } = await run(['backlog', 'z.jsonl', '--out', 'circle/x.csv'], { cwd: home });
    expect([code, stderr]).toEqual([3, 'cinchwright: cannot write circle/x.csv: the links go in a circle\n']);
  });

  test('the columns can be listed', async () => {
    const { code, stdout } = await run(['backlog', '--columns', 'help']);
    expect(code).toBe(0);
    for (const name of columnNames) expect(stdout).toMatch(new RegExp(`^${name} `, 'm'));
  });
});

describe('how far it is', () => {
  test('says orders, part, rate and time left', () => {
    expect(progressText(300, 0.25, 1000)).toBe('300 orders, 25%, 300 a second, 3 s left');
    expect(progressText(300, undefined, 1000)).toBe('300 orders, 300 a second');
    expect(progressText(3, 0.5, 10)).toBe('3 orders, 50%');
    expect([timeText(125_000), timeText(4_320_000)]).toEqual(['2 min 5 s', '1 h 12 min']);
  });

  test.each([
    ['a terminal', {}, true],
    ['a terminal that knows no codes', { TERM: 'dumb' }, false],
  ])('on %s it is drawn: %j, without colors, ten times a second at most, and taken away', (_, env, drawn) => {
    let said = '';
    let time = 0;
    const stderr = (text: string): void => {
      said += text;
    };
    const progress = progressFor({ stderr, stderrIsTerminal: true, columns: 30, env }, 1000, () => time);
    for (time = 0; time <= 1000; time += 50) progress.at(time, time / 2);
    progress.clear();
    progress.clear();
    const lines = said.split('\r').slice(1);
    expect(lines).toHaveLength(drawn ? 11 : 0);
    if (!drawn) return;
    expect(lines[9]).toBe('1000 orders, 50%, 1000 a seco\u001b[K');
    expect(lines[10]).toBe('\u001b[K');
  });

  test('is drawn nowhere else', async () => {
    const { stderr } = await run(['backlog', 'orders', 'z.jsonl', '--format', 'csv', '--out', 'unseen.csv'], {
      cwd: home,
    });
    expect(stderr).toMatch(/^wrote unseen\.csv\n/);
  });
});
