/** A backlog: each order with its spec. */
import type { Shop } from '../order/types.ts';
import type { Keyed } from '../work/planned.ts';
import type { PaperResult } from '../words/types.ts';
import { CliFault, exit, printable, type ExitCode } from './fault.ts';
import { failed, readEntries, type Entry } from './input.ts';
import type { CliIo } from './io.ts';
import { tellFaults } from './problems.ts';

export interface Backlog {
  readonly entries: readonly Entry[];
  readonly results: readonly PaperResult<Keyed>[];
  readonly orders: readonly Keyed[];
}

/** Reads and sizes all orders. */
export async function backlogOf(
  files: readonly string[],
  { shop, day }: { shop: Shop; day: string },
  io: CliIo,
): Promise<Backlog> {
  const { sizeOrder } = await import('../index.ts');
  const { inOrder, keysOf, plannedOf } = await import('../work/planned.ts');
  const entries = await readEntries(files, io);
  const read = entries.map((entry) => {
    const { file } = entry;
    if (!entry.ok) return { file, order: entry.order, failed: failed(entry) };
    return { file, order: entry.order.order, planned: plannedOf(sizeOrder(entry.order, shop), day) };
  });
  const sorted = inOrder(read);
  const planned = sorted.flatMap(({ file, planned: plan }) =>
    plan === undefined ? [] : [{ ...plan, file }],
  );
  const keys = keysOf(planned.map(({ file, order: { order } }) => ({ file, order })));
  const orders = planned.map((plan, i): Keyed => ({ ...plan, key: keys[i] ?? '' }));
  const left = [...orders];
  const results = sorted.map((each): PaperResult<Keyed> => {
    if (each.failed !== undefined) return each.failed;
    const { file, order } = each;
    if (each.planned !== undefined) return { ok: true, file, order, paper: left.shift(), none: undefined };
    return { ok: true, file, order, paper: undefined, none: 'no cinch we tie passes here' };
  });
  return { entries, results, orders };
}

/** Says what is left out and why. */
export async function tellLeftOut(
  { entries, results }: Backlog,
  io: CliIo,
  color: boolean,
): Promise<ExitCode> {
  const told = await tellFaults(entries, io, color);
  const without = results.flatMap((result) => (result.ok && result.none !== undefined ? [result] : []));
  for (const { order, none = '' } of without) {
    io.stderr(`cinchwright: order ${printable(order)} is not included: ${none}; see size\n`);
  }
  if (told !== exit.good) return told;
  return without.length > 0 ? exit.noSpec : exit.good;
}

/** Errors: the shop file has no hours or benches. */
export async function needAgenda(shop: Shop): Promise<void> {
  const { missingForAgenda } = await import('../work/agenda.ts');
  const missing = missingForAgenda(shop);
  if (missing.length === 0) return;
  throw new CliFault(`nothing can be scheduled: the shop file is missing ${missing.join(' and ')}`, {
    code: exit.input,
  });
}
