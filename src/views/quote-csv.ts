/** Quotes and invoices as a table for the bookkeeper: one row an order, its amounts add up, and so do columns. */
import { csvText, type Cell } from '../pages/csv.ts';
import { rounded } from '../pages/json.ts';
import type { Currency } from '../units/currency.ts';
import { amountText, sumOf, type Minor } from '../units/money.ts';
import { unreadNote } from '../words/unread-note.ts';
import type { PaperResult } from '../words/types.ts';
import type { Line, Part } from '../work/line.ts';
import type { Quote } from '../work/quote.ts';

/** Columns in order, each with what it holds. */
export const quoteColumns: Readonly<Record<string, string>> = {
  order: 'the order',
  customer: 'name of the customer',
  horse: 'name of the horse',
  file: 'the file it came from',
  outcome: 'quoted, invoiced, not added up, none, or not read',
  day: 'of the paper',
  valid_until: 'of the quote',
  quantity: 'cinches; amounts are for all',
  style: 'straight, high-flare or low-flare',
  strands: 'of each',
  length_in: 'of each',
  buckle: 'its id',
  currency: 'ISO 4217',
  materials: 'cord, buckles, percents of them',
  labor: 'tying',
  options: 'options',
  rush: 'rush',
  before_tax: 'their sum',
  tax: 'all taxes',
  total: 'before_tax and tax',
  deposit: 'deposit',
  balance: 'total less deposit',
  invoice: 'its number',
  paid: 'what was paid',
  due: 'total less paid',
  note: 'what is missing',
};

type Row = Partial<Record<string, Cell>>;

/** The table with its head. */
export function quotesCsv(results: readonly PaperResult<Quote>[]): string {
  const names = Object.keys(quoteColumns);
  return csvText([names, ...results.map(rowOf).map((row) => names.map((name) => row[name]))]);
}

function rowOf(result: PaperResult<Quote>): Row {
  const { order, file } = result;
  if (!result.ok) return { order, file, outcome: 'not read', note: unreadNote(result) };
  if (result.paper === undefined) return { order, file, outcome: 'none', note: result.none };
  return { file, ...quoteRow(result.paper) };
}

function quoteRow(quote: Quote): Row {
  const { order, day, validUntil, taken, price, invoice } = quote;
  const { style, strands, length, buckle } = taken.spec.candidate;
  return {
    order: order.order,
    customer: order.customer?.name,
    horse: order.horse.name,
    outcome: price.total === undefined ? 'not added up' : invoice === undefined ? 'quoted' : 'invoiced',
    day,
    valid_until: invoice === undefined ? validUntil : undefined,
    quantity: order.quantity,
    style,
    strands,
    length_in: rounded(length) ?? undefined,
    buckle: buckle.id,
    ...moneyCells(quote),
    note: price.missing.map(({ what }) => what).join('; '),
  };
}

/** Empty while anything has no price: a part of a sum is no sum. */
function moneyCells({ price, invoice }: Quote): Row {
  const { currency, lines, taxes, subtotal, total, deposit, balance } = price;
  if (currency === undefined || total === undefined) return { currency: currency?.code };
  const cell = (amount: Minor | undefined): Cell => amountCell(amount, currency);
  const part = (name: Part): Cell => cell(sumLines(lines.filter((line) => line.part === name)));
  return {
    currency: currency.code,
    materials: part('materials'),
    labor: part('labor'),
    options: part('options'),
    rush: part('rush'),
    before_tax: cell(subtotal),
    tax: cell(sumLines(taxes)),
    total: cell(total),
    deposit: cell(deposit),
    balance: cell(balance),
    invoice: invoice?.number,
    paid: cell(invoice?.paid),
    due: cell(invoice?.due),
  };
}

const sumLines = (lines: readonly Line[]): Minor => sumOf(lines.map(({ amount = 0 }) => amount));

/** With all its decimals; a negative one as a number, which no spreadsheet takes for a formula. */
function amountCell(amount: Minor | undefined, currency: Currency): Cell {
  if (amount === undefined) return undefined;
  const text = amountText(amount, currency);
  return amount < 0 ? Number(text) : text;
}
