/** The command `backlog` put together: inputs, journal, outputs, workers, and what is said at the end. */
import os from 'node:os';
import path from 'node:path';
import type { ColumnName } from '../../backlog/columns.ts';
import type { Shop } from '../../order/types.ts';
import { errorsHead, plural, summaryText } from '../../report/backlog-words.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { Collector } from './collect.ts';
import type { BacklogFormat } from './formats.ts';
import { Interrupt } from './interrupt.ts';
import { journalOf, type JournalFile } from './journal-file.ts';
import { checkOutputs, errorsTo, rowsTo } from './outputs.ts';
import { printerFor } from './printers.ts';
import { progressFor } from './progress.ts';
import { openJournal } from './resume.ts';
import { doAll } from './run.ts';
import { namedOrPiped, sourcesOf } from './sources.ts';
import { tasksOf } from './units.ts';

export interface BacklogOptions {
  readonly format: BacklogFormat;
  readonly columns?: readonly ColumnName[] | undefined;
  readonly units: 'in' | 'cm';
  readonly shop?: string;
  readonly out?: string;
  readonly errors?: string;
  readonly resume?: true;
  readonly jobs?: number;
  readonly color: boolean;
}

interface Scene {
  readonly io: CliIo;
  readonly shop: Shop;
  readonly journal: JournalFile | undefined;
  readonly interrupt: Interrupt;
}

/** Runs the command. Errors: the command line, the shop, a disk that takes no more. */
export async function backlog(
  paths: readonly string[],
  options: BacklogOptions,
  io: CliIo,
): Promise<ExitCode> {
  const names = namedOrPiped(paths, !io.stdinIsTerminal);
  checkOutputs(names, options, io);
  const shop = await shopOf(options.shop, io, colorFor(io, options.color, 'stderr'));
  const interrupt = new Interrupt();
  const journal = openJournal(options, shop, io);
  interrupt.listen();
  try {
    return await collected(names, options, { io, shop, journal, interrupt });
  } catch (error) {
    throw journal === undefined ? error : withWayOn(error, options);
  } finally {
    interrupt.release();
    journal?.close();
  }
}

async function collected(
  names: readonly string[],
  options: BacklogOptions,
  { io, shop, journal, interrupt }: Scene,
): Promise<ExitCode> {
  const at = (name: string): string => path.resolve(io.cwd, name);
  const own = [options.out, options.errors, options.shop].filter((name) => name !== undefined);
  const sources = await sourcesOf(names, { cwd: io.cwd, without: new Set(own.map(at)) });
  const now = (): number => Date.now();
  const output = rowsTo(options.out, io);
  const errors = errorsTo(options.errors, io);
  const seen = output.shown && io.stdoutIsTerminal;
  const sizes = sources.map(({ size }) => size);
  const all = sizes.some((size) => size === undefined)
    ? undefined
    : sizes.reduce<number>((a, b) => a + (b ?? 0), 0);
  const progress = progressFor(seen ? { ...io, stderrIsTerminal: false } : io, all, now);
  const printer = await printerFor(options, io);
  const collector = new Collector({ printer, output, errors, journal, now });
  try {
    output.write(printer.head);
    errors?.write(errorsHead());
    const whole = await doAll(tasksOf(sources, io), {
      shop,
      jobs: options.jobs,
      cores: os.availableParallelism(),
      journal,
      interrupt,
      collector,
      after: () => {
        progress.at(collector.orders, collector.bytes);
      },
    });
    progress.clear();
    if (!whole) return stopped(collector, options, { io, journal });
    const { orders } = collector.summary;
    output.write(printer.foot(orders.sized + orders.tight > 0));
    journal?.sync();
    errors?.finish();
    output.finish();
    journal?.remove();
    for (const name of [options.out, options.errors]) {
      if (name !== undefined && name !== '-') io.stderr(`wrote ${printable(name)}\n`);
    }
    io.stderr(summaryText(collector.summary, options.errors));
    return orders.faulty > 0 ? exit.input : orders['none fits'] > 0 ? exit.noSpec : exit.good;
  } catch (error) {
    progress.clear();
    throw error;
  } finally {
    output.drop();
    errors?.drop();
  }
}

function stopped(
  { orders }: Collector,
  { out = '' }: BacklogOptions,
  { io, journal }: Pick<Scene, 'io' | 'journal'>,
): ExitCode {
  journal?.sync();
  const kept =
    journal === undefined
      ? 'nothing is kept, since there is no --out FILE to go on with'
      : `${plural(orders, 'order is', 'orders are')} finished and kept in ${printable(journalOf(out))}`;
  io.stderr(`\ncinchwright: stopped; ${kept}\n`);
  if (journal !== undefined) io.stderr('To go on: the same command with --resume.\n');
  return exit.stopped;
}

/** Whatever went wrong, what is finished is not lost; a fault that is ours to explain says how to go on. */
function withWayOn(error: unknown, { out = '' }: BacklogOptions): unknown {
  if (!(error instanceof CliFault) || error.code === exit.usage) return error;
  const kept = `What is finished is kept in ${printable(journalOf(out))}.`;
  return new CliFault(error.message, {
    code: error.code,
    hint: `${kept} Mend that, then give the same command with --resume.`,
  });
}
