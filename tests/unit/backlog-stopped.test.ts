/** A stopped backlog leaves the last file whole; it reads no further than the next row needs. */
import { once } from 'node:events';
import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, expect, test } from 'vitest';
import { fullDisk, orderLine, orderText, writeOrders } from '../support/backlogs.ts';
import { testFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';
import { launch, makePipe, start } from '../support/start.ts';

let home = '';
beforeEach(() => {
  home = testFolder();
  fs.writeFileSync(path.join(home, 'out.csv'), 'the old cinchwright table');
  fs.writeFileSync(path.join(home, 'faults.csv'), 'the old cinchwright faults');
});

const args = ['backlog', '-', '--format', 'csv', '--out', 'out.csv', '--errors', 'faults.csv'];
const read = (name: string): string => fs.readFileSync(path.join(home, name), 'utf8');
const part = (): string | undefined =>
  fs.readdirSync(home).find((name) => /^\.out\.csv\.\d+\.part$/.test(name));

/** A run that cannot end, with some rows written. */
async function begun() {
  const child = launch(args, { cwd: home });
  let said = '';
  child.stderr.on('data', (text: Buffer) => {
    said += text.toString();
  });
  child.stdin.write(`${orderLine(1)}\n${orderLine(2)}\n`);
  while (!read(part() ?? 'out.csv').includes('N-2')) await new Promise((go) => setTimeout(go, 2));
  return { child, said: () => said };
}

test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
  '%s: the old files stay, nothing is left beside them, and the program ends by the signal',
  async (signal) => {
    const { child, said } = await begun();
    child.kill(signal);
    expect(await once(child, 'close')).toEqual([null, signal]);
    expect(said()).toBe('\ncinchwright: stopped after 2 orders; out.csv is unchanged\n');
    expect(fs.readdirSync(home).sort()).toEqual(['faults.csv', 'out.csv']);
    expect([read('out.csv'), read('faults.csv')]).toEqual([
      'the old cinchwright table',
      'the old cinchwright faults',
    ]);
  },
  60_000,
);

test('Ctrl-C ends a run that waits for a pipe nobody writes into', async () => {
  makePipe('pipe.yaml', home);
  fs.writeFileSync(path.join(home, 'one.yaml'), orderText(1));
  const child = launch(['backlog', 'one.yaml', 'pipe.yaml', '--out', 'out.csv'], { cwd: home });
  while (!read(part() ?? 'out.csv').includes('N-1')) await new Promise((go) => setTimeout(go, 2));
  child.kill('SIGINT');
  expect(await once(child, 'close')).toEqual([null, 'SIGINT']);
  expect([read('out.csv'), part()]).toEqual(['the old cinchwright table', undefined]);
}, 20_000);

test('killed outright: the old files stay, and the next run replaces them', async () => {
  const { child } = await begun();
  child.kill('SIGKILL');
  await once(child, 'close');
  expect([read('out.csv'), read('faults.csv')]).toEqual([
    'the old cinchwright table',
    'the old cinchwright faults',
  ]);
  expect((await start(args, { cwd: home, stdin: orderLine(1) })).code).toBe(0);
  expect(read('out.csv').split('\r\n')).toHaveLength(3);
  expect(fs.readdirSync(home).sort()).toEqual(['faults.csv', 'out.csv']);
}, 60_000);

test('two runs at once do not mix: the file of the last to end is whole', async () => {
  const { child } = await begun();
  expect((await start(args, { cwd: home, stdin: orderLine(7) })).code).toBe(0);
  expect(read('out.csv')).toContain('N-7');
  child.stdin.end(`${orderLine(3)}\n`);
  expect((await once(child, 'close'))[0]).toBe(0);
  expect(read('out.csv').match(/^N-\d/gm)).toEqual(['N-1', 'N-2', 'N-3']);
  expect(part()).toBeUndefined();
}, 60_000);

test.each([0, 100, 9_000])('a disk full after %i bytes: said plainly, the old file stays', async (room) => {
  writeOrders(path.join(home, 'orders'), 40);
  fs.writeFileSync(path.join(home, 'full.cjs'), fullDisk(room));
  const env = { NODE_OPTIONS: `--require ${path.join(home, 'full.cjs')}` };
  const { code, stderr } = await start(['backlog', 'orders', '--out', 'out.csv'], { cwd: home, env });
  expect([code, stderr]).toEqual([3, 'cinchwright: cannot write out.csv: the disk is full\n']);
  expect(read('out.csv')).toBe('the old cinchwright table');
  expect(part()).toBeUndefined();
});

test.each([
  ['lines', (i: number) => `${orderLine(i)}\n`],
  ['documents', (i: number) => `---\n${orderText(i)}`],
])('of %s no more is read than the next row needs', async (_, textOf) => {
  let sent = 0;
  async function* parts(): AsyncGenerator<Buffer> {
    for (; sent < 50; sent++) yield await Promise.resolve(Buffer.from(textOf(sent)));
  }
  let rows = 0;
  const stdout = (row: string): void => {
    if (row === '') return;
    rows += 1;
    expect(sent - rows).toBeLessThanOrEqual(1);
  };
  await run(['backlog', '-', '--format', 'ndjson'], { stdin: '', io: { stdinParts: parts, stdout } });
  expect([rows, sent]).toEqual([50, 50]);
});
