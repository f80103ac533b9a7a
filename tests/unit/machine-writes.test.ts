/** Every writing command at every refused step: the old file stays whole. */
import fs from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { long } from '../support/cases.ts';
import { orderText } from '../support/backlogs.ts';
import { testFolder } from '../support/own-folder.ts';
import { repo, run } from '../support/run-cli.ts';

const photo = path.join(repo, 'examples/orders/photos/juniper-side.jpg');
const outcomes = path.join(repo, 'examples/outcomes.csv');

/** Each writes "out". */
const commands = [
  'size 1.yaml --out out.txt',
  'size 1.yaml --format html --out out.html',
  'size --say 15.2hh,7/8 --save out.yaml',
  'check 1.yaml --strands 17 --out out.json',
  'ask 1.yaml --draws 8 --format text --out out.txt',
  'quote 1.yaml --format pdf --out out.pdf',
  'ticket 1.yaml --out out.md',
  'materials 1.yaml --out out.csv',
  'schedule 1.yaml --out out.csv',
  'backlog 1.yaml --out out.csv',
  'backlog 1.yaml bad.yaml --errors out.csv',
  'draw 1.yaml --out out.svg',
  'draw 1.yaml --format png --out-dir out',
  'draw 1.yaml --template --out out.pdf',
  `photo --pick ${photo} --out out.html`,
  `learn ${outcomes} --out out.json`,
  `learn ${outcomes} --picture out.svg`,
  'new out.yaml',
];

const steps = [
  ['openSync', 'EROFS', 'the disk is read-only'],
  ['writeSync', 'ENOSPC', 'the disk is full'],
  ['fsyncSync', 'EIO', 'the disk reports an error'],
  ['renameSync', 'EACCES', 'not allowed'],
] as const;

let cwd = '';
beforeEach(() => {
  cwd = testFolder();
  fs.writeFileSync(path.join(cwd, '1.yaml'), orderText(1));
  fs.writeFileSync(path.join(cwd, 'bad.yaml'), 'order: 2\n');
});
afterEach(() => {
  vi.restoreAllMocks();
});

const standing = (): Record<string, string> =>
  Object.fromEntries(
    fs
      .readdirSync(cwd, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => path.join(entry.parentPath, entry.name))
      .map((file) => [path.relative(cwd, file), fs.readFileSync(file, 'latin1')]),
  );

/** Makes a step of writing fail, none of reading. */
function refuse(step: (typeof steps)[number][0], code: string): void {
  const real = fs[step] as (...args: unknown[]) => unknown;
  vi.spyOn(fs, step as 'openSync').mockImplementation(((...args: unknown[]) => {
    if (step === 'openSync' && !/^w/.test(String(args[1]))) return real(...args);
    throw Object.assign(new Error('made up'), { code, syscall: step });
  }) as never);
}

test('many files of one run', async () => {
  const many = Array.from({ length: 12 }, (_, i) => `---\n${orderText(i)}`).join('');
  fs.writeFileSync(path.join(cwd, 'many.yaml'), many);
  const warned = vi.spyOn(process, 'emitWarning');
  expect((await run(['draw', 'many.yaml', '--out-dir', 'out'], { cwd })).code).toBe(0);
  expect(fs.readdirSync(path.join(cwd, 'out')).length).toBeGreaterThan(11);
  expect(warned).not.toHaveBeenCalled();
});

/** All commands share one function: one refusal each at the gate, all with `long`. */
const refusals = commands.map((line, i) => ({ line, some: long ? steps : [steps[i % steps.length]!] }));

describe.each(refusals)('$line', ({ line, some }) => {
  const args = line.split(' ');
  test('writes a whole file and nothing beside it', async () => {
    const { code, stderr } = await run(args, { cwd });
    expect([0, 1, 3], stderr).toContain(code);
    const written = Object.entries(standing()).filter(([name]) => !/^(1|bad)\.yaml$/.test(name));
    expect(written.length, stderr).toBeGreaterThan(0);
    for (const [name, content] of written) {
      expect(name).toMatch(/^out/);
      expect(content).not.toBe('');
    }
  });
  test.each(some)('%s fails with %s', async (step, code, words) => {
    const before = standing();
    refuse(step, code);
    const ran = await run(args, { cwd });
    vi.restoreAllMocks();
    expect(ran.code).toBe(3);
    expect(ran.stderr.split('\n').at(-2)).toMatch(new RegExp(`^cinchwright: cannot write out.*: ${words}$`));
    expect(standing()).toEqual(before);
  });
});
