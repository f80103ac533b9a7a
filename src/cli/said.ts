/** Orders from files, or one from --say. */
import type { Command } from 'commander';
import type { Loaded } from '../yaml/load.ts';
import type { Shop } from '../order/types.ts';
import { sameFile } from './emit.ts';
import { CliFault, printable } from './fault.ts';
import { namesOf, readEntries, type Entry } from './input.ts';
import type { CliIo } from './io.ts';
import { typed, writeOrder } from './write-order.ts';

export interface SayOptions {
  readonly say?: string;
  readonly save?: string;
  readonly force?: true;
  readonly out?: string;
}

/** --say and --save. */
export const addSayOptions = (command: Command): Command =>
  command
    .option('--say <words>', 'an order in words: "15.2 hh stock, 7/8, round, trail"')
    .option('--save <file>', 'save the --say order in a file');

export interface Inputs {
  readonly names: readonly string[];
  readonly readAll: (shop: Shop) => Promise<Entry[]>;
}

interface Asked {
  readonly command: string;
  /** Turns command line names into file names. */
  readonly find?: typeof namesOf | ((...asked: Parameters<typeof namesOf>) => Promise<readonly string[]>);
}

/** Errors: both ways at once, neither, --save without --say. */
export async function inputsOf(
  files: readonly string[],
  options: SayOptions,
  { io, command, find = namesOf }: Asked & { readonly io: CliIo },
): Promise<Inputs> {
  const { say, save, out } = options;
  if (say === undefined) {
    if (save !== undefined) throw new CliFault('--save goes with --say: an order in a file is already saved');
    const names = await find(files, io, command);
    return { names, readAll: () => readEntries(names, io) };
  }
  if (files.length > 0)
    throw new CliFault(`--say is the whole order: leave out ${printable(files[0] ?? '')}`, {
      hint: 'To change an order file for one run: cinchwright size order.yaml --what-if "3/4"',
    });
  if (save === '' || save === '-') throw new CliFault('--save needs the name of a file');
  if (save !== undefined && out !== undefined && sameFile(save, [out], io) !== undefined)
    throw new CliFault('--save and --out name the same file');
  return { names: [], readAll: async (shop) => [await saidEntry(await loadedSay(say, shop), options, io)] };
}

/** As a document. */
export async function loadedSay(line: string, shop: Shop): Promise<Loaded> {
  const { loadSaid } = await import('../order/said/order.ts');
  return loadSaid({ line, file: 'said', buckles: shop.buckles.map(({ id }) => id) });
}

/** Also saves it if asked and readable. */
export async function saidEntry(loaded: Loaded, { save, force }: SayOptions, io: CliIo): Promise<Entry> {
  const { readLoaded } = await import('../order/read-orders.ts');
  const { isBlock } = await import('../yaml/tree.ts');
  const entry = readLoaded(loaded);
  if (save === undefined || !entry.ok || !isBlock(loaded.tree)) return entry;
  const { filledOrder } = await import('../order/filled.ts');
  writeOrder({ file: save, text: filledOrder(loaded.tree), force, asked: '--save' }, io);
  io.stderr(`wrote ${printable(save)}: next time, cinchwright size ${typed(printable(save))}\n`);
  return entry;
}
