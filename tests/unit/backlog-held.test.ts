/** Two backlogs never write one file at once; a run that was killed does not keep the next one out. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { spawn, spawnSync } from 'node:child_process';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { newFolder, orderLine, writeOrders } from '../support/backlogs.ts';
import { start } from '../support/start.ts';

let home = '';
let wanted = '';
const out = 'out.csv';

beforeAll(async () => {
  home = newFolder();
  writeOrders(path.join(home, 'orders'), 6);
  await run('--out', 'whole.csv');
  wanted = read('whole.csv');
});
afterAll(() => {
  fs.rmSync(home, { recursive: true });
});
beforeEach(() => {
  for (const name of [out, `.${out}.running`]) fs.rmSync(path.join(home, name), { force: true });
});

const read = (name: string): string => fs.readFileSync(path.join(home, name), 'utf8');
const run = (...args: string[]) => start(['backlog', 'orders', '--format', 'csv', ...args], { cwd: home });
const holdBy = (holder: unknown): void => {
  const text = typeof holder === 'string' ? holder : JSON.stringify(holder);
  fs.writeFileSync(path.join(home, `.${out}.running`), text);
};
const left = (): string[] => fs.readdirSync(home).filter((name) => name.includes('.running'));

/** As proc(5) says: the 22nd field, counted behind the name in brackets, which is the second. */
const beganOf = (number: number): string | undefined => {
  try {
    return /^\d+ \(.*\) (?:\S+ ){19}(\S+)/s.exec(fs.readFileSync(`/proc/${number}/stat`, 'utf8'))![1];
  } catch {
    return undefined;
  }
};
const ended = spawnSync(process.execPath, ['-e', '0']).pid;
const host = os.hostname();

describe('a hold that counts', () => {
  test.each([
    [
      'a process that is there',
      { host, process: process.pid, began: beganOf(process.pid) },
      'another run (process',
    ],
    ['one whose beginning is not known', { host, process: process.pid }, 'another run (process'],
    ['one of another machine', { host: 'back-office', process: ended }, 'a run on back-office (process'],
    [
      'one of a machine with a strange name',
      { host: 'a\u001b[31mb', process: ended },
      'a run on a\\u{1b}[31mb (process',
    ],
  ])('%s: nothing is read or written', async (_, holder, who) => {
    holdBy(holder);
    const { code, stdout, stderr } = await run('--out', out, ...('began' in holder ? ['--resume'] : []));
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toContain(`${who} ${holder.process}) is writing out.csv just now`);
    expect(stderr).toContain('delete .out.csv.running');
    expect(fs.existsSync(path.join(home, out))).toBe(false);
    expect(left()).toEqual([`.${out}.running`]);
  });

  test('a table of faults is held too', async () => {
    holdBy({ host, process: process.pid });
    expect((await run('--errors', out)).stderr).toContain('is writing out.csv just now');
    expect(left()).toEqual([`.${out}.running`]);
  });

  test('other files and standard output are free', async () => {
    holdBy({ host, process: process.pid });
    await run('--out', 'other.csv');
    expect(read('other.csv')).toBe(wanted);
    expect((await run()).stdout).toBe(wanted);
  });

  test.skipIf(process.platform === 'win32')('it holds by whatever name the file is called', async () => {
    fs.writeFileSync(path.join(home, out), 'old');
    fs.symlinkSync(out, path.join(home, 'link.csv'));
    holdBy({ host, process: process.pid });
    expect((await run('--out', 'link.csv')).code).toBe(2);
    expect(read(out)).toBe('old');
  });
});

describe('a hold that is left over', () => {
  test.each([
    ['of a process that has ended', { host, process: ended }],
    ['torn', '{"host":"'],
    ['empty', ''],
    ['of something else', '{"host":7}'],
  ])('%s', async (_, holder) => {
    holdBy(holder);
    expect((await run('--out', out)).code).toBe(3); // of the orders, one in seven is faulty
    expect(read(out)).toBe(wanted);
    expect(left()).toEqual([]);
  });

  test.skipIf(beganOf(process.pid) === undefined)('of a process whose number was given again', async () => {
    holdBy({ host, process: process.pid, began: '1' });
    await run('--out', out);
    expect(read(out)).toBe(wanted);
  });
});

test.skipIf(beganOf(process.pid) === undefined)(
  'a run that is dead and whose end nobody has asked for',
  async () => {
    // The shell starts it and then becomes a program that never asks.
    const parent = spawn('sh', ['-c', 'sleep 0.01 & echo $!; exec sleep 60'], {
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    const number = await new Promise<number>((found) => {
      parent.stdout.on('data', (text: Buffer) => {
        found(Number(text.toString()));
      });
    });
    const state = () => /\) (\S)/.exec(fs.readFileSync(`/proc/${number}/stat`, 'utf8'))![1];
    while (state() !== 'Z') await new Promise((go) => setTimeout(go, 5));
    holdBy({ host, process: number, began: beganOf(number) });
    await run('--out', out);
    expect(read(out)).toBe(wanted);
    parent.kill();
  },
);

test('a run that is about to end is waited for', async () => {
  const ending = spawn(process.execPath, ['-e', 'setTimeout(() => 0, 250)']);
  holdBy({ host, process: ending.pid, began: beganOf(ending.pid!) });
  await run('--out', out);
  expect(read(out)).toBe(wanted);
});

test('of two that really run, the second is turned away and the first ends whole', async () => {
  const lines = Array.from({ length: 4000 }, (_, i) => orderLine(i)).join('\n');
  fs.writeFileSync(path.join(home, 'many.ndjson'), lines);
  const many = (...args: string[]) => start(['backlog', 'many.ndjson', '--out', out, ...args], { cwd: home });
  const first = many();
  while (!fs.existsSync(path.join(home, `${out}.unfinished`))) await new Promise((go) => setTimeout(go, 5));
  const second = await many('--resume');
  expect(second.stderr).toContain('is writing out.csv just now');
  expect(second.code).toBe(2);
  expect((await first).code).toBe(0);
  expect(read(out).trimEnd().split('\n')).toHaveLength(4001);
  expect(left()).toEqual([]);
});
