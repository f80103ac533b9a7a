/** Turns one piece of a backlog into rows. */
import { faultyRow, rowOf, type Place, type Row } from '../../work/row.ts';
import { sizeOrder } from '../../index.ts';
import { readOrders, type OrderRead } from '../../order/read-orders.ts';
import type { Shop } from '../../order/types.ts';
import { printable } from '../fault.ts';
import { textOf } from '../text-file.ts';
import type { Piece } from './pieces.ts';

/** Usually one. Never throws: errors become rows. */
export function rowsOf(
  { bytes, lines, isWhole }: Piece,
  { file, document }: Omit<Place, 'line'>,
  shop: Shop,
): Row[] {
  // May end within a letter.
  const read = isWhole ? textOf(bytes) : ({ ok: true, text: bytes.toString('utf8') } as const);
  if (!read.ok) return [unreadableRow(read.why, { file, document, line: read.line + lines })];
  return readOrders(read.text, file, lines).map((order, i) =>
    rowFor(order, { file, document: document + i, line: order.line }, shop),
  );
}

/** With the reason. */
export const unreadableRow = (why: string, place: Place): Row =>
  failedRow(undefined, { expected: 'a file that can be read', hint: why }, place);

function rowFor(read: OrderRead, place: Place, shop: Shop): Row {
  if (!read.ok) return faultyRow(read.order, read.problems, place);
  try {
    return rowOf(sizeOrder(read.order, shop), place);
  } catch (error) {
    // Our own bug costs only one order.
    const what = printable(error instanceof Error ? error.message : String(error)).slice(0, 200);
    const hint = `this is a bug in cinchwright (${what}); please report it, with the order`;
    return failedRow(read.order.order, { expected: 'an order that can be sized', hint }, place);
  }
}

function failedRow(order: string | undefined, words: { expected: string; hint: string }, place: Place): Row {
  const { file, line } = place;
  return faultyRow(order, [{ file, line, column: 1, path: '', ...words }], place);
}
