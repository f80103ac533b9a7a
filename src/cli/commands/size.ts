/** `size`: which cinches suit each order, with reasons. */
import { Option, type Command } from 'commander';
import type { Advice } from '../../advice/advice.ts';
import type { Simulated } from '../../advice/simulate.ts';
import type { Shop } from '../../order/types.ts';
import { unreadSheet } from '../../pages/sheet.ts';
import type { ReportOptions } from '../../pages/page.ts';
import type { SizeResult } from '../../words/types.ts';
import type { Paper } from '../../pages/pdf/document.ts';
import { guardInputs, tellNotWritten } from '../emit.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import { failed, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { formatOption, outOption, paperOption, shopOption, unitsOption, whole } from '../options.ts';
import { tellFaults } from '../problems.ts';
import { guardPdf } from '../pdf.ts';
import { printViews, type Format, type Views } from '../print.ts';
import type { Session } from '../program.ts';
import { addSayOptions, inputsOf, type SayOptions } from '../said.ts';
import { colorFor, reportOptions } from '../screen.ts';
import { shopOf } from '../shop.ts';
import type { SizeOne } from '../what-if.ts';

const usualDraws = 20_000;
export const mostDraws = 1_000_000;
const mostSimulated = 10;

export interface SizeOptions extends SayOptions {
  whatIf?: readonly string[];
  sideBySide?: true;
  top: number;
  why?: true;
  all?: true;
  format: Format;
  units: 'in' | 'cm';
  shop?: string;
  simulate?: number | true;
  seed?: number;
  out?: string;
  paper?: Paper;
  color: boolean;
}

type Drawn = Partial<Pick<SizeOptions, 'simulate' | 'seed' | 'top' | 'all' | 'format'>>;

const examples = `
No file, or "-", reads standard input. A file may hold several orders.

  cinchwright size *.yaml --format csv --out sizes.csv
  cinchwright size --say "15-2 stock, full double, rolls" --save order.yaml
  cinchwright size order.yaml --what-if "3/4" --what-if "another saddle, full"
  cinchwright size wren.yaml marble.yaml --side-by-side
Exit 0 sized, 1 no cinch passes, 2 bad command, 3 bad file (others still sized)`;

/** Adds the command. */
export function addSize(program: Command, session: Session): void {
  const command = program
    .command('size')
    .summary('which cinch to tie, and why')
    .description('Picks the cinch to tie for each order: what, why, and what to measure next.')
    .argument('[files...]', 'order files');
  addSayOptions(command)
    .option(
      '--what-if <words>',
      'the order with changes, side by side',
      (words: string, others: readonly string[] | undefined) => [...(others ?? []), words],
    )
    .option('--side-by-side', 'several orders, one column each, differences marked')
    .addOption(
      new Option('--top <n>', 'list this many (default 3)').default(3).argParser(whole('--top', 1, 999)),
    )
    .option('--why', 'every check, and how each number was worked out')
    .option('--all', 'every cinch that passes, and every one ruled out')
    .addOption(formatOption())
    .addOption(paperOption())
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(simulateOption())
    .addOption(
      new Option('--seed <n>', 'seed of those draws (default 1)').argParser(whole('--seed', 0, 999_999_999)),
    )
    .addOption(outOption())
    .addHelpText('after', examples)
    .action(async (files: string[], _: unknown, command: Command) => {
      session.code = await size(files, command.optsWithGlobals(), session.io);
    });
}

function simulateOption(): Option {
  const read = whole('--simulate', 100, mostDraws);
  return new Option(
    '--simulate [draws]',
    `test the chance with random draws (${String(usualDraws)} if left out)`,
  ).argParser((text: string): number => {
    if (/^\d+$/.test(text)) return read(text);
    // The parser takes the next word, often a file.
    throw new CliFault(`--simulate takes a number of draws, not "${printable(text)}"`, {
      hint: `Put the files first, or write --simulate=${String(usualDraws)}.`,
    });
  });
}

/** Errors: options that conflict. */
export async function size(files: readonly string[], options: SizeOptions, io: CliIo): Promise<ExitCode> {
  if (options.seed !== undefined && options.simulate === undefined) {
    throw new CliFault('--seed goes with --simulate: nothing else is drawn at random');
  }
  const { whatIf, sideBySide } = options;
  if (whatIf !== undefined || sideBySide === true) guardBeside(options);
  if (whatIf !== undefined) {
    const size: SizeOne = (entry, shop) => sizeOne(entry, shop, options);
    return (await import('../what-if.ts')).whatIf(files, { ...options, whatIf }, { io, size });
  }
  const { names, readAll } = await inputsOf(files, options, { io, command: 'size' });
  guardPdf(options, io);
  guardInputs(options.out, [...names, options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const entries = await readAll(shop);
  const results = await sizeAll(entries, shop, options);
  // Standard error already reports unreadable orders.
  const useful = options.format !== 'table' || results.some(({ ok }) => ok);
  if (useful) await printViews(viewsOf(results, { ...reportOptions(options, io), sideBySide }), options, io);
  const told = await tellFaults(entries, io, errorColor);
  if (!useful) tellNotWritten(options.out, io);
  if (told !== exit.good) return told;
  return results.some((result) => result.ok && result.advice.specs.length === 0) ? exit.noSpec : exit.good;
}

async function sizeAll(entries: readonly Entry[], shop: Shop, options: SizeOptions): Promise<SizeResult[]> {
  const results: SizeResult[] = [];
  for (const entry of entries) results.push(await sizeOne(entry, shop, options));
  return results;
}

/** With random draws when asked. */
export async function sizeOne(entry: Entry, shop: Shop, options: Drawn): Promise<SizeResult> {
  if (!entry.ok) return failed(entry);
  const { sizeOrder } = await import('../../index.ts');
  const { checkCinch } = await import('../../advice/check.ts');
  const advice = sizeOrder(entry.order, shop);
  const { wants } = entry.order;
  return {
    ok: true,
    file: entry.file,
    advice,
    wants: wants === undefined ? undefined : checkCinch(wants, 'wants', advice),
    simulated: await simulatedFor(advice, options),
  };
}

async function simulatedFor(advice: Advice, options: Drawn): Promise<readonly Simulated[] | undefined> {
  const { simulate, seed = 1, top = 3, all } = options;
  if (simulate === undefined) return undefined;
  const { simulateClearance } = await import('../../advice/simulate.ts');
  const shown = all === true ? mostSimulated : Math.min(top, mostSimulated);
  const draws = simulate === true ? usualDraws : simulate;
  return advice.specs
    .slice(0, shown)
    .map(({ candidate }) => simulateClearance(candidate, advice.facts, { draws, seed }));
}

/** Errors: an option too wide for a column. */
function guardBeside({ whatIf, why, all, simulate }: SizeOptions): void {
  const found = [why && '--why', all && '--all', simulate && '--simulate'].find((each) => each !== undefined);
  if (found === undefined) return;
  const asked = whatIf === undefined ? '--side-by-side' : '--what-if';
  throw new CliFault(`${asked} puts answers side by side: leave out ${String(found)}`);
}

type Shown = ReportOptions & { readonly sideBySide: true | undefined };

const viewsOf = (results: readonly SizeResult[], options: Shown): Views => ({
  sheets: async () => {
    if (options.sideBySide === true)
      return [(await import('../../views/side-by-side-sheet.ts')).sideBySideSheet(results, options.units)];
    const { sizeSheet } = await import('../../views/size-sheet.ts');
    return results.map((result) => (result.ok ? sizeSheet(result, options) : unreadSheet(result)));
  },
  json: async () => (await import('../../views/size-data.ts')).sizeJson(results, options),
  csv: async () => (await import('../../views/size-data.ts')).sizeCsv(results, options),
});
