/** The price: its sums in a sentence, and a table by part or by line. */
import { left, right, under, type Block, type TableBlock } from '../pages/sheet.ts';
import type { Currency } from '../units/currency.ts';
import { amountText, moneyText, sumOf, type Minor } from '../units/money.ts';
import { decimals } from '../units/print.ts';
import { capital } from '../units/text.ts';
import { countText, knownAmount, knownMoney, unitText } from '../words/money.ts';
import type { Line, Part } from '../work/line.ts';
import type { Price } from '../work/price.ts';
import type { Invoice, Quote } from '../work/quote.ts';

type Priced = Pick<Quote, 'price' | 'assumed' | 'invoice'>;

/** "Total $93.25. Paid $46.63. Due $46.62."; a quote has a deposit and balance. */
export function totalText({ price, invoice }: Priced): string {
  const { total, deposit, balance, currency } = price;
  if (total === undefined || currency === undefined) return 'Not added up yet: something has no price.';
  const half: Sum[] =
    deposit === undefined || balance === undefined
      ? []
      : [
          ['Deposit', deposit],
          ['Balance due', balance],
        ];
  const sums: Sum[] = [['Total', total], ...(invoice === undefined ? half : paidSums(invoice))];
  return sums.map(([what, amount]) => `${what} ${moneyText(amount, currency)}.`).join(' ');
}

type Sum = readonly [what: string, amount: Minor];

function paidSums({ paid, due }: Invoice): Sum[] {
  if (paid === undefined || due === undefined) return [];
  return [['Paid', paid], due < 0 ? ['Refund due', -due] : ['Due', due]];
}

/** What has no price comes first. */
export function priceBlocks({ price, assumed, invoice }: Priced, itemized: boolean): Block[] {
  const { missing, notes } = price;
  const head: Block[] =
    missing.length === 0
      ? []
      : [
          { kind: 'text', tone: 'strong', text: 'It cannot be added up yet. We still need:' },
          { kind: 'list', items: missing.map(({ what }) => customers(`${capital(what)}.`)) },
        ];
  return under('Price', [
    ...head,
    ...priceTable(price, itemized, invoice === undefined ? [] : paidSums(invoice)),
    { kind: 'list', items: [...assumed, ...notes] },
  ]);
}

/** Customers have no shop file. */
export const customers = (text: string): string =>
  text.replaceAll('the shop file has no', 'we have no').replaceAll(' in the shop file', ' on our list');

/** Empty without prices. */
function priceTable(price: Price, itemized: boolean, below: readonly Sum[]): TableBlock[] {
  const { currency } = price;
  if (currency === undefined) return [];
  const table = itemized ? fullTable(price, currency) : shortTable(price, currency);
  const rows = below.map(([what, amount]) => {
    const text = itemized ? amountText(amount, currency) : moneyText(amount, currency);
    return [what, ...table.columns.slice(2).map(() => ''), text];
  });
  const foot = [...(table.foot ?? []), ...rows];
  return [foot.length === 0 ? table : { ...table, foot, total: foot.length - 1 }];
}

const partNames: Readonly<Record<Exclude<Part, 'tax'>, string>> = {
  materials: 'Cord, buckles and other materials',
  labor: 'Labor',
  options: 'Options',
  rush: 'Rush',
};

function shortTable(price: Price, currency: Currency): TableBlock {
  const parts = Object.keys(partNames) as (keyof typeof partNames)[];
  const rows = parts.flatMap((part) => {
    const lines = price.lines.filter((line) => line.part === part);
    if (lines.length === 0) return [];
    const amounts = lines.flatMap(({ amount }) => (amount === undefined ? [] : [amount]));
    const sum = amounts.length === lines.length ? sumOf(amounts) : undefined;
    const name = `${partNames[part]}${part === 'labor' ? hoursText(lines, currency) : ''}`;
    return [[name, knownMoney(sum, currency)]];
  });
  return {
    kind: 'table',
    columns: [...left(''), ...right('')],
    rows: [
      ...rows,
      ...price.taxes.map((tax) => [
        `${capital(tax.what)}${percentText(tax, currency)}`,
        knownMoney(tax.amount, currency),
      ]),
    ],
    ...(price.total === undefined ? {} : { foot: [['Total', moneyText(price.total, currency)]], total: 0 }),
  };
}

/** ", 1.57 hours at $40.00" */
function hoursText(lines: readonly Line[], currency: Currency): string {
  const [line] = lines;
  if (lines.length !== 1 || line?.count === undefined || line.unit?.per !== 'hour') return '';
  return `, ${decimals(line.count, 2)} hours at ${moneyText(line.unit.amount, currency)}`;
}

/** ", 6.25% of $40.14" */
const percentText = ({ unit }: Line, currency: Currency): string =>
  unit?.per === 'percent' ? `, ${String(unit.percent)}% of ${moneyText(unit.on, currency)}` : '';

function fullTable({ lines, taxes, subtotal, total }: Price, currency: Currency): TableBlock {
  const row = (line: Line): string[] => [
    capital(line.what),
    countText(line),
    unitText(line.unit, currency),
    knownAmount(line.amount, currency),
  ];
  const sum = (what: string, amount: number): string[] => [what, '', '', knownAmount(amount, currency)];
  const before =
    subtotal === undefined || taxes.length === 0 ? [] : [sum('Before tax', subtotal), ...taxes.map(row)];
  return {
    kind: 'table',
    columns: [...left('What'), ...right('How much', 'At', currency.code)],
    rows: lines.map(row),
    ...(total === undefined ? {} : { foot: [...before, sum('Total', total)], total: before.length }),
  };
}
