/** Quotes and invoices for the bookkeeper: one row per order, amounts and columns add up. */
import type { Cell } from '../pages/csv.ts';
import { rounded } from '../pages/json.ts';
import type { Currency } from '../units/currency.ts';
import { amountText, type Minor } from '../units/money.ts';
import type { Name } from '../words/names.ts';
import type { PaperResult } from '../words/types.ts';
import { sumLines, type Part } from '../work/line.ts';
import type { Quote } from '../work/quote.ts';
import { failedRow } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

export const quoteColumns: readonly Name[] = [
  'order',
  'customer',
  'horse',
  'file',
  'day',
  'validUntil',
  'quantity',
  'style',
  'strands',
  'length',
  'buckle',
  'currency',
  'materialsCost',
  'laborCost',
  'optionsCost',
  'rushCost',
  'subtotal',
  'tax',
  'total',
  'deposit',
  'balance',
  'invoice',
  'paid',
  'amountDue',
  'reason',
  'problem',
];

/** The table with its head. */
export const quotesCsv = (results: readonly PaperResult<Quote>[]): string =>
  tableCsv(quoteColumns, results.map(rowOf));

function rowOf(result: PaperResult<Quote>): Values {
  const { order, file } = result;
  if (!result.ok) return failedRow(result);
  if (result.paper === undefined) return { order, file, reason: result.none };
  return { file, ...quoteRow(result.paper) };
}

function quoteRow(quote: Quote): Values {
  const { order, day, validUntil, taken, price, invoice } = quote;
  const { style, strands, length, buckle } = taken.spec.candidate;
  return {
    order: order.order,
    customer: order.customer?.name,
    horse: order.horse.name,
    day,
    validUntil: invoice === undefined ? validUntil : undefined,
    quantity: order.quantity,
    style,
    strands,
    length: rounded(length),
    buckle: buckle.id,
    ...moneyCells(quote),
    reason: price.missing.map(({ what }) => `we still need ${what}`).join('; '),
  };
}

/** Empty while a price is missing: a partial sum would mislead. */
function moneyCells({ price, invoice }: Quote): Values {
  const { currency, lines, taxes, subtotal, total, deposit, balance } = price;
  if (currency === undefined || total === undefined) return { currency: currency?.code };
  const cell = (amount: Minor | undefined): Cell => amountCell(amount, currency);
  const part = (name: Part): Cell => cell(sumLines(lines.filter((line) => line.part === name)));
  return {
    currency: currency.code,
    materialsCost: part('materials'),
    laborCost: part('labor'),
    optionsCost: part('options'),
    rushCost: part('rush'),
    subtotal: cell(subtotal),
    tax: cell(sumLines(taxes)),
    total: cell(total),
    deposit: cell(deposit),
    balance: cell(balance),
    invoice: invoice?.number,
    paid: cell(invoice?.paid),
    amountDue: cell(invoice?.due),
  };
}

/** With all decimals; negatives stay numbers, which spreadsheets never run as formulas. */
function amountCell(amount: Minor | undefined, currency: Currency): Cell {
  if (amount === undefined) return undefined;
  const text = amountText(amount, currency);
  return amount < 0 ? Number(text) : text;
}
