/** A backlog whose process is really killed, over and over, ends with the same bytes as one that is left alone. */
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { seededRandom } from '../../src/geometry/random.ts';
import { fullDisk, killer, newFolder, orderLine, writeOrders } from '../support/backlogs.ts';
import { launch, start } from '../support/start.ts';

let home = '';
let wanted = '';
let faults = '';

beforeAll(async () => {
  home = newFolder();
  writeOrders(path.join(home, 'orders'), 40);
  const lines = Array.from({ length: 150 }, (_, i) => orderLine(1000 + i));
  fs.writeFileSync(path.join(home, 'orders', 'z.ndjson'), lines.join('\n'));
  const { code } = await start(args('whole.json', 'whole.csv'), { cwd: home });
  expect(code).toBe(3);
  wanted = read('whole.json');
  faults = read('whole.csv');
  expect((JSON.parse(wanted) as { results: unknown[] }).results).toHaveLength(204);
});
afterAll(() => {
  fs.rmSync(home, { recursive: true });
});

const read = (name: string): string => fs.readFileSync(path.join(home, name), 'utf8');
const args = (out: string, errors: string, ...more: string[]): string[] => [
  'backlog',
  'orders',
  '--format',
  'json',
  '--out',
  out,
  '--errors',
  errors,
  ...more,
];

/** Units that stand in a journal, each as often as it was finished. */
function finishedIn(journal: string): string[] {
  if (!fs.existsSync(path.join(home, journal))) return [];
  return [...read(journal).matchAll(/^[0-9a-f]{16} \["([^"]+)".*\n/gm)].map(([, id]) => id!);
}

function expectWhole(out: string, errors: string): void {
  expect(read(out)).toBe(wanted);
  expect(read(errors)).toBe(faults);
  const left = fs.readdirSync(home).filter((name) => name.includes(out) && name !== out);
  expect(left, 'nothing else is left').toEqual([]);
}

test('killed at 52 moments, also in the middle of a write: nothing is lost, nothing is done twice', async () => {
  const chance = seededRandom(2417);
  const random = (): number => chance.uniform();
  const draw = (most: number): number => 1 + Math.floor(random() * most);
  let kills = 0;
  for (let chain = 0; kills < 52; chain++) {
    const out = `killed-${chain}.json`;
    let done: string[] = [];
    // Later and later: each run has to get past what it takes from the one before.
    for (let most = 12; ; most += 4) {
      const script = path.join(home, 'killer.cjs');
      fs.writeFileSync(script, killer(draw(most), random() < 0.5));
      const how = { cwd: home, env: { NODE_OPTIONS: `--require ${script}` } };
      const jobs = kills % 10 === 9 ? ['--jobs', '2'] : ['--jobs', '1'];
      const { signal, code } = await start(args(out, 'killed.csv', '--resume', ...jobs), how);
      const now = finishedIn(`${out}.unfinished`);
      if (signal === null) {
        expect(code).toBe(3);
        break;
      }
      kills += 1;
      // Killed after the output was put in place: the journal may be gone, and the next run starts anew.
      if (!fs.existsSync(path.join(home, out))) expect(now.slice(0, done.length)).toEqual(done);
      expect(new Set(now).size, 'no unit is finished twice').toBe(now.length);
      done = now;
    }
    expectWhole(out, 'killed.csv');
  }
}, 600_000);

test('Ctrl-C keeps what is finished, says how to go on, and ends with 130', async () => {
  const piped = (out: string, ...more: string[]): string[] => args(out, 'stopped.csv', '-', ...more);
  await start(piped('piped.json'), { cwd: home, stdin: orderLine(1) });
  // The pipe stays open, so that the run cannot come to its end before it is stopped.
  const child = launch(piped('stopped.json', '--jobs', '1'), { cwd: home });
  let said = '';
  child.stderr.on('data', (part: Buffer) => {
    said += part.toString();
  });
  const ended = new Promise((resolve) => child.on('close', resolve));
  while (finishedIn('stopped.json.unfinished').length === 0) await new Promise((go) => setTimeout(go, 2));
  child.kill('SIGINT');
  expect(await ended).toBe(130);
  child.stdin.destroy();
  expect(said).toMatch(
    /stopped; \d+ orders are finished and kept in stopped\.json\.unfinished\nTo go on: the same command with --resume\.\n$/,
  );
  expect(fs.existsSync(path.join(home, 'stopped.json'))).toBe(false);
  const again = await start(piped('stopped.json', '--resume'), { cwd: home, stdin: orderLine(1) });
  expect(again.stderr).toMatch(/\d+ orders were taken from the run that was cut short\./);
  expect(read('stopped.json')).toBe(read('piped.json'));
}, 120_000);

test('Ctrl-C while nothing comes through the pipe ends at once', async () => {
  const child = launch(['backlog', '-', '--format', 'ndjson', '--out', 'pipe.ndjson'], { cwd: home });
  const ended = new Promise((resolve) => child.on('close', resolve));
  while (!fs.existsSync(path.join(home, 'pipe.ndjson.unfinished')))
    await new Promise((go) => setTimeout(go, 2));
  await new Promise((go) => setTimeout(go, 100));
  child.kill('SIGINT');
  expect(await ended).toBe(130);
  child.stdin.destroy();
}, 120_000);

test.each([0, 100, 9_000, 60_000])(
  'a disk full after %i bytes: said plainly, and gone on with',
  async (room) => {
    const script = path.join(home, 'full.cjs');
    fs.writeFileSync(script, fullDisk(room));
    const out = `full-${room}.json`;
    const how = { cwd: home, env: { NODE_OPTIONS: `--require ${script}` } };
    const { code, stderr } = await start(args(out, 'full.csv', '--jobs', '1', '--resume'), how);
    expect(code).toBe(3);
    expect(stderr).toMatch(
      /^(there is no .* starting anew\n)?cinchwright: cannot write full[^ ]*: the disk is full\n/,
    );
    if (room > 100) expect(stderr).toContain(`What is finished is kept in ${out}.unfinished.`);
    const kept = finishedIn(`${out}.unfinished`).length;
    if (room > 50_000) expect(kept).toBeGreaterThan(0);
    await start(args(out, 'full.csv', '--resume'), { cwd: home });
    expectWhole(out, 'full.csv');
  },
  120_000,
);
