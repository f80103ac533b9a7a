/** The program as it is installed: true processes, built by `npm run build` (which `npm test` runs first). */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { dayText } from '../../src/units/days.ts';
import { repo, run, today } from '../support/run-cli.ts';
import { start } from '../support/start.ts';

const order = 'order: 7\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8 }\n';
let dir = '';

beforeAll(() => {
  dir = fs.mkdtempSync(path.join(os.tmpdir(), 'cinchwright-start-'));
});
afterAll(() => {
  fs.rmSync(dir, { recursive: true });
});

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
  // Unicode: prime and double prime, right quotation marks, fraction slash, minus sign, vulgar fraction.
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

test('a program that tests start is on the same day as one in process, whatever day it is', async () => {
  const [started, inProcess] = await Promise.all([
    start(['quote'], { stdin: order }),
    run(['quote'], { stdin: order }),
  ]);
  expect(started).toEqual({ ...inProcess, signal: null });
  expect(started.stdout).toContain(`\n${dayText(today)}, good through `);
});

test('a reader that goes away ("| head") is no fault', async () => {
  const many = Array.from({ length: 200 }, (_, i) => order.replace('7', String(i))).join('---\n');
  const { code, signal, stderr } = await start(['size', '--format', 'json'], { stdin: many, hangUp: true });
  expect({ code, signal, stderr }).toEqual({ code: 0, signal: null, stderr: '' });
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
  expect(stderr).toMatch(
    /^cinchwright: something is wrong in the program itself \(boom\); please report this.*\n$/,
  );
});

test('compiled code of another program version or Node is ignored', async () => {
  const copy = path.join(dir, 'copy');
  fs.cpSync(path.join(repo, 'bin'), path.join(copy, 'bin'), { recursive: true });
  fs.cpSync(path.join(repo, 'dist'), path.join(copy, 'dist'), { recursive: true });
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
