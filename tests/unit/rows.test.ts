/** Rows of a backlog, and what its totals count. */
import { expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import type { Advice } from '../../src/advice/advice.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import type { Order } from '../../src/order/types.ts';
import { phraseText } from '../../src/units/text.ts';
import { faultyRow, firstRefusal, rowOf, type Cell } from '../../src/work/row.ts';
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
  count(summary, { verdict: 'other' });
  expect(total(summary)).toBe(6);
});
