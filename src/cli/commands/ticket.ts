/** `ticket`: all the maker needs at the bench. */
import { Option, type Command } from 'commander';
import type { Ticket } from '../../work/ticket.ts';
import { CliFault } from '../fault.ts';
import { addPaper, type PaperKind } from '../paper.ts';
import type { Session } from '../program.ts';

const kind: PaperKind<Ticket> = {
  name: 'ticket',
  summary: 'bench ticket, for the maker; care card',
  description: 'Writes the bench ticket: lengths, cut list, bars, flare, order of work. No prices.',
  help: `
It takes what the customer asked for if that passes, else our pick; --spec 1
takes our pick. DO NOT CUT is on top until ring to ring is taped. --care is
the page the customer gets with the cinch.

  cinchwright ticket order.yaml
  cinchwright ticket order.yaml --spec 2 --units cm
  cinchwright ticket order.yaml --format html --out ticket.html
  cinchwright ticket order.yaml --care --out care.pdf`,
  extra: [new Option('--care', "the customer's care card instead")],
  make: async ({ day, options }) => {
    if (options.care === true && options.format === 'json')
      throw new CliFault('--care is a page: it has no JSON');
    const { ticketOf } = await import('../../work/ticket.ts');
    return { paper: ({ spec }, advice) => ticketOf(spec, advice, { day }) };
  },
  sheet: async ({ units, care }) => {
    if (care === true) {
      const { careSheet } = await import('../../views/care-sheet.ts');
      return (ticket) => careSheet(ticket, units);
    }
    const { ticketSheet } = await import('../../views/ticket-sheet.ts');
    return (ticket) => ticketSheet(ticket, units);
  },
  json: async () => (await import('../../views/ticket-data.ts')).ticketsJson,
};

/** Adds the command. */
export function addTicket(program: Command, session: Session): void {
  addPaper(kind, program, session);
}
