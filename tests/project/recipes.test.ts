/** Every recipe of docs/recipes.md does what it says: its files are saved, its commands typed, their output compared. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandNames } from '../../src/cli/program.ts';
import { playground } from '../support/console.ts';
import { commandsOf, recipesIn, save, toolsOf, typed, type Recipe } from '../support/recipes.ts';
import { repo } from '../support/run-cli.ts';
import { installed } from '../support/shells.ts';

const file = path.join(repo, 'docs', 'recipes.md');
const markdown = fs.readFileSync(file, 'utf8');
const recipes = recipesIn(markdown);
/** With UPDATE_GOLDEN=1 the outputs in the document are written anew: read the difference before you commit it. */
const update = process.env['UPDATE_GOLDEN'] === '1';

/** Whether all that a recipe needs is there; what is not is told on standard error. */
function possible(recipe: Recipe): boolean {
  const missing = commandsOf(recipe).filter((name) => !commandNames.includes(name));
  if (missing.length > 0)
    process.stderr.write(
      `\nSKIPPED: recipe "${recipe.title}": there is no command ${missing.join(', ')} yet.\n`,
    );
  return toolsOf(recipe).map(installed).every(Boolean) && missing.length === 0;
}

const tidy = (text: string): string => text.replace(/[ \t\r]+$/gm, '').trimEnd();

interface Shown {
  readonly lines: readonly [number, number];
  readonly output: string;
}

/** Follows a recipe in a directory of its own; what each command showed, beside what it should. */
function follow({ steps }: Recipe): { shown: Shown[]; got: string[][]; wanted: string[][] } {
  const cwd = playground();
  const shown: Shown[] = [];
  const got: string[][] = [];
  const wanted: string[][] = [];
  try {
    for (const step of steps) {
      if (step.kind === 'file') {
        save(step, cwd);
        continue;
      }
      const output = tidy(typed(step.command, cwd));
      shown.push({ lines: step.lines, output });
      got.push([step.command, output]);
      wanted.push([step.command, tidy(step.output)]);
    }
  } finally {
    fs.rmSync(cwd, { recursive: true });
  }
  return { shown, got, wanted };
}

/** The document with outputs put in; from the end, so that line numbers hold. */
function rewrite(shown: readonly Shown[]): void {
  const lines = markdown.split('\n');
  for (const {
    lines: [from, to],
    output,
  } of [...shown].sort((a, b) => b.lines[0] - a.lines[0]))
    lines.splice(from, to - from, ...(output === '' ? [] : output.split('\n')));
  fs.writeFileSync(file, lines.join('\n'));
}

const all: Shown[] = [];

describe('docs/recipes.md', () => {
  test('has recipes', () => {
    expect(recipes.length).toBeGreaterThan(3);
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
    ); // each command is a start of its own, and machines are busy
  }
  if (update) {
    test('is written anew', () => {
      rewrite(all);
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
