/** Quotes and tickets for scripts: in input order, lengths in inches, money as exact decimal text. */
import type { Line } from '../work/line.ts';
import type { Quote } from '../work/quote.ts';
import type { Ticket } from '../work/ticket.ts';
import type { Currency } from '../units/currency.ts';
import { amountText } from '../units/money.ts';
import { jsonText, rounded } from '../pages/json.ts';
import {
  assumptionValue,
  candidateValue,
  failedValue,
  findingValue,
  lessThanGood,
  standingValue,
} from './shared-values.ts';
import type { Values } from './table.ts';
import { inchesOfFeet } from '../units/feet.ts';
import { lengthBasis } from '../work/row.ts';
import { phraseText } from '../units/text.ts';
import type { PaperResult } from '../words/types.ts';

/** `{ schema, results }`. */
export const quotesJson = (results: readonly PaperResult<Quote>[]): string =>
  paperJson('cinchwright/quote/1', results, quoteValue);

/** The same for tickets. */
export const ticketsJson = (results: readonly PaperResult<Ticket>[]): string =>
  paperJson('cinchwright/ticket/1', results, ticketValue);

function paperJson<P>(
  schema: string,
  results: readonly PaperResult<P>[],
  valueOf: (paper: P) => Values,
): string {
  const values = results.map((result) => {
    if (!result.ok) return failedValue(result);
    const { order, file, paper, none } = result;
    return paper === undefined ? { order, file, reason: none } : { order, file, ...valueOf(paper) };
  });
  return jsonText({ schema, results: values });
}

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
      tradeOffs: tradeOffs.map((phrase) => phraseText(phrase, 'in', 'decimals')),
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
    remarks: [...quote.welfare, ...quote.doubts].map((each) => phraseText(each, 'in', 'decimals')),
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

function ticketValue(ticket: Ticket): Values {
  const { buckle, lengths, flare, tolerances } = ticket;
  const { finished: length, ...onTheFrame } = lengths;
  const inches = (values: Readonly<Record<string, number>>): Values =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, rounded(value)]));
  return {
    horse: ticket.horse ?? null,
    day: ticket.day,
    due: ticket.due ?? null,
    quantity: ticket.quantity,
    lengthBasis: lengthBasis(ticket.measured),
    style: ticket.style,
    strands: ticket.strands,
    layers: ticket.layers,
    buckle: buckle.id,
    buckles: { metal: buckle.metal ?? null, near: 1, off: 1 },
    dees: ticket.dees.map(({ id, count }) => ({ id, count })),
    options: [...ticket.options],
    keeper: ticket.keeper,
    orderNotes: ticket.notes ?? null,
    latigoRun: { inches: rounded(ticket.run) },
    hours: ticket.hours ?? null,
    length: rounded(length),
    lengths: inches(onTheFrame),
    half: rounded(ticket.half),
    flare: flare === undefined ? null : inches({ ...flare }),
    profile: ticket.profile.map((each) => inches({ ...each })),
    wovenBars: ticket.bars.map(({ kind, from, length, width, accent }) => ({
      kind,
      ...inches({ at: from, length, width }),
      accent: accent ?? null,
    })),
    sections: ticket.sections.map(({ color, from, to, ...section }) => ({
      color: color ?? null,
      firstStrand: from,
      lastStrand: to,
      ...section,
    })),
    cuts: ticket.pieces.map(({ color, ply, strands, feet, tail }) => ({
      color: color ?? null,
      ply,
      strandNumbers: strands,
      length: inchesOfFeet(feet),
      tail: rounded(tail),
    })),
    accents: ticket.accents.map(({ color, feet }) => ({ color: color ?? null, length: inchesOfFeet(feet) })),
    tolerances: inches({ length: tolerances.length, width: tolerances.width, wovenBar: tolerances.bar }),
    steps: ticket.steps.map((step) => phraseText(step, 'in', 'decimals')),
    checks: ticket.checks.map((check) => phraseText(check, 'in', 'decimals')),
    remarks: ticket.doubts.map((doubt) => phraseText(doubt, 'in', 'decimals')),
    open: [...ticket.open],
    cautions: [...ticket.cautions],
  };
}
