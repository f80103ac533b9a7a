/** The package has what it needs and no more, and runs on the Node it promises. */
import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { version } from '../../src/cli/version.ts';
import { nodeSatisfies } from '../support/node-range.ts';
import { repo, repoText } from '../support/run-cli.ts';
import { importsOf, sourceFiles } from '../support/source-tree.ts';

interface Manifest {
  name: string;
  version: string;
  engines: { node: string };
  bin: Record<string, string>;
  man: string[];
  scripts: Record<string, string>;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
}
interface Locked {
  engines?: { node?: string };
  dev?: boolean;
}

const json = (file: string): unknown => JSON.parse(repoText(file));
const manifest = json('package.json') as Manifest;
const lock = json('package-lock.json') as { version: string; packages: Record<string, Locked> };

/** From package.json. */
const oldest = '20.19.0';

describe('the packed files', () => {
  const packed = JSON.parse(
    execFileSync('npm', ['pack', '--dry-run', '--json', '--ignore-scripts'], {
      cwd: repo,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }),
  ) as { files: { path: string; mode: number }[] }[];
  const files = packed[0]!.files;
  const names = files.map((file) => file.path);

  test('what is needed is there', () => {
    for (const name of [
      'package.json',
      'LICENSE',
      'bin/cinchwright',
      'dist/cinchwright.cjs',
      'dist/pdf.cjs',
      'dist/licenses.txt',
      'dist/pick.js',
      'dist/raster.cjs',
      'dist/jpeg-decoder.wasm',
      'dist/jpeg-encoder.wasm',
      'dist/png.wasm',
      'bin/fonts/SourceSans3-Regular.ttf',
      'bin/fonts/SourceSans3-Semibold.ttf',
      'bin/fonts/SourceSerif4-Semibold.ttf',
      'bin/fonts/LICENSE-Source-Sans.md',
      'bin/fonts/LICENSE-Source-Serif.md',
      'examples/shop.yaml',
    ]) {
      expect(names).toContain(name);
    }
  });

  test('nothing else is', () => {
    const fitting = [
      /^(package\.json|LICENSE|README\.md)$/,
      /^bin\/(cinchwright|package\.json)$/,
      /^bin\/fonts\/(Source\w+-\w+\.ttf|LICENSE-[\w-]+\.md)$/,
      /^dist\/cinchwright\.cjs(\.cache)?$/,
      /^dist\/(pdf|raster)\.cjs$/,
      /^dist\/(pick\.js|[\w-]+\.wasm)$/,
      /^dist\/licenses\.txt$/,
      /^examples\/.+\.(yaml|json|csv|md|jpg)$/,
      /^docs\/.+\.(md|svg|png|1)$/,
    ];
    expect(names.filter((name) => !fitting.some((pattern) => pattern.test(name)))).toEqual([]);
  });

  test('npm links a man page only of a list, and of a file that is packed', () => {
    expect(manifest.man).toEqual(['./docs/cinchwright.1']);
    expect(names).toContain('docs/cinchwright.1');
  });

  test('the command can be started', () => {
    const bin = files.find((file) => file.path === manifest.bin['cinchwright']);
    expect((bin?.mode ?? 0) & 0o111).toBe(0o111);
    expect(fs.readFileSync(path.join(repo, manifest.bin['cinchwright']!), 'utf8')).toMatch(
      /^#!\/usr\/bin\/env node\n/,
    );
  });

  test.each(['cinchwright.cjs', 'pdf.cjs', 'raster.cjs'])(
    '%s needs nothing that is not shipped with Node',
    (name) => {
      const bundle = fs.readFileSync(path.join(repo, 'dist', name), 'utf8');
      const required = [...bundle.matchAll(/\brequire\("([^"]+)"\)/g)].map(([, from]) => from!);
      const ours =
        /^(node:)?(fs|path|buffer|process|os|readline|tty|util|events|url|stream|zlib|module|crypto|worker_threads)(\/\w+)?$/;
      // Other bundles, and the one native package beside them.
      const beside = ['../dist/pdf.cjs', '../dist/raster.cjs', '@resvg/resvg-js'];
      expect(required.filter((from) => !beside.includes(from) && !ours.test(from))).toEqual([]);
    },
  );
});

describe('versions', () => {
  test('the same in package.json, the lock file and the program', () => {
    expect([manifest.version, lock.version]).toEqual([version, version]);
  });

  test('package.json promises the oldest Node, and no older one', () => {
    expect(nodeSatisfies(oldest, manifest.engines.node)).toBe(true);
    expect(nodeSatisfies('20.18.3', manifest.engines.node)).toBe(false);
  });

  test('all that is installed, for running and for testing, runs on it', () => {
    const locked = Object.entries(lock.packages).filter(([name]) => name !== '');
    expect(locked.length).toBeGreaterThan(50);
    // Optional packages for other machines are not here.
    const installed = locked.filter(([name]) => fs.existsSync(path.join(repo, name)));
    const broken = installed.filter(([, { engines }]) => !nodeSatisfies(oldest, engines?.node ?? '*'));
    expect(broken.map(([name, { engines }]) => `${name} wants ${engines?.node ?? ''}`)).toEqual([]);
  });

  test.each([...Object.keys(manifest.dependencies), 'zod', 'yaml', 'commander'])(
    'the installed %s says so itself',
    (name) => {
      const { engines } = json(`node_modules/${name}/package.json`) as Locked;
      expect(nodeSatisfies(oldest, engines?.node ?? '*')).toBe(true);
    },
  );

  test.each([
    ['20.19.0', '^20.19.0 || >=22.12.0', true],
    ['20.18.9', '^20.19.0 || >=22.12.0', false],
    ['20.19.0', '10.* || >= 12.*', true],
    ['20.19.0', '18 || 20 || >=22', true],
    ['21.0.0', '18 || 20 || >=22', false],
    ['20.19.0', '*', true],
    ['20.19.0', '>=18 <20', false],
  ])('%s within %s: %s', (node, range, expected) => {
    expect(nodeSatisfies(node, range)).toBe(expected);
  });
});

describe('dependencies', () => {
  const imported = new Set(
    sourceFiles
      .flatMap(importsOf)
      .filter(({ isPackage, to }) => isPackage && !to.startsWith('node:'))
      .map(({ to }) =>
        to
          .split('/')
          .slice(0, to.startsWith('@') ? 2 : 1)
          .join('/'),
      ),
  );

  test('only what cannot be bundled is installed with the program', () => {
    expect(Object.keys(manifest.dependencies)).toEqual(['@resvg/resvg-js']);
  });

  test('every one that the program uses is there, and its license goes with the bundle', () => {
    const licenses = repoText('dist/licenses.txt');
    for (const name of imported) {
      if (name in manifest.dependencies) continue;
      expect(manifest.devDependencies).toHaveProperty([name]);
      expect(licenses).toMatch(new RegExp(`^${name} [0-9]`, 'm'));
    }
    expect(imported).toContain('@resvg/resvg-js');
  });

  test('what is compiled into the codecs of photos goes along with its licenses', () => {
    const licenses = repoText('dist/licenses.txt').replace(/\s+/g, ' ');
    expect(licenses).toContain('This software is based in part on the work of the Independent JPEG Group.');
    for (const name of ['jpeg', 'png']) {
      const own = `node_modules/@jsquash/${name}/codec/LICENSE.codec.md`;
      expect(licenses).toContain(repoText(own).replace(/\s+/g, ' ').trim());
    }
    // Compiled Rust contains the names of its crates, mozjpeg its own.
    const [png, jpeg] = ['png', 'jpeg-encoder'].map((name) =>
      fs.readFileSync(path.join(repo, 'dist', `${name}.wasm`), 'latin1'),
    );
    const crates = [...png!.matchAll(/\/([a-z\d_]+)-(\d+\.\d+\.\d+)\/src\//g)].map(([, ...named]) =>
      named.join(' '),
    );
    const mozjpeg = /mozjpeg version [\d.]+/.exec(jpeg!)?.[0].replace(' version', '');
    expect(new Set(crates).size).toBeGreaterThan(4);
    for (const part of [...crates, mozjpeg]) expect(licenses).toContain(part);
  });

  test('none is for running and for testing at once', () => {
    expect(Object.keys(manifest.devDependencies).filter((name) => name in manifest.dependencies)).toEqual([]);
  });
});

const pages = ['README.md', 'DEVELOPERS.md'].map((file) => [file, repoText(file)] as const);

test.each(pages)('every script that %s names exists', (_, text) => {
  const named = [...text.matchAll(/npm run (?:-s )?([\w:-]+)/g)].map(([, name]) => name!);
  expect(named.filter((name) => !(name in manifest.scripts))).toEqual([]);
});

test.each(pages)('every file of ours that %s names exists', (_, text) => {
  const named = [...text.matchAll(/(?<![\w/-])(?:src|tests|docs|examples|bin)\/[\w./-]*\w/g)].map(
    ([name]) => name,
  );
  expect(named.length).toBeGreaterThan(5);
  const missing = named
    .filter((name) => !name.includes('NAME'))
    .filter((name) => !['', '.md'].some((ending) => fs.existsSync(path.join(repo, `${name}${ending}`))));
  expect(missing).toEqual([]);
});
