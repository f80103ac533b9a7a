/** `learn`: what past outcomes say about the shop's model. */
import path from 'node:path';
import { Option, type Command } from 'commander';
import type { Learned } from '../../learn/learn.ts';
import type { Order, Shop } from '../../order/types.ts';
import type { Problem } from '../../yaml/problem.ts';
import { emit, guardInputs, sameFile } from '../emit.ts';
import type { Paper } from '../../pages/pdf/document.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import { fileLabel, readEntries, readText } from '../input.ts';
import type { CliIo } from '../io.ts';
import { day, formatOption, outOption, paperOption, shopOption } from '../options.ts';
import { guardPdf } from '../pdf.ts';
import { printViews, type Format, type Views } from '../print.ts';
import { realName } from '../files.ts';
import { orderFiles } from '../order-files.ts';
import { problemsOnStderr, tellFaults } from '../problems.ts';
import type { Session } from '../program.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { writeLearned } from '../write-learned.ts';

export interface LearnOptions {
  format: Format;
  orders: string[];
  shop?: string;
  out?: string;
  paper?: Paper;
  picture?: string;
  write?: string;
  inPlace?: true;
  date?: string;
  color: boolean;
}

const help = `
Each outcome names its order (of --orders), or horse and saddle, then the cinch,
days in use, and good, elbow-rub, buckle-rub, slipped, too-long or too-short.
See docs/learn.md. Nothing is written without --write or --in-place.

  cinchwright learn outcomes.yaml --orders orders/
  cinchwright learn outcomes.csv --shop shop.yaml --write shop-learned.yaml`;

/** Adds the command. */
export function addLearn(program: Command, session: Session): void {
  program
    .command('learn')
    .summary('what past cinches tell us')
    .description('Fits required clearance and stretch to past cinches; says if that predicts better.')
    .argument('<file>', 'outcomes, as YAML or CSV')
    .addOption(
      new Option('--orders <path>', 'orders the outcomes name; may be repeated')
        .default([], 'none')
        .argParser((named: string, all: string[]): string[] => [...all, named]),
    )
    .addOption(formatOption('csv'))
    .addOption(paperOption())
    .option('--picture <file>', 'draw rubs by clearance as SVG')
    .option('--write <file>', 'write what we recommend to a new shop file')
    .option('--in-place', 'write it into the shop file of --shop')
    .addOption(
      new Option('--date <day>', 'last day of the outcomes (default today)').argParser(day('--date')),
    )
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', help)
    .action(async (file: string, _: unknown, command: Command) => {
      session.code = await learn(file, command.optsWithGlobals<LearnOptions>(), session.io);
    });
}

async function learn(file: string, options: LearnOptions, io: CliIo): Promise<ExitCode> {
  guardOptions(file, options, io);
  guardPdf(options, io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const { orders, code } = await ordersOf(options.orders, io, errorColor);
  const read = await learnedFrom(file, { orders, shop }, io);
  if (!read.ok) {
    await problemsOnStderr(read.problems, io, errorColor);
    throw new CliFault(`the outcomes in ${printable(file)} have problems: nothing was learned`, {
      code: exit.input,
    });
  }
  const { learned } = read;
  const about = { file: fileLabel(file), day: options.date ?? io.today() };
  await printViews(viewsOf(learned, about), { ...options, day: about.day }, io);
  if (options.picture !== undefined) {
    emit((await import('../../views/learn-svg.ts')).learnSvg(learned), options.picture, io);
  }
  const written = await writeLearned(learned, { ...options, until: about.day }, io);
  return code !== exit.good ? code : written;
}

function guardOptions(file: string, options: LearnOptions, io: CliIo): void {
  const { out, picture, write, inPlace, shop } = options;
  if (inPlace === true && shop === undefined) {
    throw new CliFault('--in-place needs the shop file: --shop FILE');
  }
  if (inPlace === true && write !== undefined) {
    throw new CliFault('--write makes a new file and --in-place edits the old one: leave out one of them');
  }
  if (write !== undefined && shop !== undefined && sameFile(write, [shop], io) !== undefined) {
    throw new CliFault(`--write would write over ${printable(shop)}`, {
      hint: 'To put the numbers into the shop file itself: --in-place.',
    });
  }
  const inputs = [file, shop, ...options.orders];
  for (const target of [out, picture, write]) guardInputs(target, inputs, io);
  const targets = [out ?? '-', picture, write]
    .filter((name) => name !== undefined)
    .map((name) => (name === '-' ? name : realName(path.resolve(io.cwd, name))));
  if (new Set(targets).size < targets.length) {
    throw new CliFault('--out, --picture and --write need a file each', {
      hint: 'Without --out the sheet goes to standard output, which takes the only "-".',
    });
  }
}

/** Errors: two orders with one number. */
async function ordersOf(
  paths: readonly string[],
  io: CliIo,
  color: boolean,
): Promise<{ orders: ReadonlyMap<string, Order>; code: ExitCode }> {
  const orders = new Map<string, Order>();
  if (paths.length === 0) return { orders, code: exit.good };
  const entries = await readEntries(await orderFiles(paths, io, 'learn'), io);
  for (const entry of entries) {
    if (!entry.ok) continue;
    const { order } = entry.order;
    if (orders.has(order)) {
      throw new CliFault(`two orders have the number ${printable(order)}: which one do the outcomes mean?`, {
        code: exit.input,
      });
    }
    orders.set(order, entry.order);
  }
  return { orders, code: await tellFaults(entries, io, color) };
}

type Read = { ok: true; learned: Learned } | { ok: false; problems: readonly Problem[] };

async function learnedFrom(
  file: string,
  { orders, shop }: { orders: ReadonlyMap<string, Order>; shop: Shop },
  io: CliIo,
): Promise<Read> {
  const text = await readText(file, io);
  if (!text.ok) {
    throw new CliFault(`cannot read ${printable(fileLabel(file))}: ${text.why}`, { code: exit.input });
  }
  const { readOutcomes } = await import('../../order/read-outcomes.ts');
  const read = readOutcomes(text.text, fileLabel(file), /\.csv$/i.test(file) ? 'csv' : 'yaml');
  const { evidenceFrom, learnFrom, partFaults } = await import('../../learn/learn.ts');
  if (!read.ok) {
    const { inOrder } = await import('../../order/check.ts');
    const more = read.parts.flatMap((parts) => partFaults(parts, orders, shop));
    return { ok: false, problems: inOrder([...read.problems, ...more]) };
  }
  const found = evidenceFrom(read.outcomes, orders, shop);
  return found.ok ? { ok: true, learned: learnFrom(found.evidence, shop) } : found;
}

const viewsOf = (learned: Learned, about: { readonly file: string; readonly day: string }): Views => ({
  sheets: async () => [(await import('../../views/learn-sheet.ts')).learnSheet(learned, about)],
  json: async () => (await import('../../views/learn-data.ts')).learnJson(learned, about),
});
