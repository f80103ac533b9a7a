/** Rejects lengths and counts that are not whole, and ids used twice. */
import type { CuttingTask } from './types.ts';

/** @throws RangeError naming the caller's mistake */
export function checkTask({ cuts, onHand, buyable, usable, steps }: CuttingTask): void {
  for (const { id, length, quantity } of cuts) {
    whole(`length of cut ${id}`, length, 1);
    whole(`quantity of cut ${id}`, quantity, 0);
  }
  for (const { id, length, count } of [...onHand, ...buyable]) {
    whole(`length of spool or hank ${id}`, length, 1);
    if (count !== undefined) whole(`count of spool or hank ${id}`, count, 0);
  }
  whole('usable length', usable, 0);
  if (steps !== undefined) whole('steps', steps, 0);
  unique(
    'cut',
    cuts.map(({ id }) => id),
  );
  unique(
    'put-up',
    [...onHand, ...buyable].map(({ id }) => id),
  );
}

function whole(what: string, value: number, least: number): void {
  if (!Number.isSafeInteger(value) || value < least) {
    throw new RangeError(`${what} is ${value}; it must be a whole number, ${least} or more`);
  }
}

function unique(what: string, ids: readonly string[]): void {
  const seen = new Set<string>();
  for (const id of ids) {
    if (seen.has(id)) throw new RangeError(`the ${what} ${id} is there twice`);
    seen.add(id);
  }
}
