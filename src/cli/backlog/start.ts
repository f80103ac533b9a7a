/** The command `backlog` put together: inputs, journal, outputs, workers, and what is said at the end. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { ColumnName } from '../../backlog/columns.ts';
import type { Shop } from '../../order/types.ts';
import { errorsHead, summaryText } from '../../report/backlog-words.ts';
import { plural } from '../../units/phrase.ts';
import { tellNotWritten } from '../emit.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { Collector } from './collect.ts';
import type { BacklogFormat } from './formats.ts';
import { hold } from './held.ts';
import { Interrupt } from './interrupt.ts';
import { journalOf, type JournalFile } from './journal-file.ts';
import { checkOutputs, errorsTo, isFile, rowsTo } from './outputs.ts';
import { lookOf, printerFor } from './printers.ts';
import { noProgress, progressFor, type Progress } from './progress.ts';
import { openJournal } from './resume.ts';
import { doAll } from './run.ts';
import { namedOrPiped, sourcesOf, type Source } from '../sources.ts';
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
  // A heap that may grow to twice what is in use does so: with a journal of 80 000 orders that is 300 MB instead of 262.
  process.getBuiltinModule('node:v8').setFlagsFromString('--heap-growing-percent=25');
  const held: (() => void)[] = [];
  try {
    for (const name of [options.out, options.errors])
      if (isFile(name)) held.push(hold(path.resolve(io.cwd, name), name));
    return await journaled(names, options, { io, shop });
  } finally {
    for (const letGo of held) letGo();
  }
}

async function journaled(
  names: readonly string[],
  options: BacklogOptions,
  { io, shop }: Pick<Scene, 'io' | 'shop'>,
): Promise<ExitCode> {
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

async function collected(names: readonly string[], options: BacklogOptions, scene: Scene): Promise<ExitCode> {
  const { io, shop, journal, interrupt } = scene;
  const sources = await sourcesOf(names, { cwd: io.cwd, without: ownFiles(options, io) });
  if (sources.every(isMissing)) {
    journal?.removeIfNew();
    return nothingRead(sources, options, io);
  }
  const now = (): number => Date.now();
  const output = rowsTo(options.out, io);
  const errors = errorsTo(options.errors, io);
  const look = lookOf(options, io);
  const printer = await printerFor(look);
  const collector = new Collector({ printer, output, errors, journal, now });
  const progress = progressOf(sources, output.shown, { io, now });
  const after = (): void => {
    progress.at(collector.orders, collector.bytes);
  };
  try {
    output.write(printer.head);
    errors?.write(errorsHead());
    const cores = os.availableParallelism();
    const by = { shop, look, print: journal?.print };
    const plan = { by, jobs: options.jobs, cores, journal, interrupt, collector, after };
    const whole = await doAll(tasksOf(sources, io), plan);
    progress.clear();
    if (!whole) return stopped(collector, options, scene);
    const { orders } = collector.summary;
    output.write(printer.foot(orders.sized + orders.tight > 0, collector.orders > 0));
    journal?.sync();
    errors?.finish();
    output.finish();
    journal?.remove();
  } finally {
    progress.clear();
    output.drop();
    errors?.drop();
  }
  return told(collector, options, io);
}

const isMissing = ({ path: file, fault }: Source): boolean =>
  fault !== undefined || (file !== undefined && !fs.existsSync(file));

/** A name typed wrong must not replace a good table by one that is empty. */
function nothingRead(sources: readonly Source[], { out }: BacklogOptions, io: CliIo): ExitCode {
  for (const { label, fault = 'there is no such file or folder' } of sources) {
    io.stderr(`cinchwright: ${printable(label)}: ${fault}\n`);
  }
  tellNotWritten(out, io);
  return exit.input;
}

/** What this run writes or goes by is no order, even where it lies among them. */
function ownFiles({ out, errors, shop }: BacklogOptions, { cwd }: CliIo): ReadonlySet<string> {
  const journal = isFile(out) ? journalOf(out) : undefined;
  const own = [out, errors, shop, journal].filter((name) => name !== undefined);
  return new Set(own.map((name) => path.resolve(cwd, name)));
}

/** Rows that run over the screen show by themselves how far it is. */
function progressOf(
  sources: readonly Source[],
  shown: boolean,
  { io, now }: { io: CliIo; now: () => number },
): Progress {
  let bytes: number | undefined = 0;
  for (const { size } of sources)
    bytes = size === undefined || bytes === undefined ? undefined : bytes + size;
  return shown && io.stdoutIsTerminal ? noProgress : progressFor(io, bytes, now);
}

/** Says what it came to; the exit code of the worst. */
function told({ summary }: Collector, { out, errors }: BacklogOptions, io: CliIo): ExitCode {
  for (const name of [out, errors]) {
    if (name !== undefined && name !== '-') io.stderr(`wrote ${printable(name)}\n`);
  }
  io.stderr(summaryText(summary, errors));
  if (summary.orders.faulty > 0) return exit.input;
  return summary.orders['none fits'] > 0 ? exit.noSpec : exit.good;
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
