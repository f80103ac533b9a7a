/** `new` on a terminal; no typed text is lost. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { blankOrder } from '../../src/order/blank.ts';
import { ownFolder } from '../support/own-folder.ts';
import { hasTerminals, onTerminal, talk } from '../support/terminal.ts';
import { repoText, run } from '../support/run-cli.ts';

const cwd = ownFolder();
beforeEach(() => {
  for (const name of fs.readdirSync(cwd)) fs.rmSync(path.join(cwd, name));
});
const read = (name: string): string => fs.readFileSync(path.join(cwd, name), 'utf8');

const enter = (...lines: string[]): string => lines.map((line) => `${line}\r`).join('');
const needed = ['2501', 'Jo', 'Wren', '15.2 hh stock', '73 in', '7/8 in-skirt'];
const rest = Array<string>(10).fill('');

describe('an order that is asked for', () => {
  test('is written, and answered as size answers the file', async () => {
    const ran = await talk(['new', '2501.yaml'], enter(...needed, ...rest), { cwd });
    const sized = await run(['size', '2501.yaml'], { cwd });
    expect(ran).toMatchObject({ code: 0, stderr: 'wrote 2501.yaml\n\n' });
    expect(ran.stdout.endsWith(sized.stdout)).toBe(true);
    expect(sized.stdout).toContain('2501 Wren, Jo: DO NOT CUT');
    expect(read('2501.yaml')).toContain('customer: { name: Jo }\n#taken:');
  });

  test('shows the answer so far under each question, as soon as it can be had', async () => {
    const { drawn, code } = await talk(
      ['new', 'o.yaml'],
      enter(...needed, '', '', 'galled', '', '44 in', '', '', '25', ''),
      { cwd },
    );
    const parts = drawn.split('So far:').map((part) => part.replaceAll(/\s+/g, ' '));
    expect(code).toBe(130);
    expect(parts[0]).toContain('Where does the rigging hang');
    expect(parts[1]).toMatch(/^ a straight, \d+ strands, \d out of \d+ \(\d\d%\)\. DO NOT CUT/);
    expect(parts.at(-1)).toMatch(
      /^ GALLED AT THE ELBOW\. Once healed, a straight, .* 25 strands, as asked: ruled out\./,
    );
    expect(parts.at(-1)).not.toContain('DO NOT CUT');
  });

  test.each([60, 80, 0])('fits a terminal of %i columns', async (columns) => {
    const ran = await talk(['new', 'o.yaml'], enter(...needed, ...rest), { cwd, columns });
    const lines = ran.drawn.split(/[\r\n]+/);
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(columns || 80);
  });

  test('is asked again where an answer is not understood', async () => {
    const ran = await talk(['new', 'o.yaml'], enter('1', '', '', '15.2 hh stok'), { cwd });
    expect(ran.drawn.replaceAll(/\s+/g, ' ')).toContain(
      'stok: expected a word of an order, such as 15.2 hh, 7/8, round, trail. Did you mean "stock"?',
    );
    expect(ran.code).toBe(130);
  });

  test('is judged by the shop of the run', async () => {
    const args = ['--shop', path.resolve('examples/shop.yaml'), '--no-color'];
    const ran = await talk(['new', 'o.yaml', ...args], enter(...needed, ...rest), { cwd });
    expect(ran.stdout.endsWith((await run(['size', 'o.yaml', ...args], { cwd })).stdout)).toBe(true);
    expect(await talk(['new', 'p.yaml', '--shop', 'none.yaml'], '', { cwd })).toMatchObject({
      code: 3,
      drawn: '',
    });
  });

  test('without what is needed is written, and says what is missing', async () => {
    const ran = await talk(['new', 'o.yaml'], enter('1', ...Array<string>(15).fill('')), { cwd });
    expect(ran).toMatchObject({ code: 3 });
    expect(ran.stderr).toMatch(/^wrote o\.yaml\n[^]*horse\.height\n[^]*saddle\.rigging\n/);
  });
});

describe('whoever stops', () => {
  test.each([
    ['Ctrl-C', '\u0003'],
    ['Ctrl-D', '\u0004'],
    ['the end of the terminal', ''],
  ])('by %s finds the answers and the half-typed one in the file', async (_, key) => {
    const ran = await talk(['new', 'o.yaml'], `${enter('7', 'Jo', 'Wren')}15.2 h${key}`, { cwd });
    expect(ran).toMatchObject({
      code: 130,
      stderr: 'saved in o.yaml: fill in the rest, then run: cinchwright size o.yaml\n',
    });
    expect(read('o.yaml')).toMatch(
      /^order: 7 #[^]*name: Jo[^]*  height: # such[^]*## Typed last, not understood: 15\.2 h\n$/m,
    );
    expect(fs.readdirSync(cwd)).toEqual(['o.yaml']);
  });

  test('before anything was said leaves no file', async () => {
    const ran = await talk(['new', 'o.yaml'], '\r\u0003', { cwd });
    expect(ran).toMatchObject({ code: 130, stderr: 'no answers, so nothing was written\n' });
    expect(fs.readdirSync(cwd)).toEqual([]);
  });

  test('sees the answers where the file can no longer be written', async () => {
    const replaceFile = (): never => {
      throw Object.assign(new Error('full'), { code: 'ENOSPC', syscall: 'write' });
    };
    const ran = await talk(['new', 'o.yaml'], `${enter('7', 'Jo')}\u0003`, { cwd, io: { replaceFile } });
    expect(ran).toMatchObject({ code: 3, stderr: 'cinchwright: cannot write o.yaml: the disk is full\n' });
    expect(ran.stdout).toContain('customer: { name: Jo }');
  });

  test('by Escape does not', async () => {
    const ran = await talk(['new', 'o.yaml'], enter('7', 'J\u001b[D\u001b[Co', '') + '\u001b', { cwd });
    expect(read('o.yaml')).toContain('customer: { name: Jo }');
    expect(ran.drawn).toContain('How tall');
  });
});

describe('nobody is asked', () => {
  test.each<[string, string[], object]>([
    ['for a blank order', ['--blank'], {}],
    ['where the terminal cannot draw', [], { env: { TERM: 'dumb' } }],
    ['where something is piped in', [], { stdin: '' }],
    ['where the output goes elsewhere', [], { io: { stdoutIsTerminal: false } }],
  ])('%s', async (_, args, machine) => {
    const ran = await talk(['new', 'o.yaml', ...args], '', { cwd, ...machine });
    expect(ran).toMatchObject({ code: 0, stdout: '', drawn: '' });
    expect(read('o.yaml')).toBe(blankOrder());
  });

  test('where a file stands already, or no folder is', async () => {
    fs.writeFileSync(path.join(cwd, 'o.yaml'), 'order: 1\n');
    expect(await talk(['new', 'o.yaml'], enter('7'), { cwd })).toMatchObject({
      code: 2,
      stdout: '',
      drawn: '',
    });
    expect(await talk(['new', 'no/o.yaml'], enter('7'), { cwd })).toMatchObject({
      code: 3,
      stdout: '',
      drawn: '',
    });
    expect(read('o.yaml')).toBe('order: 1\n');
    await talk(['new', 'o.yaml', '--force'], `${enter('7')}\u0003`, { cwd });
    expect(read('o.yaml')).toMatch(/^order: 7 #/m);
  });
});

const hostile = [
  '\u001b[31mred',
  '\u001b]0;title\u0007x',
  'a\u202eb',
  'a\u0000b',
  '\u009b31mred',
  'a\u2066b',
];

test.each(hostile)('hostile text %j is shown and never obeyed', async (text) => {
  const ran = await talk(['new', 'o.yaml'], `${enter('7')}${text}\r\u0003`, { cwd });
  expect(ran.code).toBe(130);
  const lines = ran.drawn.replaceAll(/[\r\n]/g, '');
  expect(lines).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/u);
});

test('the talk in the guide is a true one', async () => {
  const guide = repoText('docs/guide.md');
  const shown = /```text\n(Ribs[^]*?)```/.exec(guide)?.[1]?.trimEnd().split('\n') ?? [];
  const typed = shown.filter((line) => line.startsWith('>')).map((line) => line.slice(2));
  expect(typed.length).toBeGreaterThan(2);
  // What was not understood is wiped out first.
  const keys = enter('', '', '', '15.2 hh stock', '73 in', '7/8 flat plate', ...typed).replace(
    '\rround',
    '\r\u0015round',
  );
  const { drawn } = await talk(['new', '2501.yaml'], keys + '\u0003', { cwd });
  const lines = new Set(drawn.split(/[\r\n]+/).map((line) => line.trimEnd()));
  expect(shown.filter((line) => !lines.has(line))).toEqual([]);
});

test.runIf(hasTerminals)('on a real terminal', async () => {
  const keys: [string, string][] = [
    ['Order number?', '\r'],
    ["Customer's name?", 'Jö\u007f\u007fJo\r'],
    ["Horse's name?", 'Wren\r'],
    ['How tall', '15.4 hh\r'],
    ['after 15.3 comes', '15.2 hh stock\r'],
    ['Heart girth', '\r'],
    ['Where does the rigging', '7/8\r'],
    ['So far: a straight', 'rou\u0003'],
  ];
  const { code, drawn } = await onTerminal(['new', '2501.yaml'], { keys, cwd, columns: 60 });
  expect(drawn).toContain('saved in 2501.yaml: fill in the rest, then run: cinchwright size 2501.yaml');
  expect(code).toBe(130);
  expect(read('2501.yaml')).toMatch(
    /^order: 2501 #[^]*name: Jo [^]*height: 15\.2 hh #[^]*not understood: rou\n$/m,
  );
});
