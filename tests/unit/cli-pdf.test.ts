/** `--format pdf`: places, refusals, the installed program. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ownFolder } from '../support/own-folder.ts';
import { readPdf } from '../support/read-pdf.ts';
import { run } from '../support/run-cli.ts';
import { start } from '../support/start.ts';

const order =
  'order: 7\ncustomer: { name: Li \u674e }\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8, ring-to-ring: 44 in }\n';
const asked = ['quote', '--date', '2026-11-20', '--format', 'pdf'];
const dir = ownFolder();

test('goes to standard output as bytes where that is no terminal', async () => {
  const { code, stdout, bytes, stderr } = await run(asked, { stdin: order });
  expect({ code, stdout }).toEqual({ code: 0, stdout: '' });
  expect((await readPdf(bytes)).info['Title']).toBe('Quote 7 for Li □: a mohair cinch');
  expect(stderr).toBe(
    'cinchwright: the fonts of the PDF lack these letters and print an empty square for each: \u674e\n',
  );
});

test('is refused on a terminal, with or without --out -', async () => {
  for (const more of [[], ['--out', '-']]) {
    const { code, bytes, stderr } = await run([...asked, ...more], { stdin: order, columns: 80 });
    expect({ code, length: bytes.length }).toEqual({ code: 2, length: 0 });
    expect(stderr).toMatch(/name a file with --out/);
  }
});

test('replaces the file of --out whole, and leaves nothing beside it', async () => {
  fs.writeFileSync(path.join(dir, 'q.pdf'), 'cinchwright');
  const { code, stderr } = await run([...asked, '--paper', 'a4', '--out', 'q.pdf'], {
    stdin: order,
    cwd: dir,
  });
  expect(code).toBe(0);
  expect(stderr).toMatch(/^wrote q\.pdf\n/);
  const [page] = (await readPdf(fs.readFileSync(path.join(dir, 'q.pdf')))).pages;
  expect(page?.height).toBeGreaterThan(841);
  expect(fs.readdirSync(dir)).toEqual(['q.pdf']);
});

test('an order that cannot be read leaves the old file', async () => {
  fs.writeFileSync(path.join(dir, 'kept.pdf'), 'cinchwright');
  const { code } = await run([...asked, '--out', 'kept.pdf'], { stdin: 'order: [', cwd: dir });
  expect(code).toBe(3);
  expect(fs.readFileSync(path.join(dir, 'kept.pdf'), 'utf8')).toBe('cinchwright');
});

test('the installed program makes the same bytes from its own bundle, wherever it is started', async () => {
  const file = path.join(dir, 'installed.pdf');
  const [built, inProcess] = await Promise.all([
    start([...asked, '--out', file], { stdin: order, cwd: os.tmpdir() }),
    run(asked, { stdin: order }),
  ]);
  expect([built.code, built.stdout]).toEqual([0, '']);
  expect(Buffer.compare(fs.readFileSync(file), inProcess.bytes)).toBe(0);
});
