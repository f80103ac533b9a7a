/** Quotes and invoices on random shops add up by decimal.js. */
import { Decimal } from 'decimal.js';
import { parse } from 'csv-parse/sync';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import type { Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { seededRandom, type Random } from '../../src/math/random.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { invoiceSheet } from '../../src/views/invoice-sheet.ts';
import { quotesCsv } from '../../src/views/quote-data.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import type { Quote } from '../../src/work/quote.ts';
import { cases } from '../support/cases.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { invoiceFor, quoteFor } from '../support/papers.ts';

const look = { units: 'in', itemized: true } as const;
const whole = (random: Random, most: number): number => Math.floor(random.uniform() * (most + 1));
const percent = (random: Random, most: number) => ({ over: whole(random, most * 100), under: 100 });

function shopFrom(random: Random): Shop {
  const price = (): number => whole(random, 9_999);
  return {
    ...defaultShop,
    buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, price: price() })),
    cords: defaultShop.cords.map((cord) => ({ ...cord, price: { by: 'foot', amount: whole(random, 200) } })),
    dees: defaultShop.dees.map((dee) => ({ ...dee, price: price() })),
    options: defaultShop.options.map((option) => ({ ...option, price: price() })),
    labor: { ...defaultShop.labor!, rate: price() },
    returns: percent(random, 30),
    deposit: random.uniform() < 0.2 ? undefined : percent(random, 100),
    rush: { percent: percent(random, 50), withinDays: whole(random, 60) },
    taxes: [
      { name: 'sales', percent: percent(random, 20), on: ['materials', 'options'] },
      { name: 'county', percent: percent(random, 5), on: ['materials', 'labor', 'options', 'rush'] },
    ],
    quoteDays: whole(random, 400),
  };
}

const orderFrom = (random: Random, quantity: number) =>
  orderOf({
    quantity,
    taken: '2026-11-20',
    due: '2026-12-18',
    saddle: { rigging: rigging('3/4'), ringToRing: 44 },
    options: random.uniform() < 0.5 ? ['center dees', 'initials'] : [],
    colors: { body: ['natural'], accent: ['rust'] },
  });

const random = seededRandom(20);
const drawn = Array.from({ length: cases(80, 2000) }, () => {
  const shop = shopFrom(random);
  const order = orderFrom(random, 1 + whole(random, 11));
  const paid = random.uniform() < 0.5 ? undefined : whole(random, 99_999);
  return { shop, order, paid, quote: quoteFor(order, shop), invoice: invoiceFor(order, shop, paid) };
});

const money = (minor: number | undefined): string => new Decimal(minor ?? NaN).div(100).toFixed(2);
const linesOf = ({ price }: Quote): number[] => [...price.lines, ...price.taxes].map(({ amount }) => amount!);

describe('amounts', () => {
  test('deposit and balance are the total, paid and due are, and both papers have the lines of one price', () => {
    for (const { quote, invoice, paid } of drawn) {
      const sum = linesOf(quote).reduce((all, amount) => all.plus(amount), new Decimal(0));
      const { total, deposit, balance } = quote.price;
      expect(sum.toNumber()).toBe(total);
      if (deposit !== undefined) expect(new Decimal(deposit).plus(balance!).toNumber()).toBe(total);
      expect(linesOf(invoice)).toEqual(linesOf(quote));
      expect(invoice.invoice.paid).toBe(paid ?? deposit ?? 0);
      expect(new Decimal(invoice.invoice.paid!).plus(invoice.invoice.due!).toNumber()).toBe(total);
      const text = sheetsMarkdown([invoiceSheet(invoice, look)]);
      const rest = money(Math.abs(invoice.invoice.due!));
      const due = invoice.invoice.due! < 0 ? `Refund due $${rest}` : `Due $${rest}`;
      expect(text).toContain(`Total $${money(total)}. Paid $${money(invoice.invoice.paid)}. ${due}.`);
    }
  });

  test('of several cinches: all that is counted is counted for each', () => {
    for (const { quote, shop, order } of drawn.slice(0, 40)) {
      const one = quoteFor({ ...order, quantity: 1 }, shop);
      const counted = (of: Quote): number[] =>
        of.price.lines.flatMap(({ part, count }) => (part === 'labor' || count === undefined ? [] : [count]));
      expect(counted(quote)).toEqual(counted(one).map((count) => count * order.quantity));
    }
  });
});

test('rows of the table add up, and columns to the sum of the papers', () => {
  const papers = drawn.flatMap(({ quote, invoice }) => [quote, invoice]);
  const results = papers.map(
    (paper) => ({ ok: true, file: 'f', order: 'T-1', paper, none: undefined }) as const,
  );
  const rows = parse<Record<string, string>>(quotesCsv(results), { columns: true });
  const sum = (row: Record<string, string>, names: readonly string[]): string =>
    names.reduce((all, name) => all.plus(row[name]!), new Decimal(0)).toFixed(2);
  expect(rows).toHaveLength(papers.length);
  rows.forEach((row, i) => {
    expect(Number(row['quantity'])).toBe(papers[i]!.order.quantity);
    expect(sum(row, ['materials_cost', 'labor_cost', 'options_cost', 'rush_cost'])).toBe(row['subtotal']);
    expect(sum(row, ['subtotal', 'tax'])).toBe(row['total']);
    if (row['deposit'] !== '') expect(sum(row, ['deposit', 'balance'])).toBe(row['total']);
    if (row['invoice'] !== '') expect(sum(row, ['paid', 'amount_due'])).toBe(row['total']);
  });
  const total = rows.reduce((all, row) => all.plus(row['total']!), new Decimal(0));
  expect(total.toFixed(2)).toBe(
    money(papers.reduce((all, { price }) => all.plus(price.total!), new Decimal(0)).toNumber()),
  );
});

// luxon: an independent calendar library.
test('days as customers read them, and the last day of a quote, are those of luxon', () => {
  for (const { quote, invoice, shop } of drawn) {
    const day = DateTime.fromISO(quote.day, { zone: 'utc' }).setLocale('en-US');
    const until = day.plus({ days: shop.quoteDays! });
    expect(quoteSheet(quote, look).about[0]).toBe(
      `${day.toFormat('MMM d, yyyy')}, good through ${until.toFormat('MMM d, yyyy')}.`,
    );
    const written = DateTime.fromISO(invoice.day, { zone: 'utc' }).setLocale('en-US');
    expect(invoiceSheet(invoice, look).about[0]).toBe(
      `${written.toFormat('MMM d, yyyy')}. For order T-1, taken ${day.toFormat('MMM d, yyyy')}.`,
    );
  }
});
