/** Orders that are plainly written and have no fault, read fast; whatever else there is goes through read-orders.ts. */
import type { Chunk } from './documents.ts';
import { orderOf } from './order-of.ts';
import { orderSchema } from './order-schema.ts';
import { acrossKeys } from './plausible.ts';
import { quickTree } from './quick-tree.ts';
import { firstLine, sourceOf, type Source } from './source.ts';
import type { Order } from './types.ts';

export interface GoodOrder {
  ok: true;
  order: Order;
  file: string;
  /** First line with contents. */
  line: number;
}

/** Text of an order file -> its orders, if it has any and all are good and plain; otherwise undefined, and readOrders tells more. */
export function quickOrders(text: string, file: string): GoodOrder[] | undefined {
  const source = sourceOf(text, file);
  const orders: GoodOrder[] = [];
  for (const chunk of source.chunks) {
    const order = quickOrder(source, chunk);
    if (order === undefined) return undefined;
    orders.push(order);
  }
  return orders.length === 0 ? undefined : orders;
}

/** One document as a good order; undefined when it is anything else, or not plainly written. */
export function quickOrder(source: Source, chunk: Chunk): GoodOrder | undefined {
  const tree = quickTree(chunk.text);
  if (tree === undefined) return undefined;
  const written = orderSchema.safeParse(tree);
  if (!written.success || acrossKeys({ tree, settled: none, locate: nowhere }).length > 0) return undefined;
  return { ok: true, order: orderOf(written.data), file: source.file, line: firstLine(source, chunk) };
}

const none: ReadonlySet<string> = new Set();
/** Only whether there is a problem is asked here. */
const nowhere = () => ({ file: '', line: 1, column: 1, path: '', expected: '' });
