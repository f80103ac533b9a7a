/** Rows of a backlog, what its totals count, and orders of one number. */
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import type { Advice } from '../../src/advice/advice.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import type { Order } from '../../src/order/types.ts';
import { phraseText } from '../../src/units/text.ts';
import { FirstPlaces } from '../../src/work/first-places.ts';
import { inOrder, keysOf } from '../../src/work/planned.ts';
import { faultyRow, firstRefusal, rowOf, type Cell, type Cells } from '../../src/work/row.ts';
import { count, newSummary, total } from '../../src/work/summary.ts';
import { orderOf, rigging } from '../support/orders.ts';

const place = { file: 'a.yaml', document: 1, line: 3 };
const cellsOf = (change: Parameters<typeof orderOf>[0], shop = defaultShop) =>
  rowOf(sizeOrder(orderOf(change), shop), place).cells;
const text = (cell: Cell | undefined): unknown =>
  typeof cell === 'object' && cell !== null ? phraseText(cell, 'in') : cell;
const at = (own: Order['saddle']['rigging']) => ({ saddle: { rigging: own, ringToRing: 44 } });

test('the rigging is told by its name, or by where the ring hangs', () => {
  const told = (setBack: number) => text(cellsOf(at({ kind: 'measured', setBack })).rigging);
  expect(text(cellsOf(at(rigging('3/4'))).rigging)).toBe('3/4');
  expect([told(0), told(1.5), told(-0.5)]).toEqual([
    'ring at full position',
    'ring 1 1/2 in back of full position',
    'ring 1/2 in ahead of full position',
  ]);
});

test('why the first comes before the next needs a next one', () => {
  const at = (elbowRoom: number) => ({
    horse: { elbowRoom },
    saddle: { rigging: rigging('full'), ringToRing: 44 },
  });
  const rooms = Array.from({ length: 100 }, (_, i) => 2 + i / 100);
  const tight = rooms.find((room) => sizeOrder(orderOf(at(room)), defaultShop).specs.length === 1);
  expect(cellsOf(at(tight!)).becauseOf).toBeNull();
  expect(text(cellsOf(at(3)).becauseOf)).toMatch(/against/);
});

test('where no cinch was even tried, the row says why', () => {
  expect(phraseText(firstRefusal({ firstRefused: undefined } as Advice), 'in')).toBe(
    'no room below the buckle for any cinch',
  );
});

test('totals count verdicts, repeats, doubts, lengths nobody taped and what comes first', () => {
  const summary = newSummary();
  expect(total(summary)).toBe(0);
  const plain = cellsOf(at(rigging('7/8')));
  const doubtful = cellsOf({ saddle: { rigging: rigging('7/8'), ringToRing: 55 } });
  const sore = cellsOf({ ...at(rigging('7/8')), horse: { trouble: ['elbow-gall'] } });
  const untaped = cellsOf({ saddle: { rigging: rigging('7/8') } });
  const problem = { file: 'a.yaml', line: 1, column: 1, path: '', expected: 'an order' };
  const faulty = faultyRow(undefined, [problem, problem], place).cells;
  expect(faulty.problem).toBe('line 1, column 1: expected an order (and 1 more)');
  for (const cells of [plain, doubtful, sore, untaped, faulty, { ...plain, sameNumberAs: 'a.yaml:3' }])
    count(summary, cells);
  expect(total(summary)).toBe(6);
  expect(summary).toMatchObject({ doubtful: 1, welfare: 1, provisional: 1, sameNumber: 1 });
  expect(summary.orders.faulty).toBe(1);
  const before = structuredClone(summary.orders);
  count(summary, { verdict: 'other' });
  expect(summary.orders).toEqual(before);
});

describe('orders of one number', () => {
  test('stand by number, then by file, those without a number last', () => {
    const entries = [
      { file: 'b', order: undefined },
      { file: 'b', order: '2' },
      { file: 'a', order: undefined },
      { file: 'a', order: '2' },
      { file: 'c', order: '1' },
    ];
    for (const list of [entries, entries.toReversed()])
      expect(inOrder(list).map(({ order, file }) => `${order ?? '-'}${file}`)).toEqual([
        '1c',
        '2a',
        '2b',
        '-a',
        '-b',
      ]);
  });

  test('have keys of their own: with the file, and counted within it, past a number somebody wrote so', () => {
    const at = (order: string, file: string) => ({ order, file });
    expect(keysOf([at('1', 'a'), at('2', 'a'), at('2', 'b')])).toEqual(['1', '2 (a)', '2 (b)']);
    expect(keysOf([at('2', 'a'), at('2', 'a'), at('2 (a), no. 1', 'c')])).toEqual([
      ...['2 (a), no. 2', '2 (a), no. 3', '2 (a), no. 1'],
    ]);
  });

  test('are told of with the first place; what has no number or place is never the first', () => {
    const places = new FirstPlaces();
    const at = (order: unknown, file: unknown, line: unknown) => places.of({ order, file, line } as Cells);
    for (const [order, file, line] of [
      [null, 'a', 1],
      ['7', null, 1],
      ['7', 'a', null],
    ])
      // A second time too.
      expect([at(order, file, line), at(order, file, line)]).toEqual([undefined, undefined]);
    expect(at('7', 'a.yaml', 3)).toBeUndefined();
    expect([at('7', 'b.yaml', 9), at('7', 'c.yaml', 1), at('8', 'c.yaml', 2)]).toEqual([
      ...['a.yaml:3', 'a.yaml:3', undefined],
    ]);
  });
});
