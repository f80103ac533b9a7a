/** `ask`: what to ask each customer, as a message too. */
import { Option, type Command } from 'commander';
import type { Shop } from '../../order/types.ts';
import type { AskedOrder } from '../../words/about-ask.ts';
import { progressFor, type Progress } from '../backlog/progress.ts';
import { emit, guardInputs, tellNotWritten } from '../emit.ts';
import { exit, printable, type ExitCode } from '../fault.ts';
import { failed, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { outOption, shopOption, unitsOption, whole, word } from '../options.ts';
import { orderFiles } from '../order-files.ts';
import { printViews, type Views } from '../print.ts';
import { tellFaults } from '../problems.ts';
import type { Session } from '../program.ts';
import { addSayOptions, inputsOf, type SayOptions } from '../said.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';

const formats = ['table', 'text', 'markdown', 'json', 'csv'] as const;

interface AskOptions extends SayOptions {
  format: (typeof formats)[number];
  units: 'in' | 'cm';
  shop?: string;
  out?: string;
  long?: boolean;
  draws: number;
  seed: number;
  color: boolean;
}

const help = `
The most useful question first; ring to ring before you cut cord. --format text
or markdown is the message to the customer: two questions at most, or --long.

  cinchwright ask order.yaml
  cinchwright ask order.yaml --format text
  cinchwright ask orders/ --format csv --out questions.csv`;

/** Adds the command. */
export function addAsk(program: Command, session: Session): void {
  const command = program
    .command('ask')
    .summary('what to ask the customer, ready to send')
    .description('Tells what to ask the customer, what each answer is worth, and writes the message.')
    .argument('[paths...]', 'order files, folders with them, or patterns');
  addSayOptions(command)
    .addOption(
      new Option('--format <name>', 'table, text or markdown (the message), json, csv')
        .default('table', 'table')
        .argParser(word('--format', formats)),
    )
    .addOption(
      new Option('--draws <n>', 'random readings per question (default 128)')
        .default(128)
        .argParser(whole('--draws', 4, 100_000)),
    )
    .addOption(
      new Option('--seed <n>', 'seed of those draws (default 1)')
        .default(1)
        .argParser(whole('--seed', 0, 999_999_999)),
    )
    .option('--long', 'the whole message: every question, every caution')
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', help)
    .action(async (paths: string[], _: unknown, command: Command) => {
      session.code = await ask(paths, command.optsWithGlobals<AskOptions>(), session.io);
    });
}

async function ask(paths: readonly string[], options: AskOptions, io: CliIo): Promise<ExitCode> {
  const { names, readAll } = await inputsOf(paths, options, { io, command: 'ask', find: orderFiles });
  guardInputs(options.out, [...names, options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const entries = await readAll(shop);
  const results = await askAll(entries, {
    shop,
    options,
    progress: progressFor(io, entries.length, Date.now),
  });
  const read = results.filter((result) => result.ok);
  const { format } = options;
  const isMessage = format === 'text' || format === 'markdown';
  const asking = read.filter(({ toAsk }) => toAsk.length > 0);
  // Standard error already reports unreadable orders.
  const useful = isMessage ? asking.length > 0 : format !== 'table' || read.length > 0;
  if (useful) {
    if (isMessage) emit(await messageOf(results, options), options.out, io);
    else await printViews(viewsOf(results, options), { ...options, format }, io);
  }
  const told = await tellFaults(entries, io, errorColor);
  if (!useful) tellNotWritten(options.out, io);
  if (isMessage) await tellSilent(read, io);
  if (isMessage || format === 'csv') await tellDoubts(read, io);
  if (told !== exit.good) return told;
  return read.some(({ result }) => result.advice.specs.length === 0) ? exit.noSpec : exit.good;
}

/** The clerk must see where tapes disagree. */
async function tellDoubts(read: readonly (AskedOrder & { ok: true })[], io: CliIo): Promise<void> {
  const { phraseText } = await import('../../units/text.ts');
  for (const { result } of read)
    for (const remark of result.advice.remarks)
      io.stderr(
        `cinchwright: order ${printable(result.advice.facts.order.order)}: ${phraseText(remark, 'in')}\n`,
      );
}

/** No questions: says why. */
async function tellSilent(read: readonly (AskedOrder & { ok: true })[], io: CliIo): Promise<void> {
  const { nothingText, thresholdText } = await import('../../words/about-ask.ts');
  const silent = read.filter(({ toAsk }) => toAsk.length === 0);
  for (const { result } of silent) {
    io.stderr(`cinchwright: order ${printable(result.advice.facts.order.order)}: ${nothingText(result)}\n`);
  }
  if (silent.length > 0) io.stderr(`${thresholdText()}\n`);
}

async function askAll(
  entries: readonly Entry[],
  { shop, options, progress }: { shop: Shop; options: AskOptions; progress: Progress },
): Promise<AskedOrder[]> {
  const { sizeOrder } = await import('../../index.ts');
  const { askAbout, toAsk } = await import('../../advice/ask.ts');
  const drawing = { strata: Math.ceil(options.draws / 2), seed: options.seed };
  const results = entries.map((entry, i): AskedOrder => {
    progress.at(i, i);
    if (!entry.ok) return failed(entry);
    const result = askAbout(sizeOrder(entry.order, shop), drawing);
    const { questions, photo } = toAsk(result);
    return { ok: true, file: entry.file, result, toAsk: questions, photo };
  });
  progress.clear();
  return results;
}

const viewsOf = (results: readonly AskedOrder[], { units }: AskOptions): Views => ({
  sheets: async () => (await import('../../views/ask-sheet.ts')).askSheets(results, units),
  json: async () => (await import('../../views/ask-data.ts')).askJson(results),
  csv: async () => (await import('../../views/ask-data.ts')).askCsv(results),
});

async function messageOf(
  results: readonly AskedOrder[],
  { format, long = false }: AskOptions,
): Promise<string> {
  const { askMessages } = await import('../../views/ask-message.ts');
  const { messagesMarkdown, messagesText } = await import('../../pages/messages.ts');
  return (format === 'text' ? messagesText : messagesMarkdown)(askMessages(results, long));
}
