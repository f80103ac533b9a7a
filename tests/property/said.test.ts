/** A typed order reads like one in a file; other text is told. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { filledOrder } from '../../src/order/filled.ts';
import { load } from '../../src/yaml/load.ts';
import { readLoaded, readOrders, type OrderRead } from '../../src/order/read-orders.ts';
import { loadSaid, readChanged } from '../../src/order/said/order.ts';
import type { Order } from '../../src/order/types.ts';
import type { Block } from '../../src/yaml/tree.ts';
import { cases } from '../support/cases.ts';
import { buckles, phrases, sayable } from '../support/said-phrases.ts';

const say = (line: string) => loadSaid({ line, file: 'said', buckles });

const orderOf = (read: OrderRead | undefined): Order | string =>
  read?.ok === true ? read.order : JSON.stringify(read?.problems);

const seed = 20261130;

test('every order that can be said is the order that a file says, and is kept as one', () => {
  fc.assert(
    fc.property(sayable, ({ line, written }) => {
      const [file] = readOrders(JSON.stringify(written), 'o.yaml');
      expect(file?.ok).toBe(true);
      const said = say(line);
      expect(orderOf(readLoaded(said)), line).toEqual(orderOf(file));
      const [kept] = readOrders(filledOrder(said.tree as Block), 'kept.yaml');
      expect(orderOf(kept), line).toEqual(orderOf(file));
    }),
    { seed, numRuns: cases(100, 600) },
  );
});

const odd = [
  '__proto__',
  'constructor',
  'toString',
  '',
  '½',
  '4½',
  '-',
  '--',
  '.',
  '..',
  '/',
  '7/0',
  '0/0',
  '1e9',
  'NaN',
  'Infinity',
  '99999999999',
  '-4',
  "''",
  '"',
  'ſ',
  'İ',
  '\u202e',
  '\u0000',
  '\ud800',
  '💥',
  'hh',
  'in',
  'buckle',
  'for',
  'named',
  'order',
  'wants',
  'now',
  'of',
  'is',
  '15.',
  '.5',
  '5 ft',
  '4,5',
  '7,8',
  ';',
];
const said = Object.values(phrases).map((each) => each.map(({ words }) => words));
const salad = fc
  .array(
    fc.oneof(
      fc.constantFrom(...odd),
      ...said,
      fc.string({ unit: 'binary', maxLength: 8 }),
      fc.nat(99).map(String),
    ),
    { maxLength: 30 },
  )
  .chain((words) => fc.constantFrom(' ', ', ', ',', '\n', '\t').map((blank) => words.join(blank)));

function expectSound(read: OrderRead, line: string): void {
  if (read.ok) {
    const numbers = JSON.stringify(read.order, (_, value: unknown) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'no number' : value,
    );
    expect(numbers).not.toContain('no number');
    return;
  }
  expect(read.problems.length).toBeGreaterThan(0);
  const rows = line.split('\n');
  for (const { line: row, column, expected, found = '' } of read.problems) {
    expect(Array.from(rows[row - 1] ?? '').length + 1).toBeGreaterThanOrEqual(column);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(expected).not.toMatch(/undefined|NaN/);
    expect(found).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
  }
}

test('any words at all are an order, or are told with their place', () => {
  const [base] = load(
    '{ order: 1, horse: { height: 15 hh, trouble: girthy }, saddle: { rigging: 7/8 }, wants: { strands: 19 } }',
    'o.yaml',
  );
  let good = 0;
  fc.assert(
    fc.property(salad, (line) => {
      const read = readLoaded(say(line));
      expectSound(read, line);
      const changed = readChanged(base!, { line, file: 'what-if', buckles });
      expectSound(changed, line);
      if (changed.ok) good += 1;
    }),
    { seed, numRuns: cases(100, 500) },
  );
  expect(good).toBeGreaterThan(10);
});

test('a long line is read in no time', () => {
  const start = process.cpuUsage();
  for (const words of ['round ', 'ring to ', '1 ', 'wants ', 'for A ', 'a-'.repeat(3), '7/8 of '])
    readLoaded(say(words.repeat(2000 / words.length)));
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(3);
});
