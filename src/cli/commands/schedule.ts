/** `schedule`: when each order is tied, and what to promise. */
import { Option, type Command } from 'commander';
import type { Shop } from '../../order/types.ts';
import type { Agenda } from '../../work/agenda.ts';
import type { Asked, Promised } from '../../work/new-work.ts';
import { backlogOf, needAgenda, tellLeftOut, type Backlog } from '../backlog-orders.ts';
import { guardInputs } from '../emit.ts';
import { CliFault, printable, worse, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { day, formatOption, outOption, paperOption, shopOption } from '../options.ts';
import { orderFiles } from '../order-files.ts';
import type { Session } from '../program.ts';
import { guardPdf } from '../pdf.ts';
import { printViews, type Format } from '../print.ts';
import type { Paper } from '../../pages/pdf/document.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';

interface ScheduleOptions {
  format: Format;
  shop?: string;
  out?: string;
  paper?: Paper;
  color: boolean;
  from?: string;
  promise?: string;
  hours?: number;
}

const help = `
Hours, benches and days off come from the shop file, due days from the orders.
What is short is ordered on the first day and waited for (lead-days).
As few as possible run late, for certain with up to twelve due jobs; with
more, it says if fewer could. --promise says what moves.

  cinchwright schedule orders/ --format pdf --out week.pdf
  cinchwright schedule orders/ --promise new.yaml`;

/** Adds the command. */
export function addSchedule(program: Command, session: Session): void {
  program
    .command('schedule')
    .summary('who ties what, when, and what runs late')
    .description('Plans all orders on the benches: start and promise of each, and what runs late.')
    .argument('[paths...]', 'order files, folders with them, or patterns')
    .addOption(new Option('--from <day>', 'first day of work (default today)').argParser(day('--from')))
    .addOption(new Option('--promise <file>', 'when could this order be ready?'))
    .addOption(new Option('--hours <n>', 'when could this many hours of work be ready?').argParser(hours))
    .addOption(formatOption())
    .addOption(paperOption())
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', help)
    .action(async (paths: string[], _: unknown, command: Command) => {
      session.code = await printSchedule(paths, command.optsWithGlobals<ScheduleOptions>(), session.io);
    });
}

/** In minutes. Errors: not a number, zero, too many. */
function hours(text: string): number {
  const minutes = /^\d{1,4}(\.\d{1,4})?$/.test(text) ? Math.ceil(Number(text) * 60 - 1e-9) : NaN;
  if (minutes >= 1 && minutes <= 60_000) return minutes;
  throw new CliFault(`--hours takes a number up to 1000, such as 2.5, not "${printable(text)}"`);
}

async function printSchedule(
  paths: readonly string[],
  options: ScheduleOptions,
  io: CliIo,
): Promise<ExitCode> {
  if (options.promise !== undefined && options.hours !== undefined) {
    throw new CliFault('--promise takes its hours from the order: leave out --hours');
  }
  const files = await orderFiles(paths, io, 'schedule');
  guardPdf(options, io);
  guardInputs(options.out, [...files, options.shop, options.promise], io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  await needAgenda(shop);
  const from = options.from ?? io.today();
  const backlog = await backlogOf(files, { shop, day: from }, io);
  const { orders, results } = backlog;
  const { agendaOf } = await import('../../work/agenda.ts');
  const wanted = await wantedOf(options, { shop, day: from }, io);
  const before = agendaOf(orders, shop, { from, ordered: from });
  const { agenda, asked } = await withNew(before, wanted, options.hours);
  await printViews(
    {
      sheets: async () =>
        orders.length + asked.length === 0
          ? []
          : [(await import('../../views/schedule-sheet.ts')).scheduleSheet(agenda, asked, results)],
      csv: async () => (await import('../../views/schedule-data.ts')).scheduleCsv(agenda, asked, results),
      json: async () => (await import('../../views/schedule-data.ts')).scheduleJson(agenda, asked, results),
    },
    { ...options, day: from },
    io,
  );
  const codes = [await tellLeftOut(backlog, io, errorColor)];
  if (wanted !== undefined) codes.push(await tellLeftOut(wanted, io, errorColor));
  return codes.reduce(worse);
}

async function wantedOf(
  { promise }: ScheduleOptions,
  target: { shop: Shop; day: string },
  io: CliIo,
): Promise<Backlog | undefined> {
  return promise === undefined ? undefined : backlogOf([promise], target, io);
}

/** Promises each new order after those before it. */
async function withNew(
  agenda: Agenda,
  wanted: Backlog | undefined,
  minutes: number | undefined,
): Promise<{ agenda: Agenda; asked: Asked[] }> {
  const { promiseForOrder, promiseOn } = await import('../../work/new-work.ts');
  const steps: ((agenda: Agenda) => Promised)[] =
    minutes === undefined
      ? (wanted?.orders ?? []).map((order) => (before) => promiseForOrder(before, order))
      : [(before) => promiseOn(before, minutes)];
  let now = agenda;
  const asked = steps.map((step) => {
    const promised = step(now);
    now = promised.agenda;
    return promised.asked;
  });
  return { agenda: now, asked };
}
