/** Reads a file into checked orders, one per document, or located problems. */
import { acrossKeys, withSwapHint } from './plausible.ts';
import { check, checker, inOrder } from './check.ts';
import { loadChunk, type Loaded } from '../yaml/load.ts';
import { orderSchema } from './order-schema.ts';
import { otherKind } from './other-kind.ts';
import type { Problem } from '../yaml/problem.ts';
import { sourceOf } from '../yaml/source.ts';
import type { Order } from './types.ts';

export type OrderRead =
  /** `line`: the first with contents. */
  | { ok: true; order: Order; file: string; line: number }
  | { ok: false; file: string; line: number; order?: string; problems: Problem[] };

const orders = checker(orderSchema);

/** All are held in memory. */
export const mostOrders = 10_000;

/**
 * One entry per document, or one for an empty file. Never throws.
 * @param before lines above the text
 */
export function readOrders(text: string, file: string, before = 0): OrderRead[] {
  const source = sourceOf(text, file, before);
  const further = source.chunks[mostOrders];
  if (further !== undefined) return [tooMany(file, source.lines.at(further.base).line)];
  if (source.chunks.length === 0) return [noOrder(file)];
  return source.chunks.map((chunk) => readLoaded(loadChunk(source, chunk)));
}

const noOrder = (file: string): OrderRead => unread({ file, line: 1, expected: 'an order' });

/** `line`: of the first too many. */
export const tooMany = (file: string, line: number): OrderRead =>
  unread({
    file,
    line,
    expected: `at most ${String(mostOrders)} orders in one file`,
    hint: 'backlog takes any number',
  });

const unread = (problem: Omit<Problem, 'column' | 'path'>): OrderRead => ({
  ok: false,
  file: problem.file,
  line: problem.line,
  problems: [{ column: 1, path: '', ...problem }],
});

/** One document from anywhere. */
export function readLoaded(loaded: Loaded): OrderRead {
  const { file, line } = loaded;
  const other = otherKind(loaded, 'order');
  if (other !== undefined) return { ok: false, file, line, problems: [other] };
  const { value, problems } = check(loaded, orders);
  const all = [...problems.map((problem) => withSwapHint(loaded, problem)), ...acrossKeys(loaded)];
  if (value !== undefined && all.length === 0) return { ok: true, order: value, file, line };
  const order = loaded.top('order');
  const faults = inOrder(all);
  return order === undefined
    ? { ok: false, file, line, problems: faults }
    : { ok: false, file, line, order, problems: faults.map((problem) => ({ ...problem, order })) };
}
