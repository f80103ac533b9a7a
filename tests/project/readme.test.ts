/** Console examples in README.md and docs run and print what they show; `npm run golden` rewrites them. */
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { commandNames } from '../../src/cli/program.ts';
import { update } from '../support/cases.ts';
import { examplesIn, playground, Shell, type Example } from '../support/console.ts';
import { rewrite, tidy, type Shown } from '../support/follow.ts';
import { repo } from '../support/run-cli.ts';

const read = (file: string): string | undefined => {
  const at = path.join(repo, file);
  return fs.existsSync(at) ? fs.readFileSync(at, 'utf8') : undefined;
};
const documents = [
  'README.md',
  'DEVELOPERS.md',
  ...fs.readdirSync(path.join(repo, 'docs')).map((name) => `docs/${name}`),
]
  .filter((file) => file.endsWith('.md'))
  .map((file) => ({ file, examples: examplesIn(read(file) ?? '') }));

test('README.md exists and has console examples', () => {
  expect(read('README.md'), 'README.md is missing').toBeDefined();
  const [readme] = documents;
  expect(
    readme?.examples.length,
    'README.md has no ```console block with a "$ cinchwright" line',
  ).toBeGreaterThan(0);
});

test('they are short: fourteen pages of 19 000 words, and README.md of 120 lines', () => {
  const words = documents.map(({ file }) => (read(file) ?? '').split(/\s+/).length - 1);
  expect(documents.length).toBeLessThanOrEqual(14);
  expect(words.reduce((sum, count) => sum + count, 0)).toBeLessThanOrEqual(19_000);
  expect(read('README.md')?.split('\n').length).toBeLessThanOrEqual(120);
});

test('docs/guide.md shows every command', () => {
  const guide = read('docs/guide.md') ?? '';
  const used = commandNames.filter((name) => name === 'help' || guide.includes(`cinchwright ${name} `));
  expect(used).toEqual(commandNames);
});

/** To missing files. */
function brokenLinks(file: string): string[] {
  const targets = [...(read(file) ?? '').matchAll(/\]\(([^)#\s]+)(?:#[^)]*)?\)/g)].map(
    ([, target]) => target!,
  );
  return targets
    .filter((target) => !/^[a-z]+:/.test(target))
    .filter((target) => !fs.existsSync(path.join(repo, path.dirname(file), target)));
}

test.each(documents)('$file links only to what is there', ({ file }) => {
  expect(brokenLinks(file)).toEqual([]);
});

/** As much of the output as the document shows. */
function shownOf(actual: string, { lines: [from, to], cut }: Example): string {
  const got = tidy(actual);
  return cut
    ? got
        .split('\n')
        .slice(0, to - from)
        .join('\n')
    : got;
}

function expectOutput(actual: string, example: Example): void {
  expect(
    tidy(shownOf(actual, example)),
    'if this is meant, "npm run golden" writes it into the document',
  ).toBe(tidy(example.output));
}

// Commands of one document share a directory, as when typed.
describe.each(documents.filter(({ examples }) => examples.length > 0))('$file', ({ file, examples }) => {
  let dir = '';
  let shell: Shell;
  const other: Shown[] = [];
  beforeAll(() => {
    dir = playground();
    shell = new Shell(dir);
  });
  afterAll(() => {
    fs.rmSync(dir, { recursive: true });
    if (other.length > 0) rewrite(path.join(repo, file), other);
  });
  test.each(examples)('line $line: $command', async (example) => {
    const actual = await shell.run(example.command);
    if (!update) expectOutput(actual, example);
    else if (tidy(shownOf(actual, example)) !== tidy(example.output))
      other.push({ lines: example.lines, output: shownOf(actual, example) });
  });
});

describe('examples are told from the rest', () => {
  const text = [
    '```sh',
    '$ npm ci',
    '```',
    '```console',
    '$ cinchwright --version',
    '9.9.9',
    '',
    '$ cinchwright --help',
    'Usage: cinchwright',
    '...',
    '```',
  ].join('\n');
  const [version, help] = examplesIn(text);
  const shell = new Shell(repo);

  test('commands, outputs and cuts are found', () => {
    expect(examplesIn(text)).toEqual([
      { line: 5, command: 'cinchwright --version', output: '9.9.9', cut: false, lines: [5, 6] },
      { line: 8, command: 'cinchwright --help', output: 'Usage: cinchwright', cut: true, lines: [8, 9] },
    ]);
  });
  test('other output fails', async () => {
    expect(() => {
      expectOutput('0.1.0\n', version!);
    }).toThrow();
    expect(() => {
      expectOutput('Usage: cinch\nmore\n', help!);
    }).toThrow();
    await expect(shell.run('npm ci')).rejects.toThrow('no console example');
  });
  test('the exit code and a file handed in', async () => {
    expect(await shell.run('cinchwright schema nothing')).toContain('order or shop');
    expect(await shell.run('echo $?')).toBe('2\n');
    expect(await shell.run('cat examples/shop.yaml')).toContain('buckles:');
    expect(await shell.run('cinchwright size nowhere-*.yaml')).toContain('nowhere-*.yaml');
  });
});
