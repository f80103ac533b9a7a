/** Broken or hostile files get a quick answer. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import { readShop } from '../../src/order/read-shop.ts';
import { cpuMilliseconds } from '../support/cpu-time.ts';
import { leastOrder as good, orderProblems as problems } from '../support/door.ts';

test.each([
  ['', [1, 1], 'an order'],
  ['# only\n\n   \n', [1, 1], 'an order'],
  ['---\n---\n', [1, 1], 'an order'],
  ['order: 1\nhorse:\n\theight: 15 hh\n', [3, 1], 'spaces at the start'],
  ['order: 1\nnotes: a: b\n', [2, 8], 'one "key: value" on a line'],
  ['order: 1\nnotes: "a\n', [2, 8], 'an end to the quote or bracket that opens here'],
  ["order: 1\nnotes: 'a\n", [2, 8], 'an end to the quote or bracket that opens here'],
  ['order: 1\ncolors: { body: [a\n', [2, 9], 'an end to the quote or bracket that opens here'],
  ['order: 1\nnotes: @home\n', [2, 8], 'a value'],
  ['order: 1\n  horse: x\n', [2, 3], 'it to start at column 1'],
  ['order: a\0b\n', [1, 8], 'without control characters'],
  ['order: 1 # \x07\n', [1, 12], 'without control characters'],
  ['order: Jos\ufffd\n', [1, 8], 'text in UTF-8'],
  ['order: 1\rhorse: x\r', [1, 9], 'ordinary line endings'],
  ['order: &a [*a]\n', [1, 12], 'a value that does not contain itself'],
  [`order: ${'[ '.repeat(30)}x${' ]'.repeat(30)}\n`, [1, 56], 'at most 24 levels'],
])('%j', (text, [line, column], expected) => {
  const here = problems(text).filter((problem) => problem.line === line && problem.column === column);
  expect(here.map((problem) => problem.expected).join()).toContain(expected);
});

test('a document that cannot be read spoils no other', () => {
  for (const bad of ['notes: "open\n', 'a: [1\n', '\tx: 1\n', '{{{{\n', 'a: &x\nb: *y\n']) {
    expect(readOrders(`${good}---\n${bad}---\n${good}`, 'o.yaml').map((read) => read.ok)).toEqual([
      true,
      false,
      true,
    ]);
  }
});

test('an alias does not reach into another document', () => {
  expect(problems(`${good}notes: &n hi\n---\n${good}notes: *n\n`)).toMatchObject([
    { document: 2, found: '*n' },
  ]);
});

const deep = 50_000;
const layers = 'abcdefgh'.split('');
const bomb = layers.map(
  (name, at) =>
    `${name}: &${name} [${Array(9)
      .fill(at === 0 ? 'x' : `*${String(layers[at - 1])}`)
      .join()}]`,
);

test.each([
  ['brackets', `a: ${'['.repeat(deep)}`],
  ['braces', `a: ${'{a: '.repeat(deep)}`],
  ['closed brackets', `a: ${'['.repeat(deep)}${']'.repeat(deep)}`],
  ['dashes', '- '.repeat(deep)],
  ['question marks', '? '.repeat(5000)],
  ['ever deeper keys', Array.from({ length: 1500 }, (_, at) => `${' '.repeat(at)}a:`).join('\n')],
  ['an alias bomb', bomb.join('\n')],
  [
    'a chain of aliases',
    Array.from({ length: 2000 }, (_, at) => `k${at}: &k${at} [${at === 0 ? '' : `*k${at - 1}`}]`).join('\n'),
  ],
  ['many keys', Array.from({ length: 20_000 }, (_, at) => `key${at}: 1`).join('\n')],
  ['one long line', `order: ${'x'.repeat(2_000_000)}`],
])('%s: a few problems, in less than five seconds', (_, text) => {
  const start = cpuMilliseconds();
  const found = problems(text);
  expect(cpuMilliseconds() - start).toBeLessThan(5000);
  expect(found.length).toBeGreaterThan(0);
  expect(found.length).toBeLessThanOrEqual(101);
});

test('whatever the text, nothing is thrown, every order is finite and every problem is in the file', () => {
  const pieces = fc.constantFrom(
    'order: 1',
    'horse:',
    '  height: 15.2 hh',
    '  heart-girth: 1e999 in',
    'saddle: {rigging: 7/8}',
    '---',
    '...',
    '\t',
    '&a',
    '*a',
    '!!x',
    '[',
    ']',
    '{',
    '}',
    '"',
    "'",
    ': ',
    '- ',
    '# ',
    '|',
    '>',
    '%YAML 1.1',
    '\r\n',
    '<<',
    '\0',
    'ñ',
    '\ud800',
  );
  const text = fc
    .array(
      fc.oneof(
        pieces,
        pieces.map((piece) => `${piece}\n`),
        fc.string(),
      ),
      { maxLength: 30 },
    )
    .map((all) => all.join(''));
  fc.assert(
    fc.property(text, (file) => {
      readShop(file, 's.yaml');
      for (const read of readOrders(file, 'o.yaml')) {
        if (read.ok) expect(JSON.stringify(read.order)).not.toContain('null');
        else {
          expect(read.problems.length).toBeGreaterThan(0);
          for (const { line, column } of read.problems) {
            expect(line).toBeGreaterThan(0);
            expect(line).toBeLessThanOrEqual(file.split('\n').length);
            expect(column).toBeGreaterThan(0);
          }
        }
      }
    }),
    { numRuns: 1500 },
  );
});

test('brackets without end, file after file, end in a message each time', () => {
  // Two in one process once overflowed the stack while a pattern compiled.
  for (const deep of [5000, 8000, 5000]) {
    const [read] = readOrders('['.repeat(deep), 'deep.yaml');
    expect(read?.ok).toBe(false);
    if (read?.ok === false) expect(read.problems[0]?.expected).toContain('at most 24 levels');
  }
});
