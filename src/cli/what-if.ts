/** `size --what-if`: an order and its changes. */
import type { SizeResult } from '../words/types.ts';
import type { WhatIf } from '../views/side-by-side-sheet.ts';
import type { Loaded } from '../yaml/load.ts';
import type { Shop } from '../order/types.ts';
import { guardInputs, tellNotWritten } from './emit.ts';
import type { SizeOptions } from './commands/size.ts';
import { CliFault, exit, printable, worse, type ExitCode } from './fault.ts';
import { fileLabel, readText, unreadable, type Entry } from './input.ts';
import type { CliIo } from './io.ts';
import { tellFaults } from './problems.ts';
import { inputsOf, loadedSay, saidEntry } from './said.ts';
import { printViews, type Views } from './print.ts';
import { colorFor } from './screen.ts';
import { shopOf } from './shop.ts';

/** `shop` may hold fewer buckles. */
export type SizeOne = (entry: Entry, shop: Shop) => Promise<SizeResult>;

/** Errors: more than one order. */
export async function whatIf(
  files: readonly string[],
  options: SizeOptions & { readonly whatIf: readonly string[] },
  { io, size }: { readonly io: CliIo; readonly size: SizeOne },
): Promise<ExitCode> {
  const { names } = await inputsOf(files, options, { io, command: 'size' });
  guardInputs(options.out, [...names, options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const { entry, changed } = await changes(names, options, { io, shop });
  const answers: WhatIf[] = [{ whatIf: undefined, result: await size(entry, shop) }];
  for (const { line, entry, only } of changed) {
    const buckles = shop.buckles.filter(({ id }) => only.length === 0 || only.includes(id));
    answers.push({ whatIf: line, result: await size(entry, { ...shop, buckles }) });
  }
  const useful = entry.ok || options.format === 'json' || options.format === 'csv';
  if (useful) await printViews(viewsOf(answers, options), options, io);
  else tellNotWritten(options.out, io);
  let told: ExitCode = exit.good;
  for (const each of [entry, ...changed.map((change) => change.entry)])
    told = worse(told, await tellFaults([each], io, errorColor));
  if (told !== exit.good) return told;
  const fails = answers.some(({ result }) => result.ok && result.advice.specs.length === 0);
  return fails ? exit.noSpec : exit.good;
}

interface Change {
  readonly line: string;
  readonly entry: Entry;
  /** Empty means all. */
  readonly only: readonly string[];
}

interface Changes {
  readonly entry: Entry;
  readonly changed: readonly Change[];
}

/** No changes when the order is unreadable. */
async function changes(
  names: readonly string[],
  options: SizeOptions & { readonly whatIf: readonly string[] },
  { io, shop }: { readonly io: CliIo; readonly shop: Shop },
): Promise<Changes> {
  const { say, whatIf } = options;
  const base = say === undefined ? await theOnly(names, io) : await loadedSay(say, shop);
  if ('ok' in base) return { entry: base, changed: [] };
  const entry = await saidEntry(base, options, io);
  if (!entry.ok) return { entry, changed: [] };
  const { readChanged } = await import('../order/said/order.ts');
  const buckles = shop.buckles.map(({ id }) => id);
  const changed = whatIf.map((line, i) => {
    const file = whatIf.length === 1 ? 'what-if' : `what-if ${String(i + 1)}`;
    const { buckles: only, ...read } = readChanged(base, { line, file, buckles });
    return { line, entry: read.ok ? { ...read, file: entry.file } : read, only };
  });
  return { entry, changed };
}

/** Errors: more than one order. */
async function theOnly(names: readonly string[], io: CliIo): Promise<Loaded | Entry> {
  const [name = ''] = names;
  const many = (what: string): CliFault =>
    new CliFault(`--what-if takes one order, ${what}`, { hint: 'Name one file with one order in it.' });
  if (names.length > 1) throw many(`not ${String(names.length)} files`);
  const file = fileLabel(name);
  const read = await readText(name, io);
  if (!read.ok) return unreadable(file, read);
  const { load } = await import('../yaml/load.ts');
  const { readOrders } = await import('../order/read-orders.ts');
  const [first, ...others] = load(read.text, file);
  if (others.length > 0) throw many(`${printable(file)} holds ${String(others.length + 1)}`);
  return first ?? (readOrders(read.text, file)[0] as Entry);
}

const viewsOf = (answers: readonly WhatIf[], { units, top }: SizeOptions): Views => ({
  sheets: async () => [(await import('../views/side-by-side-sheet.ts')).whatIfSheet(answers, units)],
  json: async () =>
    (await import('../views/size-data.ts')).whatIfJson(answers, { top, all: false, why: false }),
  csv: async () =>
    (await import('../views/size-data.ts')).whatIfCsv(answers, { top, all: false, why: false }),
});
