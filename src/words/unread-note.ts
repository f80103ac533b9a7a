/** Why an order has no result, in one cell. */
import type { Problem } from '../yaml/problem.ts';

/** Why there is no result: the first problem with its line; no line when the file itself could not be read. */
export function unreadNote({
  problems: [first],
  unreadable,
}: {
  readonly problems: readonly Problem[];
  readonly unreadable?: string | undefined;
}): string | undefined {
  if (unreadable !== undefined) return `cannot be read: ${unreadable}`;
  return first === undefined ? undefined : `line ${String(first.line)}: expected ${first.expected}`;
}
