/** What the door says of a text. */
import { readOrders } from '../../src/order/read-orders.ts';
import { readShop } from '../../src/order/read-shop.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { parseLength } from '../../src/units/length.ts';
import type { Problem } from '../../src/yaml/problem.ts';

/** As little as an order may say. */
export const leastOrder = 'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: full }\n';

/** @throws when the first order has problems */
export function orderIn(text: string): Order {
  const [read] = readOrders(text, 'o.yaml');
  if (read?.ok !== true) throw new Error(JSON.stringify(read, null, 2));
  return read.order;
}

export const orderProblems = (text: string): Problem[] =>
  readOrders(text, 'o.yaml').flatMap((read) => (read.ok ? [] : read.problems));

/** @throws when it has problems */
export function shopIn(text: string): Shop {
  const read = readShop(text, 's.yaml');
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 2));
  return read.shop;
}

/** @throws when it has none */
export function shopProblems(text: string): readonly Problem[] {
  const read = readShop(text, 's.yaml');
  if (read.ok) throw new Error('it was taken');
  return read.problems;
}

/** A problem in one line: place, path, what was found and expected, and the hint. */
export const problemLine = ({ line, column, path, found = '-', expected, hint = '-' }: Problem): string =>
  `${line}:${column} ${path} | ${found} | ${expected} | ${hint}`;

/** @throws when it is no length */
export function inchesIn(text: string): number {
  const read = parseLength(text);
  if (!read.ok) throw new Error(`${text}: ${read.why}`);
  return read.inches;
}
