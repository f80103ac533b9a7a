/** `quote`: what a cinch costs and when it can be ready, as a paper for the customer. */
import { Option, type Command } from 'commander';
import type { Advice } from '../../advice/advice.ts';
import type { PromiseWindow } from '../../work/promise.ts';
import type { Quote } from '../../work/quote.ts';
import type { Taken } from '../../work/taken.ts';
import { exit, type ExitCode } from '../fault.ts';
import { addPaper, type PaperKind, type Source } from '../paper.ts';
import type { Session } from '../program.ts';
import { colorFor } from '../screen.ts';

const kind: PaperKind<Quote> = {
  name: 'quote',
  summary: 'the price, for the customer',
  description: 'Writes the quote for the customer: the cinch, the price, and when it is ready.',
  help: `
Prices, taxes, benches and house rules come from the shop file. It quotes what
the customer asked for if that passes, else our pick; --spec 1 takes our pick.

  cinchwright quote order.yaml
  cinchwright quote order.yaml --itemized --out quote.html
  cinchwright quote new.yaml --backlog orders/`,
  extra: [
    new Option('--itemized', 'every line of the price'),
    new Option('--backlog <paths...>', 'plan around the work of these orders'),
  ],
  make: async (source) => {
    const { quoteOf } = await import('../../work/quote.ts');
    const { day } = source;
    const { windowOf, code } = await besideBacklog(source);
    return {
      paper: (taken, advice) => {
        const promise = windowOf && (windowOf(taken, advice) ?? 'none');
        return quoteOf(taken, advice, { day, promise });
      },
      code,
    };
  },
  lacking: ({ price: { missing } }) =>
    missing.map(
      ({ what, where }) => `the quote cannot be added up without ${what} (in the shop file, under ${where})`,
    ),
  sheet: async ({ units, itemized = false }) => {
    const { quoteSheet } = await import('../../views/quote-sheet.ts');
    return (quote) => quoteSheet(quote, { units, itemized });
  },
  json: async () => (await import('../../views/paper-json.ts')).quotesJson,
};

interface Beside {
  /** Undefined when no backlog is given. */
  readonly windowOf?: (taken: Taken, advice: Advice) => PromiseWindow | undefined;
  readonly code: ExitCode;
}

/** When a quoted cinch can be ready with the work of a backlog on the benches, from the next day on. */
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
    windowOf: ({ spec: { candidate } }, advice) => {
      const { order } = advice.facts;
      const minutes = minutesOf(candidate, order, shop.labor);
      const ticket = ticketOf({ candidate }, advice, { day });
      return windowBeside(agenda, { order, candidate, minutes, ticket });
    },
    code: await tellLeftOut(backlog, io, colorFor(io, options.color, 'stderr')),
  };
}

/** Adds the command. */
export function addQuote(program: Command, session: Session): void {
  addPaper(kind, program, session);
}
