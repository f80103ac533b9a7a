/** `check`: how a wanted, current or named cinch suits. */
import type { Command } from 'commander';
import type { Checked } from '../../advice/check.ts';
import type { CinchAsked, Order, Shop } from '../../order/types.ts';
import { unreadSheet } from '../../pages/sheet.ts';
import type { ReportOptions } from '../../pages/page.ts';
import type { CheckResult } from '../../words/types.ts';
import { addCinchOptions, askedOf, overWants, type CinchOptions, type ToCheck } from '../asked-cinch.ts';
import type { Paper } from '../../pages/pdf/document.ts';
import { guardInputs, tellNotWritten } from '../emit.ts';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import { failed, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { formatOption, outOption, paperOption, shopOption, unitsOption } from '../options.ts';
import { tellFaults } from '../problems.ts';
import { guardPdf } from '../pdf.ts';
import { printViews, type Format, type Views } from '../print.ts';
import type { Session } from '../program.ts';
import { addSayOptions, inputsOf, type SayOptions } from '../said.ts';
import { colorFor, reportOptions } from '../screen.ts';
import { shopOf } from '../shop.ts';

interface CheckOptions extends CinchOptions, SayOptions {
  why?: true;
  format: Format;
  units: 'in' | 'cm';
  shop?: string;
  out?: string;
  paper?: Paper;
  color: boolean;
}

const examples = `
It judges what the order wants and its current cinch. With --style, --strands,
--buckle or --length it judges the cinch named, filled in from what is wanted.

  cinchwright check order.yaml
  cinchwright check order.yaml --style straight --strands 19
  cinchwright check --say "15.2 hh, 7/8, wants straight 25"
Exit 0 passes, 1 ruled out, 2 bad command, 3 bad file`;

/** Adds the command. */
export function addCheck(program: Command, session: Session): void {
  const command = program
    .command('check')
    .summary('judge the current cinch, or the one asked for')
    .description('Judges the current cinch, or the one asked for, and the smallest change that passes.')
    .argument('[files...]', 'order files');
  addCinchOptions(addSayOptions(command), 'judge')
    .option('--why', 'every check, and how each number was worked out')
    .addOption(formatOption())
    .addOption(paperOption())
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', examples)
    .action(async (files: string[], _: unknown, command: Command) => {
      session.code = await check(files, command.optsWithGlobals(), session.io);
    });
}

async function check(files: readonly string[], options: CheckOptions, io: CliIo): Promise<ExitCode> {
  const { names, readAll } = await inputsOf(files, options, { io, command: 'check' });
  guardPdf(options, io);
  guardInputs(options.out, [...names, options.shop], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const asked = await askedOf(options, shop);
  const entries = await readAll(shop);
  const results = await checkAll(entries, shop, asked);
  const empty = results.filter((result) => result.ok && result.checked.length === 0);
  const useful = results.length > empty.length;
  // Standard error already reports unreadable orders.
  const printed =
    options.format === 'table' ? results.some((result) => result.ok && result.checked.length > 0) : useful;
  if (printed) await printViews(viewsOf(results, reportOptions(options, io)), options, io);
  const told = await tellFaults(entries, io, errorColor);
  if (!printed) tellNotWritten(options.out, io);
  if (empty.length > 0) tellEmpty(empty, useful, io);
  if (told !== exit.good) return told;
  const { standingOf } = await import('../../words/about-check.ts');
  const fails = (result: CheckResult): boolean =>
    result.ok && result.checked.some((checked) => standingOf(checked) === 'refused');
  return results.some(fails) ? exit.noSpec : exit.good;
}

/** A note, or an error when no order names a cinch. */
function tellEmpty(empty: readonly CheckResult[], useful: boolean, io: CliIo): void {
  const names = empty.map((result) => (result.ok ? printable(result.advice.facts.order.order) : ''));
  const which = names.length === 1 ? `order ${names.join('')} names` : `orders ${names.join(', ')} name`;
  const message = `nothing to check: ${which} no cinch under "wants" or "current"`;
  const hint = 'Name one here, for example: --style straight --strands 19';
  if (!useful) throw new CliFault(message, { hint });
  io.stderr(`cinchwright: ${message}\n`);
}

async function checkAll(
  entries: readonly Entry[],
  shop: Shop,
  asked: CinchAsked | undefined,
): Promise<CheckResult[]> {
  const { sizeOrder } = await import('../../index.ts');
  const { checkCinch } = await import('../../advice/check.ts');
  return entries.map((entry): CheckResult => {
    if (!entry.ok) return failed(entry);
    const advice = sizeOrder(entry.order, shop);
    const checked = toCheck(entry.order, asked).map(({ which, cinch, kept }): Checked => ({
      ...checkCinch(cinch, which, advice),
      kept,
    }));
    return { ok: true, file: entry.file, advice, checked };
  });
}

function toCheck({ wants, current }: Order, asked: CinchAsked | undefined): ToCheck[] {
  if (asked !== undefined) return [overWants(asked, wants)];
  return [
    ...(wants === undefined ? [] : [{ which: 'wants', cinch: wants } as const]),
    ...(current === undefined ? [] : [{ which: 'current', cinch: current } as const]),
  ];
}

const viewsOf = (results: readonly CheckResult[], options: ReportOptions): Views => ({
  sheets: async () => {
    const { checkSheet } = await import('../../views/check-sheet.ts');
    return results.map((result) => (result.ok ? checkSheet(result, options) : unreadSheet(result)));
  },
  json: async () => (await import('../../views/check-data.ts')).checkJson(results),
  csv: async () => (await import('../../views/check-data.ts')).checkCsv(results),
});
