/** `npm run new-rule` writes a whole rule and registers it; it passes nothing until filled in. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { rules } from '../../src/rules/registry.ts';
import type { AnyRule } from '../../src/rules/rule.ts';
import { testFolder } from '../support/own-folder.ts';
import { repo } from '../support/run-cli.ts';
import { startRule } from '../support/rule-start.ts';

function copied(): string {
  const folder = testFolder();
  for (const part of ['package.json', 'src'])
    fs.cpSync(path.join(repo, part), path.join(folder, part), { recursive: true });
  fs.symlinkSync(path.join(repo, 'node_modules'), path.join(folder, 'node_modules'));
  return folder;
}

test('a rule is written with every part, asked last, and judges nothing until it is filled in', async () => {
  const folder = copied();
  const file = path.join(folder, 'src/rules/registry.ts');
  expect(startRule('nobody-asks-it', folder)).toBeUndefined();
  const made = ((await import(file)) as { rules: readonly AnyRule[] }).rules;
  expect(made.map(({ id }) => id)).toEqual([...rules.map(({ id }) => id), 'nobody-asks-it']);
  const rule = made.at(-1)!;
  expect(Object.keys(rule)).toEqual(Object.keys(rules[0]!));
  expect([rule.question, rule.evidence, rule.examples]).toMatchObject(['', [], [{ shows: '' }]]);
  expect(() => rule.judge({ k: 1 } as never, { strands: 17 } as never)).toThrow('does not judge 17 strands');
  const imports = [...fs.readFileSync(file, 'utf8').matchAll(/from '\.\/(?!rule\.ts)(.*)\.ts'/g)];
  expect(imports.map(([, name]) => name)).toEqual(imports.map(([, name]) => name).toSorted());
  expect(startRule('nobody-asks-it', folder)).toBe('src/rules/nobody-asks-it.ts is there already');
});

test.each(['', 'Pad', 'pad_thickness', '../pad', 'pad-'])('no rule is called "%s"', (name) => {
  expect(startRule(name, repo)).toBe('name it: npm run new-rule pad-thickness');
});
