/** PDF papers read aloud, as PDF.js finds them. */
import { expect, test } from 'vitest';
import type { Block, Sheet } from '../../src/pages/sheet.ts';
import { careSheet } from '../../src/views/care-sheet.ts';
import { invoiceSheet } from '../../src/views/invoice-sheet.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { invoiceFor, pictureFor, quoteFor, ticketFor } from '../support/papers.ts';
import { printedOf } from '../support/print.ts';

const order = orderOf({ order: '2417', quantity: 2, saddle: { rigging: rigging('3/4'), ringToRing: 44 } });
const quoted = quoteFor(order);
const sheets: [string, Sheet][] = [
  ['a quote', quoteSheet(quoted, { units: 'in', itemized: false, picture: pictureFor(quoted) })],
  ['an itemized quote', quoteSheet(quoted, { units: 'in', itemized: true })],
  ['an invoice', invoiceSheet(invoiceFor(order), { units: 'in', itemized: true })],
  ['a ticket', ticketSheet(ticketFor(order), 'in')],
  ['a care card', careSheet(ticketFor(order), 'in')],
];

test.each(sheets)('%s can be read aloud: tags, language, title', async (_, sheet) => {
  const { pages, marked, language, info } = await printedOf([sheet]);
  expect([marked, language, info['Title']]).toEqual([true, 'en', sheet.title]);
  const roles = pages.flatMap((page) => page.roles);
  const count = (role: string): number => roles.filter((each) => each === role).length;
  expect(roles.slice(0, 4)).toEqual(['Root', 'Document', 'Art', 'H1']);
  expect(count('H1')).toBe(1);
  const blocks = sheet.blocks.flatMap((block) => (block.kind === 'beside' ? block.blocks : [block]));
  const all = (kind: Block['kind']): Block[] => blocks.filter((block) => block.kind === kind);
  expect(count('H2')).toBe(all('heading').length);
  // A list over two pages counts on both.
  expect(count('L')).toBeGreaterThanOrEqual(all('list').length + all('boxes').length);
  expect(count('Table')).toBeGreaterThanOrEqual(all('table').length + all('pairs').length);
  const figures = roles.filter((role) => role.startsWith('Figure'));
  const alts = sheet.blocks.flatMap((block) =>
    block.kind === 'beside' ? [`Figure: ${block.picture.about}`] : [],
  );
  expect(figures).toEqual(alts);
});
