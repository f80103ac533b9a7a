/** A bill added up: lines are rounded once, and sums add printed lines. */
import type { Tax, Taxed } from '../order/trade-types.ts';
import type { Order, Shop } from '../order/types.ts';
import type { Currency } from '../units/currency.ts';
import { dayNumber, dayText } from '../units/days.ts';
import { amountOf, percentRate, rateOf, sumOf, type Minor } from '../units/money.ts';
import type { Exact } from '../units/number.ts';
import type { Bill } from './bill.ts';
import { sumLines, type Line, type Missing } from './line.ts';

export interface Price {
  /** Undefined without prices. */
  readonly currency: Currency | undefined;
  readonly lines: readonly Line[];
  readonly taxes: readonly Line[];
  /** Before tax. Sums are undefined while a price is missing. */
  readonly subtotal: Minor | undefined;
  readonly total: Minor | undefined;
  readonly deposit: Minor | undefined;
  readonly depositPercent: number | undefined;
  readonly balance: Minor | undefined;
  readonly missing: readonly Missing[];
  readonly notes: readonly string[];
}

export interface When {
  readonly shop: Shop;
  readonly day: string;
  /** First day it can be ready, if known. */
  readonly ready?: string | undefined;
}

/** The price of a bill on a day. */
export function priceOf(bill: Bill, order: Order, when: When): Price {
  const { shop } = when;
  const { currency } = shop;
  const missing = currency === undefined ? [noCurrency] : bill.missing;
  const notes = notesOf(order, when);
  if (currency === undefined || missing.length > 0) return unpriced(bill, shop, { missing, notes });
  const lines = withPercents(bill.lines, shop, rushOf(order, when) === 'asked' ? shop.rush : undefined);
  const taxes = (shop.taxes ?? []).map((tax) => taxLine(tax, lines));
  const total = sumLines([...lines, ...taxes]);
  const { deposit: percent } = shop;
  const deposit = percent === undefined ? undefined : share(total, percent);
  return {
    currency,
    lines,
    taxes,
    subtotal: sumLines(lines),
    total,
    deposit,
    depositPercent: percent === undefined ? undefined : plain(percent),
    balance: deposit === undefined ? undefined : sumOf([total, -deposit]),
    missing,
    notes,
  };
}

const noCurrency: Missing = {
  what: 'prices and their currency',
  where: 'currency, and a price at each cord, buckle and option',
};

function unpriced(
  { lines }: Bill,
  { currency, deposit }: Shop,
  rest: Pick<Price, 'missing' | 'notes'>,
): Price {
  return {
    currency,
    lines,
    taxes: [],
    subtotal: undefined,
    total: undefined,
    deposit: undefined,
    depositPercent: deposit === undefined ? undefined : plain(deposit),
    balance: undefined,
    ...rest,
  };
}

const plain = ({ over, under }: Exact): number => over / under;
const share = (amount: Minor, percent: Exact): Minor => amountOf(amount, percentRate(rateOf(percent)));

/** Materials, percents, labor, options, then rush on all. */
function withPercents(lines: readonly Line[], shop: Shop, rush: Shop['rush']): Line[] {
  const of = (part: Line['part']): Line[] => lines.filter((line) => line.part === part);
  const materials = of('materials');
  const cost = sumLines(materials);
  const consumables = (shop.consumables ?? []).map(({ name, percent }) =>
    percentLine({ part: 'materials', what: name }, percent, cost),
  );
  const goods = [...materials, ...consumables];
  const returns =
    shop.returns === undefined
      ? []
      : [percentLine({ part: 'materials', what: 'Materials markup' }, shop.returns, sumLines(goods))];
  const all = [...goods, ...returns, ...of('labor'), ...of('options')];
  if (rush === undefined) return all;
  const what = `Rush, due within ${String(rush.withinDays)} days`;
  return [...all, percentLine({ part: 'rush', what }, rush.percent, sumLines(all))];
}

function percentLine(line: Pick<Line, 'part' | 'what'>, percent: Exact, on: Minor): Line {
  return { ...line, unit: { per: 'percent', percent: plain(percent), on }, amount: share(on, percent) };
}

/** Tax counts consumables and markup as materials. */
function taxLine({ name, percent, on }: Tax, lines: readonly Line[]): Line {
  const taxed = lines.filter(({ part }) => on.includes(part as Taxed));
  const what = on.length === 4 ? name : `${name}, on ${on.join(', ')}`;
  return percentLine({ part: 'tax', what }, percent, sumLines(taxed));
}

/**
 * Counts from the day the order was taken, if given, so quote and invoice agree. No charge when we can't make
 * the day.
 */
function rushOf(
  { due, taken }: Order,
  { shop: { rush }, day, ready = '' }: When,
): 'asked' | 'too late' | undefined {
  if (due === undefined || rush === undefined) return undefined;
  if (dayNumber(due) - dayNumber(taken ?? day) > rush.withinDays) return undefined;
  return dayNumber(due) < dayNumber(day) || ready > due ? 'too late' : 'asked';
}

function notesOf(order: Order, when: When): string[] {
  const { due } = order;
  const { shop, day } = when;
  const notes: string[] = [];
  if (shop.taxes === undefined) notes.push('No tax included.');
  if (due !== undefined && dayNumber(due) < dayNumber(day))
    notes.push(`It was due ${dayText(due)}; that day is past.`);
  if (rushOf(order, when) === 'too late') notes.push("No rush charge: we can't make that day.");
  return notes;
}
