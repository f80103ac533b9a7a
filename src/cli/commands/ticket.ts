/** `ticket`: all that the tier needs, as a paper for the bench. */
import type { Command } from 'commander';
import type { Ticket } from '../../work/ticket.ts';
import { addPaper, type PaperKind } from '../paper.ts';
import type { Session } from '../program.ts';

const kind: PaperKind<Ticket> = {
  name: 'ticket',
  summary: 'bench ticket, for the maker',
  description: 'Writes the bench ticket: lengths, cut list, bars, flare, order of work. No prices.',
  help: `
It takes what the customer asked for if that passes, else our pick; --spec 1
takes our pick. DO NOT CUT stands on top until ring to ring is taped.

  cinchwright ticket order.yaml
  cinchwright ticket order.yaml --spec 2 --units cm
  cinchwright ticket order.yaml --format html --out ticket.html`,
  make: async ({ day }) => {
    const { ticketOf } = await import('../../work/ticket.ts');
    return { paper: ({ spec }, advice) => ticketOf(spec, advice, { day }) };
  },
  sheet: async ({ units }) => {
    const { ticketSheet } = await import('../../views/ticket-sheet.ts');
    return (ticket) => ticketSheet(ticket, units);
  },
  json: async () => (await import('../../views/paper-json.ts')).ticketsJson,
};

/** Adds the command. */
export function addTicket(program: Command, session: Session): void {
  addPaper(kind, program, session);
}
