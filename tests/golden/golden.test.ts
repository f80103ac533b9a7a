/**
 * Every directory under cases/ is one run of the program, kept byte for byte:
 *
 *   command   the arguments, one line
 *   stdin     what is piped in; without it a terminal is there and nobody types
 *   files/    files the run finds; it then runs in a copy of them, else in the root of the repository
 *   stdout, stderr, exit     what has to come out
 *   written/  files that have to be there afterwards, in a run with files/; of a PDF its text, as another program reads it
 *
 * `npm test` never writes one of these; `npm run golden` rewrites them all, and the change is read in review.
 */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { repo, run } from '../support/run-cli.ts';
import { textOfPdf } from '../support/read-pdf.ts';
import { wordsOf } from '../support/words-of.ts';

const home = path.join(repo, 'tests', 'golden', 'cases');
const update = process.env['UPDATE_GOLDEN'] === '1';
// What mutants of the model have to get past: see tests/mutate.
const told = process.env['MUTATED'] === undefined ? /./ : /^(?:check|size)/;
const cases = fs.existsSync(home) ? fs.readdirSync(home).sort().filter((name) => told.test(name)) : [];

type Outcome = Record<string, string>;

/** Runs a case; its outcome is the text of each file that is kept. */
async function outcomeOf(dir: string): Promise<Outcome> {
  const read = (name: string): string => fs.readFileSync(path.join(dir, name), 'utf8');
  const files = path.join(dir, 'files');
  const own = fs.existsSync(files);
  const cwd = own ? fs.mkdtempSync(path.join(os.tmpdir(), 'cinchwright-golden-')) : repo;
  try {
    if (own) fs.cpSync(files, cwd, { recursive: true });
    const stdin = path.join(dir, 'stdin');
    const piped = fs.existsSync(stdin) ? { stdin: fs.readFileSync(stdin) } : {};
    const before = own ? await contents(cwd) : {};
    const ran = await run(wordsOf(read('command').trim()), { cwd, ...piped });
    const written = own ? changed(before, await contents(cwd)) : {};
    return { stdout: ran.stdout, stderr: ran.stderr, exit: `${ran.code}\n`, ...written };
  } finally {
    if (own) fs.rmSync(cwd, { recursive: true });
  }
}

async function contents(dir: string): Promise<Outcome> {
  const names = fs.readdirSync(dir, { recursive: true, encoding: 'utf8' });
  const plain = names.filter((name) => fs.statSync(path.join(dir, name)).isFile());
  const texts = plain.map(async (name) => {
    const bytes = fs.readFileSync(path.join(dir, name));
    return name.endsWith('.pdf') ? [`${name}.txt`, await textOfPdf(bytes)] : [name, bytes.toString('utf8')];
  });
  return Object.fromEntries((await Promise.all(texts)) as [string, string][]);
}

const changed = (before: Outcome, after: Outcome): Outcome =>
  Object.fromEntries(
    Object.entries(after).flatMap(([name, text]) => (before[name] === text ? [] : [[`written/${name}`, text]])),
  );

/** What is kept of a case, missing files left out. */
async function keptOf(dir: string): Promise<Outcome> {
  const written = path.join(dir, 'written');
  const names = ['stdout', 'stderr', 'exit'].filter((name) => fs.existsSync(path.join(dir, name)));
  const kept = names.map((name) => [name, fs.readFileSync(path.join(dir, name), 'utf8')] as const);
  const files = fs.existsSync(written) ? Object.entries(await contents(written)) : [];
  return Object.fromEntries([...kept, ...files.map(([name, text]) => [`written/${name}`, text] as const)]);
}

function keep(dir: string, outcome: Outcome): void {
  fs.rmSync(path.join(dir, 'written'), { recursive: true, force: true });
  for (const [name, text] of Object.entries(outcome)) {
    fs.mkdirSync(path.dirname(path.join(dir, name)), { recursive: true });
    fs.writeFileSync(path.join(dir, name), text);
  }
}

describe('golden cases', () => {
  test('there are some', () => {
    expect(cases.length).toBeGreaterThan(0);
  });
  test.each(cases)('%s', async (name) => {
    const dir = path.join(home, name);
    const outcome = await outcomeOf(dir);
    if (update) keep(dir, outcome);
    else expect(outcome, `if this is meant: npm run golden -- -t ${name}`).toEqual(await keptOf(dir));
  });
});
