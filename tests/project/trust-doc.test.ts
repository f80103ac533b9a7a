/** docs/trust.md keeps what it says: its limits are the code's, its machine faults are tried, its inputs are those of the fuzz. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { mostDraws } from '../../src/cli/commands/size.ts';
import { drawnLimits } from '../../src/cli/draw/photo-pixels.ts';
import { pictureLimits } from '../../src/cli/photo/picture.ts';
import { mostBytes } from '../../src/cli/text-file.ts';
import { orderJsonSchema } from '../../src/order/json-schema.ts';
import { mostCells } from '../../src/order/csv-rows.ts';
import { mostProblems } from '../../src/order/load.ts';
import { longestFound } from '../../src/order/problem.ts';
import { deepest, mostBrackets, mostLetters, mostMarks } from '../../src/order/refused.ts';
import { mostOrders } from '../../src/order/read-orders.ts';
import { mostNodes } from '../../src/order/walk.ts';
import { targets } from '../fuzz/targets/index.ts';
import { repo } from '../support/run-cli.ts';
import { sourceFiles } from '../support/source-tree.ts';

const text = fs.readFileSync(path.join(repo, 'docs', 'trust.md'), 'utf8');

/** Rows of the first table under a heading, cell by cell. */
function tableUnder(heading: string): string[][] {
  const section = text.split(`## ${heading}\n`)[1]?.split('\n## ')[0] ?? '';
  const rows = section.split('\n').filter((line) => line.startsWith('|'));
  return rows.slice(2).map((row) =>
    row
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

const { properties } = orderJsonSchema() as { properties: Record<string, { maxLength?: number }> };
const megabytes = (bytes: number): string => `${String(bytes / 1e6)} MB`;
const picture = ({ bytes, pixels }: { bytes: number; pixels: number }): string =>
  `${megabytes(bytes)}, ${String(pixels / 1e6)} million pixels`;

test('the limits are those of the code', () => {
  expect(Object.fromEntries(tableUnder('Limits').map(([what, most]) => [what, most]))).toEqual({
    'a file that is read whole': megabytes(mostBytes),
    'orders of such a file, but in a backlog': String(mostOrders),
    'cells of a table of outcomes': String(mostCells),
    'letters of a document': String(mostLetters),
    'line ends, commas and brackets of a document': String(mostMarks),
    'lists and blocks in one another': String(deepest),
    'brackets, or dashes, opened in one another': String(mostBrackets),
    'values of a document, aliases (`*`) written out': String(mostNodes),
    'faults told of a document': String(mostProblems),
    'characters quoted of what was found': String(longestFound),
    'a text of an order, such as a name': `${String(properties['order']?.maxLength)} characters, on one line`,
    notes: `${String(properties['notes']?.maxLength)} characters`,
    'a picture that is measured': picture(pictureLimits),
    'a picture that is drawn on': picture(drawnLimits),
    'draws of `size --simulate`': String(mostDraws),
  });
});

/** Words of each row that the tests of machine faults have in their names, cases or files. */
const tried: Readonly<Record<string, string>> = {
  'the disk is full': 'a disk that is full',
  'a folder may not be written to, or is not there': 'a folder that may not be written to',
  'the reader of a pipe goes away (`head`)': 'head -c 1',
  'standard input is closed, empty or a folder': 'closed or no input',
  'standard output or error is closed': 'closed output',
  'a file is a picture, UTF-16, Latin-1, or empty': "'a picture'",
  'a file is too deep, or full of aliases': "'aliases of aliases'",
  'a file is 100 MB': "'100 MB'",
  'links lead in a circle': 'links in a circle',
  'a file may not be read': 'a file that may not be read',
  'the clock is wrong': 'a clock before 1970',
};

test('every fault of the machine is brought about by a test', () => {
  const tests = fs.readFileSync(path.join(repo, 'tests', 'unit', 'machine-faults.test.ts'), 'utf8');
  expect(tableUnder('Faults of the machine').map(([fault]) => fault)).toEqual(Object.keys(tried));
  expect(Object.values(tried).filter((words) => !tests.includes(words))).toEqual([]);
});

test('the inputs of the fuzz are all there', () => {
  // The figures below have the same names, unquoted.
  const names = tableUnder('The fuzz').flatMap(([name = '']) => /^`(.+)`$/.exec(name)?.[1] ?? []);
  expect(names).toEqual(Object.keys(targets));
});

test('there is a place for the figures of the long run, and the seed it names', () => {
  expect(text).toMatch(/<!-- figures of the long run.*-->\n\n[\s\S]+\n\n<!-- end of the figures -->/);
});

test('no source reaches for the network, another program, or code made of text', () => {
  const reaching =
    /['"](?:node:)?(?:https?|http2|net|dns|tls|dgram|vm|repl|child_process|cluster|inspector)(?:\/\w+)?['"]|\b(?:fetch|eval|WebSocket|XMLHttpRequest|EventSource)\(|new Function\(/;
  const found = sourceFiles.filter(({ text: code }) => reaching.test(code)).map(({ name }) => name);
  expect(found).toEqual([]);
});

test('every option that names something to write is in the promises', () => {
  const written = ['--out', '--out-dir', '--errors', '--picture', '--write', '--in-place'];
  expect(written.filter((option) => !text.includes(`\`${option}\``))).toEqual([]);
});
