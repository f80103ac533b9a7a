/** Quotes and invoices for scripts, money as exact decimal text; as a table, one row per order. */
import { jsonText, rounded } from '../pages/json.ts';
import type { Currency } from '../units/currency.ts';
import { amountText } from '../units/money.ts';
import type { Name } from '../words/names.ts';
import type { PaperResult } from '../words/types.ts';
import { sumLines, type Line, type Part } from '../work/line.ts';
import type { Quote } from '../work/quote.ts';
import { lengthBasis } from '../work/row.ts';
import {
  assumptionValue,
  candidateValue,
  findingValue,
  lessThanGood,
  paperRow,
  paperValue,
  phraseValue,
  standingValue,
} from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `{ schema, results }`. */
export const quotesJson = (results: readonly PaperResult<Quote>[]): string =>
  jsonText({
    schema: 'cinchwright/quote/1',
    results: results.map((result) => paperValue(result, quoteValue)),
  });

/** Text with all decimals, so no reader rounds it. */
const moneyValue = (amount: number | undefined, currency: Currency | undefined): string | null =>
  amount === undefined || currency === undefined ? null : amountText(amount, currency);

function quoteValue(quote: Quote): Values {
  const { order, day, validUntil, taken, price, window } = quote;
  const { spec, ranked, takes } = taken;
  const { currency, lines, taxes, missing, notes } = price;
  const money = (amount: number | undefined): string | null => moneyValue(amount, currency);
  return {
    customer: order.customer?.name ?? null,
    horse: order.horse.name ?? null,
    day,
    validUntil: validUntil ?? null,
    quantity: order.quantity,
    lengthBasis: lengthBasis(quote.measured),
    takes,
    spec: {
      rank: ranked?.rank ?? null,
      ...candidateValue(spec.candidate),
      findings: spec.findings.filter(lessThanGood).map(findingValue),
    },
    alternatives: quote.alternatives.map(({ spec: other, tradeOffs, dearerBy }) => ({
      rank: other.rank,
      ...candidateValue(other.candidate),
      tradeOffs: tradeOffs.map(phraseValue),
      dearerBy: money(dearerBy),
    })),
    wants: quote.wants === undefined ? null : standingValue(quote.wants),
    currency: currency?.code ?? null,
    lines: lines.map((line) => lineValue(line, currency)),
    subtotal: money(price.subtotal),
    taxes: taxes.map((line) => lineValue(line, currency)),
    total: money(price.total),
    deposit: money(price.deposit),
    balance: money(price.balance),
    ...invoiceValue(quote),
    missing: missing.map(({ what, where }) => ({ what, where })),
    notes: [...quote.assumed, ...notes],
    window:
      window === undefined
        ? null
        : { earliest: window.earliest, latest: window.latest ?? null, basis: window.basis },
    remarks: [...quote.welfare, ...quote.doubts].map(phraseValue),
    ask: quote.before.map(({ input, how }) => ({ input, how })),
    assumptions: quote.assumptions.map(assumptionValue),
    houseRules: [...quote.houseRules],
    cautions: [...quote.cautions],
  };
}

const invoiceValue = ({ invoice, price: { currency } }: Quote): Values => ({
  invoice: invoice?.number ?? null,
  paid: moneyValue(invoice?.paid, currency),
  amountDue: moneyValue(invoice?.due, currency),
});

function lineValue({ part, what, count, unit, amount }: Line, currency: Currency | undefined): Values {
  const each = unit === undefined || unit.per === 'percent' ? undefined : unit.amount;
  return {
    part,
    what,
    count: count === undefined ? null : rounded(count),
    per: unit?.per ?? null,
    each: moneyValue(each, currency),
    percent: unit?.per === 'percent' ? rounded(unit.percent) : null,
    amount: moneyValue(amount, currency),
  };
}

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

/** The table. */
export const quotesCsv = (results: readonly PaperResult<Quote>[]): string =>
  tableCsv(
    quoteColumns,
    results.map((result) => paperRow(result, quoteRow)),
  );

/** No sums while a price is missing: they would mislead. */
function quoteRow(quote: Quote): Values {
  const { validUntil, taken, price, invoice } = quote;
  const { lines, taxes, total, currency, missing } = price;
  const sum = (some: readonly Line[]): string | null =>
    total === undefined ? null : moneyValue(sumLines(some), currency);
  const part = (name: Part): string | null => sum(lines.filter((line) => line.part === name));
  return {
    ...quoteValue(quote),
    ...candidateValue(taken.spec.candidate),
    validUntil: invoice === undefined ? validUntil : undefined,
    materialsCost: part('materials'),
    laborCost: part('labor'),
    optionsCost: part('options'),
    rushCost: part('rush'),
    tax: sum(taxes),
    invoice: total === undefined ? undefined : invoice?.number,
    reason: missing.map(({ what }) => `we still need ${what}`).join('; '),
  };
}
