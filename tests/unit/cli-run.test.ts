/** The whole command line: screen, colors, unforeseen errors. */
import { describe, expect, test } from 'vitest';
import { commandNames } from '../../src/cli/program.ts';
import { widthFor } from '../../src/cli/screen.ts';
import { version } from '../../src/cli/version.ts';
import { run, type Machine } from '../support/run-cli.ts';

const order = 'order: 7\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8 }\n';
const escape = '\u001b[';

test.each(commandNames)('the help of %s fits a screen', async (name) => {
  const { stdout } = await run([name, '--help']);
  const lines = stdout.trimEnd().split('\n');
  expect(lines.filter((line) => line.length > 80)).toEqual([]);
  expect(lines.length).toBeLessThanOrEqual(name === 'draw' ? 30 : 25);
});

describe('colors', () => {
  test.each<[string, string[], Machine, boolean]>([
    ['a terminal', [], { columns: 80 }, true],
    ['a pipe', [], {}, false],
    ['--no-color', ['--no-color'], { columns: 80, env: { FORCE_COLOR: '1' } }, false],
    ['NO_COLOR', [], { columns: 80, env: { NO_COLOR: '1' } }, false],
    ['NO_COLOR set to nothing', [], { columns: 80, env: { NO_COLOR: '' } }, true],
    ['FORCE_COLOR in a pipe', [], { env: { FORCE_COLOR: '1' } }, true],
    ['FORCE_COLOR=0', [], { columns: 80, env: { FORCE_COLOR: '0' } }, false],
    ['FORCE_COLOR and NO_COLOR', [], { env: { FORCE_COLOR: '1', NO_COLOR: '1' } }, true],
    ['a dumb terminal', [], { columns: 80, env: { TERM: 'dumb' } }, false],
  ])('%s', async (...[, options, machine, colored]) => {
    const ran = await run(['size', ...options], { ...machine, stdin: order });
    expect(ran.stdout.includes(escape)).toBe(colored);
  });
  test('--no-color may stand before the command', async () => {
    const ran = await run(['--no-color', 'size'], { columns: 80, stdin: order });
    expect(ran.stdout).not.toContain(escape);
  });
  test('problems are colored by what standard error is', async () => {
    const io = { stderrIsTerminal: false };
    const ran = await run(['size'], { columns: 80, stdin: 'order: 1\n', io });
    expect(ran.stderr).not.toContain(escape);
  });
});

describe('width', () => {
  test.each([
    [undefined, 80],
    [0, 80],
    [20, 60],
    [72, 72],
    [300, 100],
  ])('%s columns give %i', (columns, width) => {
    expect(widthFor({ stdoutIsTerminal: true, columns })).toBe(width);
    expect(widthFor({ stdoutIsTerminal: false, columns })).toBe(80);
  });
  test('is kept on the screen', async () => {
    const ran = await run(['size', '--no-color'], { stdin: order, columns: 64 });
    expect(Math.max(...ran.stdout.split('\n').map((line) => line.length))).toBeLessThanOrEqual(64);
  });
});

describe('what goes wrong', () => {
  test('inside the program is one line that asks for a report', async () => {
    const stdin = (): Promise<Buffer> => Promise.reject(new TypeError('x is not\na function'));
    const ran = await run(['size'], { stdin: '', io: { stdin } });
    expect(ran.code).toBe(3);
    expect(ran.stderr).toBe(
      'cinchwright: this is a bug in cinchwright (x is not\\u{a}a function); ' +
        `please report it, with the order file and the version: ${version}\n`,
    );
  });
  test('with standard error closed still gives the code', async () => {
    const stderr = (): void => {
      throw new Error('closed');
    };
    expect((await run(['nonsense'], { io: { stderr } })).code).toBe(2);
  });
  test('with a full disk behind standard output says so', async () => {
    const stdout = (): void => {
      throw Object.assign(new Error('no space'), { code: 'ENOSPC', syscall: 'write' });
    };
    const ran = await run(['size'], { stdin: order, io: { stdout } });
    expect(ran).toMatchObject({ code: 3, stderr: 'cinchwright: cannot go on: the disk is full\n' });
  });
  test.each([
    [['size', '--top', '-3'], '--top takes a whole number from 1 to 999, not "-3"'],
    [['rules', 'a', 'b'], 'too many arguments for "rules"'],
    [['size', '-top', '3'], 'unknown option "-top"\nOptions of more than one letter take two dashes: --top'],
    [['--help-me'], 'unknown option "--help-me"'],
    [['schema', 'Order'], 'schema takes order or shop, not "Order"'],
  ])('%j', async (args, message) => {
    const ran = await run(args);
    expect(ran.code).toBe(2);
    expect(ran.stdout).toBe('');
    expect(ran.stderr).toContain(`cinchwright: ${message}`);
  });
});

test('whoever types an order is told how to end it', async () => {
  const ran = await run(['size', '-']);
  expect(ran.stderr).toMatch(/^type the order, then Ctrl-D on a line of its own\nstandard input:1:1:/);
});

test('help and version only print', async () => {
  const never = (): never => {
    throw new Error('asked');
  };
  const io = { stdin: never, readFile: never, replaceFile: never };
  for (const args of [['--help'], ['size', '--help'], ['help', 'new'], ['--version'], ['size', '-v']]) {
    expect(await run(args, { io })).toMatchObject({ code: 0, stderr: '' });
  }
});
