/**
 * Every file under cases/ is one run of the program, kept byte for byte: the command on its first line, then
 *
 *   == stdin        what is piped in; without it, a terminal where nobody types
 *   == file NAME    a file of the run, in a folder of its own; without any, the run is in the repository's root
 *   == exit, == stdout, == stderr    what must come out
 *   == written NAME a file the run must write, in a folder of its own; of a PDF, its text
 *
 * `npm run golden` rewrites them all; read the change in review.
 */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { filesOf, readCase, writeCase, type Case } from '../support/case-file.ts';
import { update } from '../support/cases.ts';
import { newFolder } from '../support/folder.ts';
import { repo, run } from '../support/run-cli.ts';
import { textOfPdf } from '../support/read-pdf.ts';
import { wordsOf } from '../support/words-of.ts';

const home = path.join(repo, 'tests', 'golden', 'cases');
/** What mutants of a folder must get past: see tests/mutate. */
const ofFolder: Readonly<Record<string, RegExp>> = {
  advice: /^(?:ask|check|size)/,
  cinch: /^ticket/,
  learn: /^learn/,
  work: /^(?:backlog|materials|quote|schedule|ticket)/,
};
const told = ofFolder[process.env['MUTATED'] ?? ''] ?? /./;
const names = fs.readdirSync(home).map((name) => path.basename(name, '.txt'));
const cases = names.sort().filter((name) => told.test(name));

async function runCase({ command, parts }: Case): Promise<Case> {
  const given = filesOf({ command, parts });
  const cwd = given.length > 0 ? newFolder() : repo;
  try {
    for (const [name, bytes] of given) {
      fs.mkdirSync(path.dirname(path.join(cwd, name)), { recursive: true });
      fs.writeFileSync(path.join(cwd, name), bytes);
    }
    const stdin = parts.get('stdin');
    const piped = stdin === undefined ? {} : { stdin: Buffer.from(stdin) };
    const ran = await run(wordsOf(command), { cwd, ...piped });
    const written = given.length > 0 ? await newIn(cwd, new Map(given.map(([name, bytes]) => [name, bytes.toString('utf8')]))) : [];
    const found = [...parts].filter(([name]) => name === 'stdin' || name.startsWith('file '));
    const told = [
      [`exit ${ran.code}`, ''],
      ['stdout', ran.stdout],
      ['stderr', ran.stderr],
    ].filter(([name = '', text]) => text !== '' || name.startsWith('exit ')) as [string, string][];
    return { command, parts: new Map([...found, ...told, ...written]) };
  } finally {
    if (cwd !== repo) fs.rmSync(cwd, { recursive: true });
  }
}

async function newIn(dir: string, before: ReadonlyMap<string, string>): Promise<[string, string][]> {
  const all = fs.readdirSync(dir, { recursive: true, encoding: 'utf8' }).sort();
  const files = all.filter((name) => fs.statSync(path.join(dir, name)).isFile());
  const texts = files.map(async (name): Promise<[string, string]> => {
    const bytes = fs.readFileSync(path.join(dir, name));
    return name.endsWith('.pdf') ? [`${name}.txt`, await textOfPdf(bytes)] : [name, bytes.toString('utf8')];
  });
  const changed = (await Promise.all(texts)).filter(([name, text]) => before.get(name) !== text);
  return changed.map(([name, text]) => [`written ${name}`, text]);
}

describe('golden cases', () => {
  test('there are some', () => {
    expect(cases.length).toBeGreaterThan(0);
  });
  test.each(cases)('%s', async (name) => {
    const file = path.join(home, `${name}.txt`);
    const kept = fs.readFileSync(file, 'utf8');
    const now = writeCase(await runCase(readCase(kept)));
    if (update) fs.writeFileSync(file, now);
    else expect(now, `if this is meant: npm run golden -- -t ${name}`).toBe(kept);
  });
});
