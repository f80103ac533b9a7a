/** A quote as a paper for the customer: the total first, then what we suggest, what else there is, and when. */
import type { Checked } from '../advice/check.ts';
import type { Candidate } from '../cinch/candidate.ts';
import type { Line, Part } from '../work/line.ts';
import type { Alternative, Quote } from '../work/quote.ts';
import { styles } from '../cinch/styles.ts';
import type { Currency } from '../units/currency.ts';
import { dayText } from '../units/days.ts';
import { moneyText, sumOf, type Minor } from '../units/money.ts';
import { gap, listed } from '../units/phrase.ts';
import { decimals, formatLength } from '../units/print.ts';
import { ownNumbers } from '../words/about-order.ts';
import { standingOf } from '../words/about-check.ts';
import { visible } from '../units/clean.ts';
import { aCinch, chanceWords, horseName } from '../words/counter-words.ts';
import { countText, knownAmount, knownMoney, unitText } from '../words/money.ts';
import { paragraph, under, withoutEmpty, type Block, type Sheet } from '../pages/sheet.ts';
import { capital, phraseText, quantityText, type Units } from '../units/text.ts';
import { namedText, reasonsText } from '../words/wish-words.ts';

/** How much of the bill stands on it. */
export interface QuoteLook {
  readonly units: Units;
  /** Every line, not one for each part. */
  readonly itemized: boolean;
}

/** The paper of one quote. */
export function quoteSheet(quote: Quote, { units, itemized }: QuoteLook): Sheet {
  const { order, shop, day, validUntil, measured, welfare, doubts, before } = quote;
  const who = order.customer?.name === undefined ? '' : ` for ${order.customer.name}`;
  const horse = order.horse.name === undefined ? '' : ` for ${order.horse.name}`;
  const until = validUntil === undefined ? '' : `, good through ${dayText(validUntil)}`;
  return {
    title: `Quote ${order.order}${who}: ${cinches(order.quantity)}${horse}`,
    shop: shop.name,
    about: [`${dayText(day)}${until}.`, totalText(quote)],
    notice: measured
      ? undefined
      : "DO NOT CUT: ring to ring is not measured. The length is a guess; we won't cut cord until we have it, and the price may change with it.",
    blocks: withoutEmpty([
      ...welfare.map((phrase): Block => ({ kind: 'text', text: phraseText(phrase, units), tone: 'strong' })),
      paragraph(suggestText(quote, units)),
      paragraph(wishText(quote, units)),
      paragraph(colorText(quote)),
      ...under('You could also have', [
        { kind: 'list', items: quote.alternatives.map((other) => otherText(other, quote, units)) },
      ]),
      ...priceBlocks(quote, itemized),
      ...under('When', [{ kind: 'text', text: readyText(quote) }]),
      ...under('Please measure before we cut', [
        {
          kind: 'list',
          items: [
            ...doubts.map((doubt) => phraseText(doubt, units)),
            ...before.map(({ input, how }) => `${capital(input)}: ${how}.`),
          ],
        },
      ]),
      { kind: 'text', text: ownNumbers({ shop, model: quote.facts.model }) ?? '' },
    ]),
    rules: quote.houseRules,
    cautions: quote.cautions,
  };
}

const cinches = (quantity: number): string =>
  quantity === 1 ? 'a mohair cinch' : `${String(quantity)} mohair cinches`;

/** "Total $105.45. Deposit $52.73. Balance due $52.72." */
function totalText({ price: { total, deposit, balance, currency } }: Quote): string {
  if (total === undefined || currency === undefined) return 'Not added up yet: see the price below.';
  const money = (amount: Minor): string => moneyText(amount, currency);
  const half =
    deposit === undefined || balance === undefined
      ? ''
      : ` Deposit ${money(deposit)}. Balance due ${money(balance)}.`;
  return `Total ${money(total)}.${half}`;
}

/** The cinch in sentences, how it should clear, and how sure that is. */
function suggestText({ taken, order, facts }: Quote, units: Units): string {
  const { candidate: c } = taken.spec;
  const { buckle } = c;
  const lead = { first: 'We suggest', wish: 'As you asked:', chosen: 'We quote' }[taken.takes];
  const metal = buckle.metal === undefined ? '' : `${visible(buckle.metal)} `;
  const many = order.quantity === 1 ? 'two' : String(2 * order.quantity);
  const buckles = `${many} ${metal}${formatLength(buckle.barWidth, units)} buckles`;
  const horse = horseName(order);
  const clears = quantityText(gap(c.cordClearance.inches), units);
  const least = quantityText({ value: c.cordClearance.floor, as: 'fine-length' }, units);
  const guess = facts.room.kind === 'measured' ? '' : ', as elbow room was not measured';
  return [
    `${lead} ${aCinch(c)}, ${widthText(c, units)} and ${formatLength(c.length, units)} long, with ${buckles}.`,
    `It should clear ${horse}'s elbow by about ${clears}. We want ${least}; the chance of that is ${chanceWords(c.clearance.chance)}${guess}.`,
  ].join(' ');
}

function widthText({ style, width, buckleWidth }: Candidate, units: Units): string {
  const wide = formatLength(width, units);
  return style === 'straight'
    ? `${wide} wide`
    : `${wide} wide across the chest, drawn in to ${formatLength(buckleWidth, units)} at the buckles`;
}

/** "You asked for 25 strands. On Marble that is too close: ..." */
function wishText({ wants, taken, order }: Quote, units: Units): string {
  if (wants === undefined || taken.takes === 'wish') return '';
  const asked = `You asked for ${namedText(wants.asked, units)}.`;
  const standing = standingOf(wants);
  if (standing === 'refused') {
    const why = wants.judged === undefined ? cannotText(wants, units) : reasonsText(wants, units);
    return `${asked} Not on ${horseName(order)}: ${customers(why)}.`;
  }
  const chance = chanceWords(wants.judged?.candidate.clearance.chance ?? 0);
  return standing === 'passes'
    ? `${asked} That passes too; the chance at the elbow is ${chance}.`
    : `${asked} We are not sure of that: the chance at the elbow is ${chance}.`;
}

const cannotText = ({ cannot }: Checked, units: Units): string =>
  cannot === undefined ? 'we cannot tie it' : phraseText(cannot, units);

/** The customer has no shop file. */
const customers = (text: string): string =>
  text.replaceAll('the shop file has no', 'we have no').replaceAll(' in the shop file', ' on our list');

function colorText({ order: { colors, options = [] } }: Quote): string {
  const { body = [], accent = [] } = colors ?? {};
  const parts = [
    ...(body.length === 0 ? [] : [`body cord ${listed(body)}`]),
    ...(accent.length === 0 ? [] : [`accent cord ${listed(accent)}`]),
    ...options,
  ];
  return parts.length === 0 ? '' : `With ${listed(parts)}.`;
}

/** "17 strands, 1/2 in narrower: surer at the elbow (9 out of 10), $12.20 less." */
function otherText({ spec, dearerBy }: Alternative, quote: Quote, units: Units): string {
  const [a, b] = [spec.candidate, quote.taken.spec.candidate];
  const name = a.style === b.style ? `${String(a.strands)} strands` : aCinch(a);
  const wider = a.elbowWidth - b.elbowWidth;
  const side =
    Math.abs(wider) < 0.125
      ? ''
      : `, ${formatLength(Math.abs(wider), units)} ${wider > 0 ? 'wider' : 'narrower'} at the elbow`;
  const about = a.style === b.style ? '' : `, ${styles[a.style].about}`;
  const points = Math.round(100 * a.clearance.chance) - Math.round(100 * b.clearance.chance);
  const sure = `${points > 0 ? 'surer' : points < 0 ? 'less sure' : 'as sure'} at the elbow (${chanceWords(a.clearance.chance)})`;
  return `${capital(name)}${about}${side}: ${sure}${priceText(dearerBy, quote)}.`;
}

function priceText(dearerBy: number | undefined, { price: { currency } }: Quote): string {
  if (dearerBy === undefined || currency === undefined) return '';
  if (dearerBy === 0) return ', the same price';
  return `, ${moneyText(Math.abs(dearerBy), currency)} ${dearerBy > 0 ? 'more' : 'less'}`;
}

function priceBlocks({ price, assumed }: Quote, itemized: boolean): Block[] {
  const { currency, missing, notes } = price;
  const head: Block[] =
    missing.length === 0
      ? []
      : [
          { kind: 'text', tone: 'strong', text: 'It cannot be added up yet. We still need:' },
          { kind: 'list', items: missing.map(({ what }) => customers(`${capital(what)}.`)) },
        ];
  const table =
    currency === undefined ? [] : [itemized ? fullTable(price, currency) : shortTable(price, currency)];
  return under('Price', [...head, ...table, { kind: 'list', items: [...assumed, ...notes] }]);
}

const partNames: Readonly<Record<Exclude<Part, 'tax'>, string>> = {
  materials: 'Cord, buckles and other materials',
  labor: 'Labor',
  options: 'Options',
  rush: 'Rush',
};

/** One line for each part that costs anything, taxes, and the total. */
function shortTable(price: Quote['price'], currency: Currency): Block {
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
    columns: [{ head: '' }, { head: '', align: 'right' }],
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

/** Every line as it came about. */
function fullTable({ lines, taxes, subtotal, total }: Quote['price'], currency: Currency): Block {
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
    columns: [
      { head: 'What' },
      { head: 'How much', align: 'right' },
      { head: 'At', align: 'right' },
      { head: currency.code, align: 'right' },
    ],
    rows: lines.map(row),
    ...(total === undefined ? {} : { foot: [...before, sum('Total', total)], total: before.length }),
  };
}

/** "Ready Nov 21, 2026 at the earliest, not counting other work." */
function readyText({ window, order: { due } }: Quote): string {
  const asked = due === undefined ? '' : ` You asked for it by ${dayText(due)}.`;
  if (window === undefined) return `We cannot promise a day yet.${asked}`;
  const { earliest, latest, basis } = window;
  const late = due !== undefined && due < earliest ? ` It cannot be ready by ${dayText(due)}.` : asked;
  const days =
    latest === undefined
      ? `${dayText(earliest)} at the earliest`
      : `between ${dayText(earliest)} and ${dayText(latest)}`;
  return `Ready ${days}, ${basis}.${late}`;
}
