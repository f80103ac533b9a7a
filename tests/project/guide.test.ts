/** docs/guide.md is one story: its files are saved and its commands typed one after the other in one folder, their output compared. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { commandNames } from '../../src/cli/program.ts';
import { follow, rewrite } from '../support/follow.ts';
import { commandsOf, recipesIn, toolsOf, type Recipe } from '../support/recipes.ts';
import { repo } from '../support/run-cli.ts';
import { installed } from '../support/shells.ts';

const file = path.join(repo, 'docs', 'guide.md');
const chapters = recipesIn(fs.readFileSync(file, 'utf8'));
const story: Recipe = { title: 'all chapters', steps: chapters.flatMap(({ steps }) => steps) };
/** With UPDATE_GOLDEN=1 the outputs are written anew: read the difference before you commit it. */
const update = process.env['UPDATE_GOLDEN'] === '1';

describe('docs/guide.md', () => {
  test.skipIf(!toolsOf(story).every(installed))(
    'is true from the call to the invoice',
    () => {
      const { shown, got, wanted } = follow(story);
      if (update) rewrite(file, shown);
      else expect(got).toEqual(wanted);
    },
    240_000,
  ); // each command is a start of its own, and machines are busy

  test('goes through the commands of a day', () => {
    const used = commandsOf(story);
    const day = ['size', 'ask', 'check', 'draw', 'quote', 'materials', 'schedule', 'ticket', 'learn'];
    expect(day.filter((name) => !used.includes(name))).toEqual([]);
    expect(used.filter((name) => !commandNames.includes(name))).toEqual([]);
  });
});
