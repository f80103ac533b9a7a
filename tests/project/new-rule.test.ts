/** `npm run new-rule` starts a rule that has the whole shape, is registered, and passes for nothing until it is filled in. */
import { execFileSync, spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { rules } from '../../src/rules/registry.ts';
import { repo } from '../support/run-cli.ts';

/** A copy of what the script reads and writes, and of what the rule imports. */
function copied(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'new-rule-'));
  onTestFinished(() => {
    fs.rmSync(folder, { recursive: true });
  });
  for (const part of ['package.json', 'tsconfig.json', 'src', 'tests/support'])
    fs.cpSync(path.join(repo, part), path.join(folder, part), { recursive: true });
  fs.symlinkSync(path.join(repo, 'node_modules'), path.join(folder, 'node_modules'));
  return folder;
}

const start = (folder: string, ...names: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', 'tests/support/new-rule.ts', ...names], {
    cwd: folder,
    encoding: 'utf8',
  });

/** What the last rule of a folder's registry is and does. */
const lastRule = `
import { rules } from './src/rules/registry.ts';
const ids = rules.map(({ id }) => id);
const rule = rules.at(-1);
const { question, evidence, examples: [{ shows, facts, candidate }] } = rule;
try { rule.judge(facts, candidate) } catch ({ message }) {
  console.log(JSON.stringify({ ids, parts: Object.keys(rule), empty: [question, evidence, shows], message }));
}`;

test('a rule is written with every part, asked last, and judges nothing until it is filled in', () => {
  const folder = copied();
  const { status, stdout } = start(folder, 'pad-thickness');
  expect(status).toBe(0);
  expect(stdout).toMatch(/^wrote src\/rules\/pad-thickness\.ts, .*\n1\. Fill it in/);
  const run = ['--import', 'tsx', '--input-type=module', '-e', lastRule];
  expect(JSON.parse(execFileSync(process.execPath, run, { cwd: folder, encoding: 'utf8' }))).toEqual({
    ids: [...rules.map(({ id }) => id), 'pad-thickness'],
    parts: Object.keys(rules[0]!),
    empty: ['', [], ''],
    message: 'pad-thickness does not judge 17 strands at 1 yet',
  });
  const registry = fs.readFileSync(path.join(folder, 'src/rules/registry.ts'), 'utf8');
  const imports = [...registry.matchAll(/from '\.\/(?!rule\.ts)(.*)\.ts'/g)].map(([, file]) => file);
  expect(imports).toEqual(imports.toSorted());
  expect(start(folder, 'pad-thickness')).toMatchObject({
    status: 2,
    stderr: 'new-rule: src/rules/pad-thickness.ts is there already\n',
  });
});

test.each([[], ['../Pad']])('no rule is called %s', (...names) => {
  expect(start(repo, ...names)).toMatchObject({
    status: 2,
    stderr: 'new-rule: name it: npm run new-rule pad-thickness\n',
  });
});
