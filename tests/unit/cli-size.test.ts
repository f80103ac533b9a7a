/** `size`: exit codes, options, where output goes. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { testFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const order = (name: string, rest = ''): string =>
  `order: ${name}\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8 }\n${rest}`;
const hopeless = 'order: none\nhorse: { heart-girth: 73 in, elbow-room: 1 in }\nsaddle: { rigging: full }\n';

interface Results {
  schema: string;
  results: { order: string; specs?: unknown[]; problems?: unknown[] }[];
}
const parsed = (text: string): Results => JSON.parse(text) as Results;

let cwd = '';
beforeEach(() => {
  cwd = testFolder();
  put('good.yaml', order('good'));
  put('bad.yaml', 'order: bad\nhorse: {}\n');
  put('hopeless.yaml', hopeless);
});
const put = (name: string, text: string): void => {
  fs.writeFileSync(path.join(cwd, name), text);
};
const got = (name: string): string => fs.readFileSync(path.join(cwd, name), 'utf8');

describe('exit codes', () => {
  test.each([
    ['all good', ['good.yaml'], 0],
    ['no spec', ['good.yaml', 'hopeless.yaml'], 1],
    ['an invalid order', ['bad.yaml', 'good.yaml'], 3],
    ['an invalid order and one without a spec: 3 wins', ['hopeless.yaml', 'bad.yaml'], 3],
    ['a missing file', ['good.yaml', 'gone.yaml'], 3],
    ['the same file twice', ['good.yaml', 'good.yaml'], 0],
  ])('%s', async (_, files, code) => {
    const ran = await run(['size', ...files, '--format', 'json'], { cwd });
    expect(ran.code).toBe(code);
    expect(parsed(ran.stdout).results).toHaveLength(files.length);
  });
});

test('results stand in the order of the files, failed ones among them', async () => {
  put('two.yaml', `${order('first')}---\n${order('second')}`);
  const ran = await run(['size', 'two.yaml', 'bad.yaml', 'good.yaml', '--format', 'json'], { cwd });
  expect(parsed(ran.stdout).results.map((result) => result.order)).toEqual([
    'first',
    'second',
    'bad',
    'good',
  ]);
  expect(ran.stderr).toContain('bad.yaml:');
});

describe('standard input', () => {
  test('is read when piped, and for "-", once', async () => {
    const piped = await run(['size', '--format', 'json'], { cwd, stdin: order('piped') });
    expect(parsed(piped.stdout).results.map((result) => result.order)).toEqual(['piped']);
    const named = await run(['size', '-', 'good.yaml', '-', '--format', 'json'], {
      cwd,
      stdin: order('piped'),
    });
    expect(parsed(named.stdout).results.map((result) => result.order)).toEqual(['piped', 'good', 'piped']);
  });
  test('is called by its name in messages', async () => {
    const ran = await run(['size'], { cwd, stdin: 'order: 1\n' });
    expect(ran.code).toBe(3);
    expect(ran.stderr).toMatch(/^standard input:1:1:/);
    expect(ran.stdout).toBe('');
  });
  test('is left alone when files are named', async () => {
    const stdin = (): Promise<Buffer> => Promise.reject(new Error('read'));
    expect((await run(['size', 'good.yaml'], { cwd, io: { stdin } })).code).toBe(0);
  });
});

describe('--out', () => {
  test('writes what would have been printed, without colors, and says so on standard error', async () => {
    const printed = await run(['size', 'good.yaml'], { cwd });
    const ran = await run(['size', 'good.yaml', '--out', 'size.txt'], { cwd, columns: 100 });
    expect(ran).toEqual({ code: 0, stdout: '', stderr: 'wrote size.txt\n' });
    expect(got('size.txt')).toBe(printed.stdout);
    expect(fs.readdirSync(cwd).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
  test('replaces an older file whole, keeps its mode, and writes through a link', async () => {
    put('old.json', `cinchwright${'x'.repeat(1_000_000)}`);
    fs.chmodSync(path.join(cwd, 'old.json'), 0o600);
    fs.symlinkSync('old.json', path.join(cwd, 'link.json'));
    await run(['size', 'good.yaml', '--format', 'json', '--out', 'link.json'], { cwd });
    expect(parsed(got('old.json')).results).toHaveLength(1);
    expect(fs.lstatSync(path.join(cwd, 'link.json')).isSymbolicLink()).toBe(true);
    expect(fs.statSync(path.join(cwd, 'old.json')).mode & 0o777).toBe(0o600);
  });
  test('never writes over what somebody else wrote, unless forced', async () => {
    put('mine.txt', 'a letter');
    const ran = await run(['size', 'good.yaml', '--out', 'mine.txt'], { cwd });
    expect(ran).toMatchObject({ code: 2, stdout: '' });
    expect(ran.stderr).toContain('mine.txt already exists, and cinchwright did not write it');
    expect(got('mine.txt')).toBe('a letter');
    await run(['size', 'good.yaml', '--out', 'mine.txt', '--force'], { cwd });
    await run(['size', 'good.yaml', '--out', 'mine.txt', '--units', 'cm'], { cwd });
    expect(got('mine.txt')).toContain(' cm ');
  });
  test('an ending that names no format is refused', async () => {
    const ran = await run(['size', 'good.yaml', '--out', 'x.docx'], { cwd });
    expect(ran.code).toBe(2);
    expect(fs.existsSync(path.join(cwd, 'x.docx'))).toBe(false);
  });
  test('never writes over what is read', async () => {
    put('shop.yaml', '');
    for (const out of ['./good.yaml', 'shop.yaml']) {
      const ran = await run(['size', 'good.yaml', '--shop', 'shop.yaml', '--out', out], { cwd });
      expect(ran.code).toBe(2);
    }
    expect(got('good.yaml')).toBe(order('good'));
  });
  test('is told to be kept, or not written, when no order could be read', async () => {
    put('old.txt', 'old cinchwright');
    const kept = await run(['size', 'bad.yaml', '--out', 'old.txt'], { cwd });
    expect(kept.code).toBe(3);
    expect(kept.stderr).toMatch(/\nnothing to write to old.txt: the old file was kept\n$/);
    expect(got('old.txt')).toBe('old cinchwright');
    const none = await run(['check', 'bad.yaml', '--out', 'new.txt'], { cwd });
    expect(none.stderr).toMatch(/\nnothing to write to new.txt\n$/);
    expect(fs.existsSync(path.join(cwd, 'new.txt'))).toBe(false);
    const unsaid = await run(['check', 'good.yaml', '--out', 'old.txt'], { cwd });
    expect(unsaid.stderr).toMatch(
      /^nothing to write to old.txt: the old file was kept\ncinchwright: nothing to/,
    );
    expect((await run(['size', 'bad.yaml'], { cwd })).stderr).not.toContain('nothing to write');
    const csv = await run(['size', 'bad.yaml', '--format', 'csv', '--out', 'old.txt'], { cwd });
    expect(csv.stderr).toContain('wrote old.txt');
    expect(got('old.txt')).toContain(',faulty,');
  });
  test('a write that fails leaves nothing behind', async () => {
    fs.mkdirSync(path.join(cwd, 'dir'));
    const ran = await run(['size', 'good.yaml', '--out', 'dir'], { cwd });
    expect(ran.code).toBe(3);
    expect(ran.stderr).toBe('cinchwright: cannot write dir: it is a directory\n');
    expect(fs.readdirSync(path.join(cwd, 'dir'))).toEqual([]);
  });
});

describe('--simulate', () => {
  const simulate = (...options: string[]): Promise<{ stdout: string; code: number; stderr: string }> =>
    run(['size', 'good.yaml', '--format', 'json', '--simulate=500', ...options], { cwd });
  test('gives the same numbers for the same seed, others for another', async () => {
    const [one, again, other] = [
      await simulate(),
      await simulate('--seed', '1'),
      await simulate('--seed', '2'),
    ];
    expect(one.stdout).toBe(again.stdout);
    expect(one.stdout).not.toBe(other.stdout);
  });
  test('without a number takes the usual one', async () => {
    const ran = await run(['size', 'good.yaml', '--top', '1', '--simulate'], { cwd });
    expect(ran.code).toBe(0);
    expect(ran.stdout).toMatch(/20[ ,]?000/);
  });
  test.each(['0', '99', '1e9', '-5', '10000000'])('refuses %s draws', async (draws) => {
    expect((await run(['size', 'good.yaml', `--simulate=${draws}`], { cwd })).code).toBe(2);
  });
});

test('a shop file replaces the built-in shop', async () => {
  fs.copyFileSync(new URL('../../examples/shop.yaml', import.meta.url), path.join(cwd, 'shop.yaml'));
  const own = await run(['size', 'good.yaml', '--shop', 'shop.yaml'], { cwd });
  expect(own).toEqual(await run(['size', 'good.yaml'], { cwd }));
  put('shop.yaml', got('shop.yaml').replace(/max: 31/, 'max: 15'));
  expect((await run(['size', 'good.yaml', '--shop', 'shop.yaml'], { cwd })).stdout).not.toBe(own.stdout);
});

test('a shop file without a name is told as a slip of the command line', async () => {
  const ran = await run(['size', 'good.yaml', '--shop', ''], { cwd });
  expect(ran).toEqual({
    code: 2,
    stdout: '',
    stderr:
      'cinchwright: --shop takes a file, and its name is empty\nCheck the quotes on the command line.\n',
  });
});

test('files with odd names', async () => {
  for (const name of ['with space.yaml', 'ümlaut.yaml', '-dash.yaml', 'line\nbreak.yaml']) {
    put(name, order('odd'));
    expect((await run(['size', '--', name], { cwd })).code).toBe(0);
  }
  const gone = await run(['size', 'evil\u001b[2J.yaml'], { cwd });
  expect(gone.stderr).toBe('cinchwright: cannot read evil\\u{1b}[2J.yaml: there is no such file\n');
});
