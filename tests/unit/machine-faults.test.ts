/** Full disks, closed pipes, odd files and wrong clocks. */
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { long } from '../support/cases.ts';
import { ownFolder } from '../support/own-folder.ts';
import { run, type Ran } from '../support/run-cli.ts';
import { surroundings } from '../support/start.ts';

const order =
  'order: 7\nhorse: { heart-girth: 73 in }\nsaddle: { rigging: 7/8, ring-to-ring: 44 in }\ncolors: { body: natural, accent: rust }\nwants: { style: straight }\n';

const dir = ownFolder();
beforeAll(() => {
  put('good.yaml', order);
  const orders = Array.from({ length: 300 }, (_, i) => order.replace('7', String(i)));
  put('more.yaml', orders.join('---\n'));
  // More JSON than a pipe holds.
  put('some.yaml', orders.slice(0, 40).join('---\n'));
});
function put(name: string, content: string | Buffer): void {
  fs.mkdirSync(path.dirname(path.join(dir, name)), { recursive: true });
  fs.writeFileSync(path.join(dir, name), content);
}

interface Ended {
  readonly code: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs a shell line on the built program: no stack trace, an end within ten seconds. */
function shell(line: string, env: Readonly<Record<string, string>> = {}): Ended {
  const options = {
    cwd: dir,
    encoding: 'utf8',
    timeout: 10_000,
    env: surroundings(env),
  } as const;
  const {
    status: code,
    stdout,
    stderr,
    signal,
  } = spawnSync('bash', ['--norc', '--noprofile', '-c', line], options);
  expect(signal).toBeNull();
  expect(stderr).not.toMatch(/\n\s+at .+:\d+:\d+/);
  return { code, stdout, stderr };
}

/** In this process, without a shell. */
async function here(line: string): Promise<Ran> {
  const ran = await run(line.split(' ').slice(1), { cwd: dir });
  expect(ran.stderr).not.toMatch(/\n\s+at .+:\d+:\d+/);
  return ran;
}

/** A preloaded module that makes a function of Node fail for some files. */
function sabotage(name: string, code: string, part: string): Record<string, string> {
  put(
    `${name}.cjs`,
    `const fs = require('node:fs');
     const real = fs.${name};
     fs.${name} = (file, ...rest) => {
       if (String(file).includes(${JSON.stringify(part)})) {
         throw Object.assign(new Error('${code}: made up'), { code: '${code}', syscall: 'open', path: String(file) });
       }
       return real(file, ...rest);
     };`,
  );
  return { NODE_OPTIONS: `--require ${path.join(dir, `${name}.cjs`)}` };
}

describe('a disk that is full', () => {
  test.each([
    'cinchwright size good.yaml > /dev/full',
    'cinchwright size good.yaml --out /dev/full',
    'cinchwright quote good.yaml --format pdf > /dev/full',
    'cinchwright backlog more.yaml --format csv > /dev/full',
    'cinchwright --help > /dev/full',
    ...(long
      ? ['cinchwright backlog more.yaml --format csv --out /dev/full', 'cinchwright schema order > /dev/full']
      : []),
  ])('%s', (line) => {
    const { code, stderr } = shell(line);
    expect(code).toBe(3);
    expect(stderr).toMatch(/^cinchwright: .*the disk is full\n/);
  });
  test('leaves the old file, and nothing beside it', () => {
    put('old/kept.txt', 'kept by cinchwright\n');
    const { code } = shell(
      'cinchwright size good.yaml --out old/kept.txt',
      sabotage('writeSync', 'ENOSPC', ''),
    );
    expect(code).toBe(3); // not even the message can be written
    expect(fs.readdirSync(path.join(dir, 'old'))).toEqual(['kept.txt']);
    expect(fs.readFileSync(path.join(dir, 'old/kept.txt'), 'utf8')).toBe('kept by cinchwright\n');
  });
});

describe('pipes', () => {
  test.each([
    'cinchwright size some.yaml --format json',
    'cinchwright backlog more.yaml --format csv',
    ...(long
      ? ['cinchwright quote good.yaml --format pdf', 'cinchwright schema order', 'cinchwright rules']
      : []),
  ])('%s | head -c 1', (line) => {
    const { stdout, stderr } = shell(
      `set -o pipefail; ${line} 2> err.txt | head -c 1; echo " $?" ; cat err.txt >&2`,
    );
    expect(stdout).toMatch(/^. 0\n$/);
    expect(stderr).not.toContain('EPIPE');
  });
  test.each([
    'cinchwright size - <&-',
    'cinchwright size <&-',
    'cinchwright backlog - <&-',
    'cinchwright size < .',
  ])('closed or no input: %s', (line) => {
    const { code, stderr } = shell(line);
    expect(code).toBe(3);
    expect(stderr).not.toBe('');
  });
  test.each([
    'cinchwright size good.yaml >&-',
    'cinchwright size good.yaml 2>&-',
    'cinchwright size gone.yaml 2>&-',
  ])('closed output: %s', (line) => {
    expect(shell(line).code).toBe(line.includes('gone') ? 3 : 0);
  });
});

test.each([
  ...['size good.yaml', 'new x.yaml', 'photo --pick x.jpg'],
  ...(long ? ['backlog good.yaml', 'ask good.yaml'] : []),
])('a current folder that has been removed: cinchwright %s', (command) => {
  const { code, stdout, stderr } = shell(`mkdir gone && cd gone && rmdir ../gone; cinchwright ${command}`);
  expect([code, stdout]).toEqual([3, '']);
  expect(stderr).toMatch(/^cinchwright: cannot .*the current folder is gone; change to another\n$/);
});

describe('devices that never end', () => {
  test.each([
    'size',
    'ask',
    'learn',
    'backlog',
    'materials',
    'photo',
    'photo --pick',
    'size good.yaml --shop',
  ])('cinchwright %s /dev/urandom', async (command) => {
    for (const device of ['/dev/urandom', '/dev/zero']) {
      const { code, stderr } = await here(`cinchwright ${command} ${device}`);
      expect(code).toBe(3);
      expect(stderr).toMatch(/^cinchwright: .*(never ends|at most 5 MB|not a plain file)\b/);
    }
  });
  test('cost a backlog their own row, and are no standard input', () => {
    const { code, stdout } = shell('cinchwright backlog good.yaml /dev/zero good.yaml --format csv');
    expect([
      code,
      stdout
        .split('\r\n')
        .slice(1, -1)
        .map((row) => row.split(',')[0]),
    ]).toEqual([3, ['7', '', '7']]);
    expect(shell('cinchwright backlog - < /dev/zero').stderr).toMatch(
      /^cinchwright: standard input: .*never ends/,
    );
  });
});

test.each(['SIGINT', 'SIGTERM'])('%s while a file is written waits until it is in place', (signal) => {
  put(
    'signal.cjs',
    `const fs = require('node:fs');
     const { renameSync } = fs;
     fs.renameSync = (...names) => {
       process.kill(process.pid, '${signal}');
       const until = Date.now() + 50;
       while (Date.now() < until);
       return renameSync(...names);
     };`,
  );
  const env = { NODE_OPTIONS: `--require ${path.join(dir, 'signal.cjs')}` };
  const { code } = shell('mkdir -p put; cinchwright size good.yaml --out put/it.txt; exit $?', env);
  expect(code).toBe(128 + os.constants.signals[signal as NodeJS.Signals]);
  expect(fs.readdirSync(path.join(dir, 'put'))).toEqual(['it.txt']);
  expect(fs.readFileSync(path.join(dir, 'put', 'it.txt'), 'utf8')).toMatch(/^7: tie a.*Sizing aid/s);
});

describe('files that are none', () => {
  const deep = `a: ${'['.repeat(20_000)}`;
  const aliases = `a: &a x\nb: [${Array.from({ length: 10_000 }, () => '*a').join(',')}]\n`;
  const bomb = [
    'a: &a [x,x,x,x,x,x,x,x,x,x]',
    ...'bcdefghijk'.split('').map((name, i) => {
      const before = 'abcdefghijk'[i] ?? '';
      return `${name}: &${name} [${Array.from({ length: 10 }, () => `*${before}`).join(',')}]`;
    }),
  ].join('\n');
  const cases: [string, string | Buffer, RegExp][] = [
    ['deep nesting', deep, /at most 24 levels/],
    ['10 000 aliases', aliases, /aliases|expected a key/],
    ['aliases of aliases', bomb, /Aliases \(\*\) repeat too much\./],
    ['a Latin-1 name', Buffer.from('order: 1\nhorse: { name: Caf\u00e9 }\n', 'latin1'), /not UTF-8/],
    ['UTF-16', Buffer.from('order: 1\n', 'utf16le'), /UTF-16|NUL|zero byte|binary/i],
    [
      'a picture',
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]),
      /it is not a text file/,
    ],
    ['nothing', '', /expected an order\./],
  ];
  test.each(cases)('%s', async (name, content, said) => {
    const file = `odd/${name.replaceAll(' ', '-')}.yaml`;
    put(file, content);
    const { code, stderr } = await here(`cinchwright size ${file} good.yaml`);
    expect(code).toBe(3);
    expect(stderr.replace(/\s+/g, ' ')).toMatch(said);
    const { stdout } = await here(`cinchwright backlog ${file} good.yaml --format csv`);
    expect(stdout).toContain('good.yaml,1,1');
  });

  test('100 MB', async () => {
    const file = path.join(dir, 'huge.yaml');
    fs.closeSync(fs.openSync(file, 'w'));
    fs.truncateSync(file, 100 * 1024 * 1024);
    for (const command of ['size', 'backlog', 'materials']) {
      const { code, stdout, stderr } = await here(`cinchwright ${command} huge.yaml good.yaml`);
      expect(code).toBe(3);
      expect(stdout + stderr).toMatch(/too large|at most 400000 characters/);
    }
    fs.rmSync(file);
  });

  test.each([
    ...['size', 'check', 'backlog --format csv', 'materials', 'schedule', 'quote', 'ticket'],
    'ask --draws 8',
  ])('links in a circle cost %s nothing but themselves', async (command) => {
    fs.rmSync(path.join(dir, 'round'), { force: true });
    fs.symlinkSync('round', path.join(dir, 'round'));
    const { code, stdout, stderr } = await here(`cinchwright ${command} round good.yaml`);
    expect([code, (stdout + stderr).includes('the links go in a circle')]).toEqual([3, true]);
    expect(stdout).toContain('7');
  });

  test('a file that may not be read', () => {
    put('secret.yaml', order);
    const { code, stdout, stderr } = shell(
      'cinchwright size secret.yaml good.yaml',
      sabotage('openSync', 'EACCES', 'secret'),
    );
    expect([code, /^7: tie a/m.test(stdout)]).toEqual([3, true]);
    expect(stderr).toMatch(/^cinchwright: cannot read secret\.yaml: /m);
  });
});

test('a clock before 1970, or far ahead, dates papers by what it says', () => {
  put(
    'clock.cjs',
    `const Real = Date;
     const now = Number(process.env.NOW);
     globalThis.Date = class extends Real { constructor(...a) { super(...(a.length ? a : [now])); } static now() { return now; } };`,
  );
  const at = (now: number): Ended =>
    shell('cinchwright quote good.yaml', {
      NODE_OPTIONS: `--require ${path.join(dir, 'clock.cjs')}`,
      NOW: String(now),
      TZ: 'UTC',
    });
  expect(at(-3_600_000 * 24 * 365).stdout).toContain('\nJan 1, 1969, good through ');
  expect(at(Date.UTC(2091, 4, 1)).stdout).toContain('\nMay 1, 2091, good through ');
});
