/** --out replaces only our own files; its ending names the format. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, test } from 'vitest';
import { testFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const order = (name: string): string =>
  `order: ${name}\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8, ring-to-ring: 44 in }\n`;
const line = '{"order":"n1","horse":{"heart-girth":"73 in"},"saddle":{"rigging":"7/8"}}\n';

let cwd = '';
const put = (name: string, text: string): void => {
  fs.mkdirSync(path.dirname(path.join(cwd, name)), { recursive: true });
  fs.writeFileSync(path.join(cwd, name), text);
};
const got = (name: string): string => fs.readFileSync(path.join(cwd, name), 'utf8');
const type = (...args: string[]) => run(args, { cwd });

beforeEach(() => {
  cwd = testFolder();
  put('orders/1.yaml', order('1'));
  put('orders/2.yaml', order('2'));
  put('orders/3.ndjson', line);
});

describe('an order is not written over', () => {
  test.each([
    ['backlog of its folder', ['backlog', 'orders', '--out', 'orders/2.yaml']],
    ['faults of its folder', ['backlog', 'orders', '--errors', 'orders/2.yaml']],
    ['lines of JSON', ['backlog', 'orders', '--format', 'csv', '--out', 'orders/3.ndjson']],
    ['a quote on another', ['quote', 'orders/1.yaml', '--out', 'orders/2.yaml']],
    ['a quote beside a backlog', ['quote', 'orders/1.yaml', '--backlog', 'orders', '--out', 'orders/2.yaml']],
    ['the size of another', ['size', 'orders/1.yaml', '--out', 'orders/2.yaml']],
  ])('%s', async (_, args) => {
    const { code, stderr } = await type(...args);
    expect(code).toBe(2);
    expect(stderr).toContain('which holds an order or a shop');
    expect([got('orders/1.yaml'), got('orders/2.yaml'), got('orders/3.ndjson')]).toEqual([
      order('1'),
      order('2'),
      line,
    ]);
  });

  test('through a link neither', async () => {
    fs.symlinkSync(path.join(cwd, 'orders/2.yaml'), path.join(cwd, 'link.yaml'));
    expect((await type('backlog', 'orders', '--out', 'link.yaml')).code).toBe(2);
    expect(got('orders/2.yaml')).toBe(order('2'));
  });

  test('but our own output before is', async () => {
    for (const name of ['orders/all.json', 'orders/all.ndjson', 'size.json']) {
      const args = name.startsWith('size') ? ['size', 'orders/1.yaml'] : ['backlog', 'orders'];
      expect((await type(...args, '--out', name)).code).toBe(0);
      const before = got(name);
      expect((await type(...args, '--out', name)).code).toBe(0);
      expect(got(name)).toBe(before);
      fs.rmSync(path.join(cwd, name));
    }
  });
});

test('a folder typed wrong does not replace a good table', async () => {
  put('good.csv', 'order,kept\n');
  const { code, stderr } = await type('backlog', 'ordres', '--format', 'csv', '--out', 'good.csv');
  expect([code, got('good.csv')]).toEqual([3, 'order,kept\n']);
  expect(stderr).toContain('ordres: there is no such file or folder');
  expect(stderr).toContain('the old file was kept');
});

describe('the ending of --out', () => {
  test('names the format', async () => {
    await type('size', 'orders/1.yaml', '--out', 'a.json');
    await type('backlog', 'orders', '--out', 'a.csv');
    await type('ticket', 'orders/1.yaml', '--out', 'a.html');
    expect(JSON.parse(got('a.json'))).toHaveProperty('schema');
    expect(got('a.csv')).toMatch(/^order,customer,/);
    expect(got('a.html')).toMatch(/^<!doctype html>/);
  });
  test('gives way to --format', async () => {
    await type('size', 'orders/1.yaml', '--format', 'csv', '--out', 'a.json');
    expect(got('a.json')).toMatch(/^order,file,/);
  });
  test('of a format the command does not have is refused', async () => {
    const { code, stderr } = await type('size', 'orders/1.yaml', '--out', 'a.svg');
    expect([code, fs.existsSync(path.join(cwd, 'a.svg'))]).toEqual([2, false]);
    expect(stderr).toContain('size cannot print svg');
  });
});
