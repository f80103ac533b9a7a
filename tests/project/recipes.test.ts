/** Recipes of docs/scripts.md: files saved, commands typed, output compared. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandNames } from '../../src/cli/program.ts';
import { update } from '../support/cases.ts';
import { follow, rewrite, type Shown } from '../support/follow.ts';
import { commandsOf, recipesIn, toolsOf, type Recipe } from '../support/recipes.ts';
import { repo } from '../support/run-cli.ts';
import { installed } from '../support/shells.ts';

const file = path.join(repo, 'docs', 'scripts.md');
const markdown = fs.readFileSync(file, 'utf8');
const recipes = recipesIn(markdown);

/** A missing tool is named on standard error. */
function possible(recipe: Recipe): boolean {
  const missing = commandsOf(recipe).filter((name) => !commandNames.includes(name));
  if (missing.length > 0)
    process.stderr.write(
      `\nSKIPPED: recipe "${recipe.title}": there is no command ${missing.join(', ')} yet.\n`,
    );
  return toolsOf(recipe).map(installed).every(Boolean) && missing.length === 0;
}

const all: Shown[] = [];

describe('docs/scripts.md', () => {
  test('has recipes', () => {
    expect(recipes.length).toBeGreaterThan(2);
  });
  for (const recipe of recipes) {
    test.skipIf(!possible(recipe))(
      recipe.title,
      () => {
        const { shown, got, wanted } = follow(recipe);
        all.push(...shown);
        if (!update) expect(got).toEqual(wanted);
      },
      240_000,
    ); // each command is a start, and machines are busy
  }
  if (update) {
    test('is written anew', () => {
      rewrite(file, all);
    });
  }
});

describe('recipes are read as a person reads them', () => {
  const [recipe] = recipesIn(
    [
      '## One',
      'Save this as `a.txt`:',
      '',
      '```text',
      'hi',
      '```',
      '',
      '```shell-session',
      '$ cat a.txt | jq .',
      'hi',
      '$ b',
      '```',
      '',
      '```sh',
      'never run',
      '```',
    ].join('\n'),
  );
  test('files, commands, outputs, tools', () => {
    expect(recipe?.steps).toEqual([
      { kind: 'file', name: 'a.txt', text: 'hi\n' },
      { kind: 'command', command: 'cat a.txt | jq .', output: 'hi', lines: [9, 10] },
      { kind: 'command', command: 'b', output: '', lines: [11, 11] },
    ]);
    expect(toolsOf(recipe!)).toEqual(['jq']);
  });
  test('another output fails', () => {
    const { got, wanted } = follow({
      title: 'x',
      steps: [{ kind: 'command', command: 'echo 1', output: '2', lines: [0, 0] }],
    });
    expect(got).not.toEqual(wanted);
  });
});
