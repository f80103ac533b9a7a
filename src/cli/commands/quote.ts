/** `quote`: what a cinch costs and when it can be ready. */
import { Option, type Command } from 'commander';
import type { Advice } from '../../advice/advice.ts';
import type { PromiseWindow } from '../../work/promise.ts';
import { minorOf, moneyText, readAmount } from '../../units/money.ts';
import type { Quote, Written } from '../../work/quote.ts';
import type { Taken } from '../../work/taken.ts';
import { CliFault, didYouMean, exit, printable, type ExitCode } from '../fault.ts';
import { addPaper, type PaperKind, type Source } from '../paper.ts';
import type { Session } from '../program.ts';
import { colorFor } from '../screen.ts';

const kind: PaperKind<Quote> = {
  name: 'quote',
  summary: 'the price, or the invoice, for the customer',
  description: 'Writes the quote, or the invoice, for the customer: the cinch and its price.',
  help: `
Prices and taxes come from the shop file. It quotes what the customer asked for
if that passes, else our pick; --spec 1 takes our pick. An invoice has the
prices of the day the order was taken. CSV is one row per order.

  cinchwright quote order.yaml --itemized --out quote.html
  cinchwright quote new.yaml --backlog orders/
  cinchwright quote order.yaml --invoice 1041 --paid 50.00 --out 1041.pdf`,
  extra: [
    new Option('--itemized', 'every line of the price'),
    new Option('--backlog <paths...>', 'plan around these orders'),
    new Option('--invoice <number>', 'invoice what was tied, with this number'),
    new Option('--paid <amount>', 'paid so far, such as 50.00 (default the deposit)'),
  ],
  make: async (source) => {
    const { quoteOf } = await import('../../work/quote.ts');
    const { day } = source;
    const invoice = invoiceAsked(source);
    const { windowOf, code } = await besideBacklog(source);
    return {
      paper: (taken, advice) => {
        const promise = windowOf && (windowOf(taken, advice) ?? 'none');
        return quoteOf(taken, advice, { day, promise, invoice });
      },
      code,
    };
  },
  lacking: ({ price: { missing } }) =>
    missing.map(
      ({ what, where, file = 'shop' }) =>
        `the quote cannot be added up without ${what} (in the ${file} file, under ${where})`,
    ),
  assumed: ({ invoice, price: { currency } }) =>
    invoice?.paid === undefined || currency === undefined || invoice.isPaidSaid
      ? []
      : [`${moneyText(invoice.paid, currency)} counted as paid, the deposit; change it with --paid`],
  sheet: async ({ units, itemized = false, format }) => {
    const { quoteSheet } = await import('../../views/quote-sheet.ts');
    const { invoiceSheet } = await import('../../views/invoice-sheet.ts');
    const isPage = format === 'html' || format === 'pdf';
    const draw = isPage ? (await import('../../draw/small.ts')).smallPicture : undefined;
    return (quote) => {
      const { invoice, taken, facts } = quote;
      if (invoice !== undefined) return invoiceSheet({ ...quote, invoice }, { units, itemized });
      const picture = draw?.(taken.spec.candidate, facts, units);
      return quoteSheet(quote, { units, itemized, picture });
    };
  },
  text: async ({ units }) => {
    const { quoteMessages } = await import('../../views/quote-message.ts');
    const { messagesText } = await import('../../pages/messages.ts');
    return (results) => messagesText(quoteMessages(results, units));
  },
  csv: async () => (await import('../../views/quote-data.ts')).quotesCsv,
  json: async () => (await import('../../views/quote-data.ts')).quotesJson,
};

/** Errors: one number for several invoices, a bad --paid. */
function invoiceAsked({ options, shop, count }: Source): Written['invoice'] {
  const { invoice: number, paid: text } = options;
  if (number === undefined) {
    if (text !== undefined) throw new CliFault('--paid goes with --invoice');
    return undefined;
  }
  if (count !== 1) throw new CliFault('--invoice takes one order: every invoice has its own number');
  if (text === undefined) return { number, paid: undefined };
  const read = readAmount(text);
  const { currency } = shop;
  const paid = read.ok && currency !== undefined ? minorOf(text, currency) : undefined;
  if (paid !== undefined) return { number, paid };
  const hint = read.ok ? undefined : didYouMean(read.suggestion);
  throw new CliFault(`--paid takes an amount such as 50.00, not "${printable(text)}"`, { hint });
}

interface Beside {
  /** Only with a backlog. */
  readonly windowOf?: (taken: Taken, advice: Advice) => PromiseWindow | undefined;
  readonly code: ExitCode;
}

/** From the next day, with a backlog on the benches. */
async function besideBacklog({ options, io, shop, day }: Source): Promise<Beside> {
  if (options.backlog === undefined) return { code: exit.good };
  const { backlogOf, needAgenda, tellLeftOut } = await import('../backlog-orders.ts');
  const { orderFiles } = await import('../order-files.ts');
  const { agendaOf } = await import('../../work/agenda.ts');
  const { windowBeside } = await import('../../work/new-work.ts');
  const { ticketOf } = await import('../../work/ticket.ts');
  const { minutesOf } = await import('../../work/bill.ts');
  const { daysAfter } = await import('../../units/days.ts');
  await needAgenda(shop);
  const backlog = await backlogOf(await orderFiles(options.backlog, io, 'quote'), { shop, day }, io);
  const agenda = agendaOf(backlog.orders, shop, { from: daysAfter(day, 1), ordered: day });
  return {
    windowOf: ({ spec }, advice) => {
      const { order } = advice.facts;
      const minutes = minutesOf(spec.candidate, order, shop.labor);
      const ticket = ticketOf(spec, advice, { day });
      return windowBeside(agenda, {
        order,
        candidate: spec.candidate,
        minutes,
        ticket,
        doubts: advice.remarks,
        welfare: advice.welfare,
      });
    },
    code: await tellLeftOut(backlog, io, colorFor(io, options.color, 'stderr')),
  };
}

/** Adds the command. */
export function addQuote(program: Command, session: Session): void {
  addPaper(kind, program, session);
}
