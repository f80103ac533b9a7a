/** The installed program in true processes; needs `npm run build`. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { dayText } from '../../src/units/days.ts';
import { cases } from '../support/cases.ts';
import { ownFolder } from '../support/own-folder.ts';
import { repo, run, today } from '../support/run-cli.ts';
import { start } from '../support/start.ts';

const order = 'order: 7\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8 }\n';
const dir = ownFolder();

test('reads a pipe, prints like the program in process, and says the version of the package', async () => {
  const [piped, inProcess, version] = await Promise.all([
    start(['size'], { stdin: order }),
    run(['size'], { stdin: order }),
    start(['--version']),
  ]);
  expect(piped).toEqual({ ...inProcess, signal: null });
  expect(piped.code).toBe(0);
  expect(version.stdout).toBe(`${packageJson.version}\n`);
});

test('signs that are not ASCII mean the same once compiled', async () => {
  // Unicode primes, quotation marks, slashes, minus signs, fractions.
  const typed =
    'order: 7\nhorse: { heart-girth: 73\u2033, elbow-room: 4\u00bd\u201d, height: 5\u2032 1\u2033 }\n' +
    'saddle: { rigging: 7\u20448, ring-to-ring: 44 1\u22152 in, bar-span: 13\u20191/8 }\n';
  for (const args of [['size'], ['schema', 'order'], ['schema', 'shop']]) {
    const stdin = args[0] === 'size' ? typed : '';
    const [installed, inProcess] = await Promise.all([start(args, { stdin }), run(args, { stdin })]);
    expect(installed).toEqual({ ...inProcess, signal: null });
  }
  const { stdout, code } = await start(['size'], { stdin: typed.replace(', bar-span: 13\u20191/8', '') });
  expect(stdout).toContain('Taped: heart girth, elbow room and ring to ring.');
  expect(code).toBe(0);
});

test('a started program and one in process have the same day', async () => {
  const [started, inProcess] = await Promise.all([
    start(['quote'], { stdin: order }),
    run(['quote'], { stdin: order }),
  ]);
  expect(started).toEqual({ ...inProcess, signal: null });
  expect(started.stdout).toContain(`\n${dayText(today)}, good through `);
});

test('a fault of our own is one plain line, without a stack trace', async () => {
  const saboteur = path.join(dir, 'saboteur.cjs');
  fs.writeFileSync(
    saboteur,
    `const fs = require('node:fs');
     const { readSync } = fs;
     fs.readSync = (handle, ...rest) => {
       if (handle === 0) throw new TypeError('boom');
       return readSync(handle, ...rest);
     };`,
  );
  const { code, stdout, stderr } = await start(['size'], {
    stdin: order,
    env: { NODE_OPTIONS: `--require ${saboteur}` },
  });
  expect(code).toBe(3);
  expect(stdout).toBe('');
  expect(stderr).toMatch(/^cinchwright: this is a bug in cinchwright \(boom\); please report it.*\n$/);
});

test('compiled code of another program version or Node is ignored', async () => {
  const copy = copied('copy');
  for (const spoiled of [Buffer.from('not compiled code'), Buffer.alloc(0), undefined]) {
    const cache = path.join(copy, 'dist', 'cinchwright.cjs.cache');
    if (spoiled === undefined) fs.rmSync(cache);
    else fs.writeFileSync(cache, spoiled);
    const { code, stdout, stderr } = await start(['--version'], {
      program: path.join(copy, 'bin', 'cinchwright'),
    });
    expect({ code, stdout, stderr }).toEqual({ code: 0, stdout: `${packageJson.version}\n`, stderr: '' });
  }
});

describe('compiled code is used only as the build left it', () => {
  const cacheOf = (copy: string): string => path.join(copy, 'dist', 'cinchwright.cjs.cache');
  const sized = (copy: string) =>
    start(['size'], { stdin: order, program: path.join(copy, 'bin', 'cinchwright') });

  test('bits that have flipped, at any place, and an end that is missing', async () => {
    const copy = copied('flipped');
    const whole = fs.readFileSync(cacheOf(copy));
    const good = await sized(copy);
    expect(good.code).toBe(0);
    const count = cases(4, 12);
    const places = Array.from({ length: count }, (_, i) => Math.floor(((i + 0.5) * whole.length) / count));
    const flipped = places.map((at) => {
      const spoiled = Buffer.from(whole);
      for (let i = 0; i < 40; i++) spoiled[at + i] = (spoiled[at + i] ?? 0) ^ (1 << (i % 8));
      return spoiled;
    });
    for (const spoiled of [...flipped, whole.subarray(0, -1), whole.subarray(0, 3)]) {
      fs.writeFileSync(cacheOf(copy), spoiled);
      expect(await sized(copy)).toEqual(good);
    }
  }, 60_000);

  test('a program of the same length with other words', async () => {
    const copy = copied('edited');
    const bundle = path.join(copy, 'dist', 'cinchwright.cjs');
    const text = fs.readFileSync(bundle, 'latin1');
    const edited = text.replaceAll('Sizing aid,', 'Edited aid,');
    expect(edited).not.toBe(text);
    fs.writeFileSync(bundle, edited, 'latin1');
    expect((await sized(copy)).stdout).toContain('Edited aid,');
  });
});

function copied(name: string): string {
  const copy = path.join(dir, name);
  for (const folder of ['bin', 'dist'])
    fs.cpSync(path.join(repo, folder), path.join(copy, folder), { recursive: true });
  return copy;
}
