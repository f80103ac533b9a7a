/** `ticket`: all that the tier needs, as a paper for the bench. */
import type { Command } from 'commander';
import type { Ticket } from '../../paper/ticket.ts';
import { addPaper, type PaperKind } from '../paper.ts';
import type { Session } from '../program.ts';

const kind: PaperKind<Ticket> = {
  name: 'ticket',
  summary: 'write the bench ticket, for the tier',
  description:
    'Writes a bench ticket for each order: lengths, cut list, where bars and flare sit, order of work; no prices and nothing about the customer.',
  help: `
A ticket from a length that nobody measured says so at the top. Tied is what the
customer asked for, where it passes and is not poor at the elbow, else the first
spec; --spec 1 takes the first.

Examples:
  cinchwright ticket order.yaml
  cinchwright ticket order.yaml --spec 2 --units cm
  cinchwright ticket order.yaml --format html --out ticket.html`,
  make: async ({ day }) => {
    const { ticketOf } = await import('../../paper/ticket.ts');
    return { paper: ({ spec }, advice) => ticketOf(spec, advice, { day }) };
  },
  sheet: async ({ units }) => {
    const { ticketSheet } = await import('../../report/ticket-sheet.ts');
    return (ticket) => ticketSheet(ticket, units);
  },
  json: async () => (await import('../../report/paper-json.ts')).ticketsJson,
};

/** Adds the command. */
export function addTicket(program: Command, session: Session): void {
  addPaper(kind, program, session);
}
