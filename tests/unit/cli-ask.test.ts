/** `ask`: exit codes, recipients, and no customer learns of another. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { shortCaution } from '../../src/numbers/cautions.ts';
import { long } from '../support/cases.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const cwd = ownFolder();
const order = (number: string, customer: string): string =>
  `order: ${number}\ncustomer: ${customer}\nhorse: { name: Horse ${number}, heart-girth: 72 in }\nsaddle: { rigging: 7/8 }\n`;
const save = (name: string, text: string): void => {
  fs.writeFileSync(path.join(cwd, name), text);
};
const ask = (...args: string[]) => run(['ask', ...args, '--draws', '8'], { cwd });

beforeAll(() => {
  save('a.yaml', order('1', '{ name: Jo Marsh, phone: 555 0101 }'));
  save('b.yaml', order('2', '{ name: Jo Marsh, phone: 555 0102 }'));
  save('c.yaml', order('3', '{ name: jo marsh, phone: 555 0101 }'));
  save('bad.yaml', 'order: 4\n');
  save(
    'none.yaml',
    'order: 5\nhorse: { heart-girth: 72 in, elbow-room: 1.5 in, barrel: average }\nsaddle: { rigging: { set-back: 0 in }, ring-to-ring: 44 in }\n',
  );
});

test('on a terminal a progress line shows, and is cleared before the answer', async () => {
  let now = 0;
  vi.spyOn(Date, 'now').mockImplementation(() => (now += 300));
  const { stdout, stderr } = await run(['ask', 'a.yaml', 'b.yaml', 'c.yaml', '--draws', '8'], {
    cwd,
    columns: 80,
  });
  vi.restoreAllMocks();
  expect(stderr).toMatch(/^\r0 orders, 0%.*\r1 orders, 33%.*\r2 orders, 66%, [^\r]*\r\u001b\[K$/s);
  expect(stdout).toContain('Horse 3');
  expect((await ask('a.yaml', 'b.yaml')).stderr).toBe('');
});

test('orders of one name, phone and mail share a message; those of another phone do not', async () => {
  const { stdout, code } = await ask('a.yaml', 'b.yaml', 'c.yaml', '--format', 'text');
  const messages = stdout.split('='.repeat(72));
  expect(messages).toHaveLength(2);
  const [together] = messages.filter((text) => text.includes('Horse 1'));
  expect(together).toContain('Horse 3');
  expect(together).not.toContain('Horse 2');
  expect(code).toBe(0);
});

test.each(long ? ['table', 'text', 'markdown', 'csv'] : ['text', 'csv'])(
  '%s: the order of the files changes nothing',
  async (format) => {
    const one = await ask('a.yaml', 'b.yaml', 'c.yaml', '--format', format);
    const other = await ask('c.yaml', 'b.yaml', 'a.yaml', '--format', format);
    expect(other.stdout).toBe(one.stdout);
  },
);

test('every long message carries the cautions, every short one the short caution; the shop signs both', async () => {
  for (const format of ['text', 'markdown']) {
    const short = (await ask('b.yaml', '--format', format)).stdout.replace(/\s+/g, ' ').trim();
    expect(short).toContain(shortCaution);
    expect(short).toMatch(/never reach under.*Cottonwood Lane Cinches \(invented\)$/);
    const { stdout } = await ask('b.yaml', '--long', '--format', format);
    const flat = stdout.replace(/\s+/g, ' ');
    expect(flat).toContain('not a saddle fitting and not veterinary advice');
    expect(flat).toContain('never kneel, sit or crawl beside or under a horse');
    expect(flat.trim()).toMatch(/With thanks, Cottonwood Lane Cinches \(invented\)$/);
  }
});

describe('exit codes', () => {
  test('a faulty file, and the others still done', async () => {
    const { code, stdout, stderr } = await ask('a.yaml', 'bad.yaml');
    expect(code).toBe(3);
    expect(stdout).toMatch(/^1 Horse 1, Jo Marsh: /);
    expect(stderr).toContain('bad.yaml:1:1');
  });
  test('nothing passes, and nothing is left to ask', async () => {
    const { code, stdout } = await ask('none.yaml');
    expect(code).toBe(1);
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/only 1 1\/2 in behind the elbow.*no cinch we tie passes/);
    expect(stdout).toContain('Nothing left to ask');
  });
  test('a file of its own, written whole', async () => {
    const { code, stdout, stderr } = await ask('b.yaml', '--format', 'markdown', '--out', 'letter.md');
    expect([code, stdout, stderr]).toEqual([0, '', 'wrote letter.md\n']);
    expect(fs.readFileSync(path.join(cwd, 'letter.md'), 'utf8')).toMatch(/^Hi Jo Marsh,\n/);
  });
});
