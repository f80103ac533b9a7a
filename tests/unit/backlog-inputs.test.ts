/** What `backlog` reads, and what it refuses. */
import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { piecesOf } from '../../src/cli/backlog/pieces.ts';
import { orderLine, orderText } from '../support/backlogs.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const home = ownFolder();

type Row = Record<string, string | number | null>;

async function rowsOf(
  args: readonly string[],
  stdin?: string | Buffer,
): Promise<{ rows: Row[]; code: number; stderr: string }> {
  const ran = await run(['backlog', ...args, '--format', 'ndjson'], {
    cwd: home,
    ...(stdin === undefined ? {} : { stdin }),
  });
  const rows = ran.stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Row);
  return { rows, code: ran.code, stderr: ran.stderr };
}

function put(name: string, text: string | Buffer): void {
  fs.mkdirSync(path.dirname(path.join(home, name)), { recursive: true });
  fs.writeFileSync(path.join(home, name), text);
}

const column = (rows: readonly Row[], name: string): unknown[] => rows.map((row) => row[name]);

test('folders are walked by name, byte by byte; links in a circle end; other files and hidden ones are left out', async () => {
  const names = [
    'walk/B.yaml',
    'walk/a.yml',
    'walk/b/1.json',
    'walk/b/2.YAML',
    'walk/é.yaml',
    'walk/😀.yaml',
    'walk/Z.jsonl',
  ];
  names.forEach((name, i) => {
    put(
      name,
      name.endsWith('l') && !/ya?ml$/i.test(name)
        ? `${orderLine(i)}\n`
        : name.endsWith('json')
          ? orderLine(i)
          : orderText(i),
    );
  });
  put('walk/notes.txt', 'no order');
  put('walk/.hidden.yaml', 'no order');
  put('walk/.git/x.yaml', 'no order');
  fs.symlinkSync('..', path.join(home, 'walk', 'b', 'up'));
  fs.symlinkSync('self', path.join(home, 'walk', 'self'));
  const { rows, code } = await rowsOf(['walk']);
  expect(column(rows, 'file')).toEqual([
    'walk/B.yaml',
    'walk/Z.jsonl',
    'walk/a.yml',
    'walk/b/1.json',
    'walk/b/2.YAML',
    'walk/é.yaml',
    'walk/😀.yaml',
  ]);
  expect(code).toBe(0);
});

test('files, folders, patterns and the pipe come in the order in which they were named', async () => {
  put('mixed/x/1.yaml', orderText(1));
  put('mixed/x/2.yaml', orderText(2));
  put('mixed/3.yaml', orderText(3));
  const { rows } = await rowsOf(['mixed/3.yaml', '-', 'mixed/x', 'mixed/**/[12].yaml'], orderText(4));
  expect(column(rows, 'order')).toEqual(['N-3', 'N-4', 'N-1', 'N-2', 'N-1', 'N-2']);
  expect(column(rows, 'sameNumberAs')).toEqual([
    null,
    null,
    null,
    null,
    'mixed/x/1.yaml:1',
    'mixed/x/2.yaml:1',
  ]);
});

test.each([
  ['nowhere.yaml', 'there is no such file'],
  ['no-*.yaml', 'no file matches'],
  ['bare', 'there are no order files in it'],
])('%s costs its own row only', async (name, why) => {
  fs.mkdirSync(path.join(home, 'bare'), { recursive: true });
  put('good.yaml', orderText(1));
  const { rows, code, stderr } = await rowsOf([name, 'good.yaml']);
  expect(column(rows, 'verdict')).toEqual(['faulty', 'sized']);
  expect(rows[0]!['problem']).toContain(why);
  expect([code, stderr]).toEqual([
    3,
    '2 orders: 1 sized, 0 tight, 0 no fit, 1 with errors.\nDo not cut until ring to ring is taped: 1 order. See the column lengthBasis.\nAll errors in one table: --errors FILE.\n',
  ]);
});

test('a folder that cannot be read costs only its own row, named or inside another', async () => {
  put('shut/1.yaml', orderText(2));
  put('good.yaml', orderText(1));
  const real = fs.readdirSync;
  const spy = vi.spyOn(fs, 'readdirSync').mockImplementation(((folder: string) => {
    // Refused by hand: root may read everything.
    if (folder === path.join(home, 'shut'))
      throw Object.assign(new Error('EACCES'), { code: 'EACCES', syscall: 'scandir' });
    return real(folder);
  }) as unknown as typeof fs.readdirSync);
  const { rows, code } = await rowsOf(['shut', 'good.yaml']);
  spy.mockRestore();
  expect(column(rows, 'verdict')).toEqual(['faulty', 'sized']);
  expect(rows[0]!['problem']).toContain('the folder cannot be read: not allowed');
  expect(code).toBe(3);
});

test('a run does not read what it writes, even inside the folder', async () => {
  put('own/1.yaml', orderText(1));
  put('own/out.json', 'from cinchwright before');
  const ran = await run(['backlog', 'own', '--format', 'json', '--out', 'own/out.json'], { cwd: home });
  expect(ran.code).toBe(0);
  expect(ran.stderr).toBe(
    'wrote own/out.json\n1 order: 1 sized, 0 tight, 0 no fit, 0 with errors.\nDo not cut until ring to ring is taped: 1 order. See the column lengthBasis.\n',
  );
});

test('a pattern does not match what the run writes', async () => {
  put('star/1.yaml', orderText(1));
  const ran = await run(['backlog', 'star/*', '--out', 'star/out.csv'], { cwd: home });
  expect([ran.code, ran.stderr]).toEqual([
    0,
    'wrote star/out.csv\n1 order: 1 sized, 0 tight, 0 no fit, 0 with errors.\nDo not cut until ring to ring is taped: 1 order. See the column lengthBasis.\n',
  ]);
});

describe('a long stream', () => {
  const many = 100;
  const yaml = Array.from({ length: many }, (_, i) =>
    i === 80
      ? 'order: bad\nhorse:\n  height: 15 hh\n  height: 15 hh\nsaddle: { rigging: full }\n'
      : orderText(i),
  ).join('---\n');

  test('of YAML gives the rows of the file: numbers of documents and lines run through all of it', async () => {
    put('long.yaml', yaml);
    const file = await rowsOf(['long.yaml']);
    const piped = await rowsOf(['-'], yaml);
    expect(column(piped.rows, 'document')).toEqual(Array.from({ length: many }, (_, i) => i + 1));
    expect(piped.rows.map((row) => ({ ...row, file: 'long.yaml' }))).toEqual(
      file.rows.map((row) => ({ ...row })),
    );
    const lineOf = (n: number): number =>
      yaml.split('---\n').slice(0, n).join('---\n').split('\n').length + (n > 0 ? 1 : 0);
    expect(piped.rows[99]!['line']).toBe(lineOf(99));
    expect(piped.rows[80]!['problem']).toBe(
      `line ${lineOf(80) + 3}, column 3, horse.height: found height; expected each key once; hint: it is already on line ${lineOf(80) + 2}`,
    );
  });

  test('of JSON, one order a line, is known by itself; a broken line costs its own row', async () => {
    const lines = Array.from({ length: many }, (_, i) =>
      i === 7 ? '{"order": "N-7", "horse": {' : orderLine(i),
    );
    const { rows, code } = await rowsOf(['-'], `${lines.join('\n')}\n\n`);
    expect(column(rows, 'line')).toEqual(Array.from({ length: many }, (_, i) => i + 1));
    expect(rows.filter(({ verdict }) => verdict === 'faulty').map(({ line }) => line)).toEqual([8]);
    expect(code).toBe(3);
  });

  test('with bytes that are not text loses only the orders that contain them', async () => {
    const bytes = Buffer.from(yaml);
    bytes[bytes.indexOf('Horse 40')] = 0xff;
    bytes[bytes.indexOf('Horse 41')] = 0x00;
    const { rows } = await rowsOf(['-'], bytes);
    expect(rows).toHaveLength(many);
    const bad = rows.filter(({ problem }) => String(problem).includes('text'));
    expect(column(bad, 'document')).toEqual([41, 42]);
  });

  test('with one order of 6 MB reports that one and goes on', async () => {
    const huge = `${orderText(1)}---\n${orderText(2)}notes: ${'x'.repeat(6_000_000)}\n---\n${orderText(3)}`;
    const { rows } = await rowsOf(['-'], huge);
    expect(column(rows, 'verdict')).toEqual(['sized', 'faulty', 'sized']);
    expect(rows[2]!['line']).toBe(12);
  }, 120_000);

  test('without any order says so', async () => {
    const { rows } = await rowsOf(['-'], '# only a comment\n---\n');
    expect(column(rows, 'verdict')).toEqual(['faulty']);
    expect(rows[0]!['problem']).toBe('line 1, column 1: expected an order');
  });
});

test('pieces are the same however the bytes arrive, and nothing is lost', async () => {
  const bits = fc.constantFrom(
    '---\n',
    '--- ',
    '----\n',
    '...\n',
    '\n',
    'order: 1\n',
    '# x\n',
    `k: ${'v'.repeat(5000)}\n`,
    '\r\n',
    '---\r\n',
  );
  await fc.assert(
    fc.asyncProperty(
      fc.array(bits, { maxLength: 40 }),
      fc.array(fc.integer({ min: 1, max: 9000 }), { minLength: 1 }),
      async (all, sizes) => {
        const bytes = Buffer.from(all.join(''));
        const cut = async (each: readonly number[]) => {
          const pieces: { text: string; lines: number }[] = [];
          for await (const { bytes: part, lines } of piecesOf(inParts(bytes, each), false))
            pieces.push({ text: part.toString(), lines });
          return pieces;
        };
        const pieces = await cut(sizes);
        expect(pieces).toEqual(await cut([bytes.length + 1]));
        const text = bytes.toString();
        for (const piece of pieces) {
          const at =
            piece.text === ''
              ? 0
              : text.split('\n').slice(0, piece.lines).join('\n').length + (piece.lines > 0 ? 1 : 0);
          expect(text.startsWith(piece.text, at)).toBe(true);
        }
        const said = (part: string): string[] => part.split('\n').filter((line) => /^[ok]/.test(line));
        expect(pieces.flatMap((piece) => said(piece.text))).toEqual(said(text));
      },
    ),
    { numRuns: 200 },
  );
});

async function* inParts(bytes: Buffer, sizes: readonly number[]): AsyncGenerator<Buffer> {
  for (let at = 0, i = 0; at < bytes.length; i++) {
    const size = sizes[i % sizes.length]!;
    yield await Promise.resolve(bytes.subarray(at, at + size));
    at += size;
  }
}
