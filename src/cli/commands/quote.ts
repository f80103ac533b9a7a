/** `quote`: what a cinch costs and when it can be ready, as a paper for the customer. */
import type { Command } from 'commander';
import type { Quote } from '../../paper/quote.ts';
import { addPaper, type PaperKind } from '../paper.ts';
import type { Session } from '../program.ts';

const kind: PaperKind<Quote> = {
  name: 'quote',
  summary: 'price the cinch that suits, for the customer',
  description:
    'Writes a quote for each order: the cinch that suits, what else would do, the price with its lines, and when it can be ready.',
  help: `
Prices, taxes, deposit, benches and house rules come from the shop file; what it
does not say is named in the quote.

Examples:
  cinchwright quote order.yaml
  cinchwright quote order.yaml --style straight --strands 19
  cinchwright quote order.yaml --format html --out quote.html
  cinchwright quote *.yaml --date 2026-12-01 --format json`,
  make: async () => {
    const { quoteOf } = await import('../../paper/quote.ts');
    return (spec, advice, day) => quoteOf(spec, advice, { day });
  },
  sheet: async () => (await import('../../report/quote-sheet.ts')).quoteSheet,
  json: async () => (await import('../../report/paper-json.ts')).quotesJson,
};

/** Adds the command. */
export function addQuote(program: Command, session: Session): void {
  addPaper(kind, program, session);
}
