/** Runs `backlog`: inputs, outputs, the loop, the summary. */
import fs from 'node:fs';
import path from 'node:path';
import type { ColumnName } from '../../work/columns.ts';
import { summaryText } from '../../words/backlog-words.ts';
import { plural } from '../../units/phrase.ts';
import { tellNotWritten } from '../emit.ts';
import { exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import type { BacklogFormat } from './formats.ts';
import { beforeStop } from '../interrupt.ts';
import { checkOutputs, errorsTo, isFile, rowsTo } from './outputs.ts';
import { lookOf, printerFor } from './printers.ts';
import { noProgress, progressFor, type Progress } from './progress.ts';
import { rowsOfAll } from './run.ts';
import { Table } from './table.ts';
import { namedOrPiped, sourcesOf, type Source } from '../sources.ts';

export interface BacklogOptions {
  readonly format: BacklogFormat;
  readonly columns?: readonly ColumnName[] | undefined;
  readonly units: 'in' | 'cm';
  readonly shop?: string;
  readonly out?: string;
  readonly errors?: string;
  readonly color: boolean;
}

/** Errors: command line, shop, full disk. */
export async function backlog(
  paths: readonly string[],
  options: BacklogOptions,
  io: CliIo,
): Promise<ExitCode> {
  const names = namedOrPiped(paths, !io.stdinIsTerminal);
  checkOutputs(names, options, io);
  const shop = await shopOf(options.shop, io, colorFor(io, options.color, 'stderr'));
  const sources = await sourcesOf(names, { cwd: io.cwd, without: ownFiles(options, io) });
  if (sources.every(isMissing)) return nothingRead(sources, options, io);
  const printer = await printerFor(lookOf(options, io));
  const output = rowsTo(options.out, io);
  const progress = progressOf(sources, output.shown, io);
  const table = new Table({ printer, output, errors: errorsTo(options.errors, io) });
  const release = beforeStop(() => {
    progress.clear();
    table.drop();
    tellStopped(table, options, io);
  });
  try {
    table.begin();
    let bytes = 0;
    const took = (more: number): void => void (bytes += more);
    for await (const row of rowsOfAll(sources, { shop, io, took })) {
      table.add(row);
      progress.at(table.orders, bytes);
    }
    progress.clear();
    table.finish();
  } finally {
    release();
    progress.clear();
    table.drop();
  }
  return told(table, options, io);
}

const isMissing = ({ path: file, fault }: Source): boolean =>
  fault !== undefined || (file !== undefined && !fs.existsSync(file));

/** A mistyped name must not empty a good table. */
function nothingRead(sources: readonly Source[], { out }: BacklogOptions, io: CliIo): ExitCode {
  for (const { label, fault = 'there is no such file or folder' } of sources) {
    io.stderr(`cinchwright: ${printable(label)}: ${fault}\n`);
  }
  tellNotWritten(out, io);
  return exit.input;
}

function ownFiles({ out, errors, shop }: BacklogOptions, { cwd }: CliIo): ReadonlySet<string> {
  const own = [out, errors, shop].filter((name) => name !== undefined);
  return new Set(own.map((name) => path.resolve(cwd, name)));
}

/** Rows on screen are progress enough. */
function progressOf(sources: readonly Source[], shown: boolean, io: CliIo): Progress {
  let bytes: number | undefined = 0;
  for (const { size } of sources)
    bytes = size === undefined || bytes === undefined ? undefined : bytes + size;
  return shown && io.stdoutIsTerminal ? noProgress : progressFor(io, bytes, Date.now);
}

function told({ summary }: Table, { out, errors }: BacklogOptions, io: CliIo): ExitCode {
  for (const name of [out, errors]) {
    if (name !== undefined && name !== '-') io.stderr(`wrote ${printable(name)}\n`);
  }
  io.stderr(summaryText(summary, errors));
  if (summary.orders.faulty > 0) return exit.input;
  return summary.orders['none fits'] > 0 ? exit.noSpec : exit.good;
}

function tellStopped({ orders }: Table, { out }: BacklogOptions, io: CliIo): void {
  const kept = isFile(out) ? `; ${printable(out)} is unchanged` : '';
  io.stderr(`\ncinchwright: stopped after ${plural(orders, 'order')}${kept}\n`);
}
