/** The door for orders: the text of a file becomes checked orders, one a document, or located problems. */
import { acrossKeys, withSwapHint } from './plausible.ts';
import { check, checker, inOrder } from './check.ts';
import { load, type Loaded } from './load.ts';
import { orderSchema, type WrittenOrder } from './order-schema.ts';
import type { Problem } from './problem.ts';
import type { Order } from './types.ts';

export type OrderRead =
  | { ok: true; order: Order; file: string; line: number }
  | { ok: false; file: string; line: number; order?: string; problems: Problem[] };

const orders = checker(orderSchema);

/**
 * Text of an order file -> one entry a document, in order. A document with faults gives all of them and does not hinder the others;
 * a file without any document gives one entry that says so. Never throws.
 */
export function readOrders(text: string, file: string): OrderRead[] {
  const documents = load(text, file);
  if (documents.length > 0) return documents.map(readOne);
  const problem = {
    file,
    line: 1,
    column: 1,
    path: '',
    expected: 'an order: there is no order in this file',
  };
  return [{ ok: false, file, line: 1, problems: [problem] }];
}

function readOne(loaded: Loaded): OrderRead {
  const { file, line } = loaded;
  const { value, problems } = check(loaded, orders);
  const all = [...problems.map((problem) => withSwapHint(loaded, problem)), ...acrossKeys(loaded)];
  if (value !== undefined && all.length === 0) return { ok: true, order: toOrder(value), file, line };
  const order = loaded.top('order');
  return { ok: false, file, line, ...(order === undefined ? {} : { order }), problems: inOrder(all) };
}

/** From keys as written to the names inside the program; what every order has gets its default here. */
function toOrder(written: WrittenOrder): Order {
  const { horse, saddle } = written;
  return {
    ...written,
    quantity: written.quantity ?? 1,
    horse: {
      name: horse.name,
      height: horse.height,
      heartGirth: horse['heart-girth'],
      bodyLength: horse['body-length'],
      elbowRoom: horse['elbow-room'],
      barrel: horse.barrel,
      withers: horse.withers,
      condition: horse.condition,
      kind: horse.kind,
      trouble: horse.trouble ?? [],
    },
    saddle: {
      rigging: saddle.rigging,
      style: saddle.style,
      barSpan: saddle['bar-span'],
      ringToRing: saddle['ring-to-ring'],
      ringDrop: saddle['ring-drop'],
      double: saddle.double,
    },
  };
}
