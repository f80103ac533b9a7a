/** A quote as a paper for the customer. */
import type { RankedSpec } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Alternative, Quote } from '../paper/quote.ts';
import type { Line } from '../paper/line.ts';
import { moneyText } from '../units/money.ts';
import { listed } from '../units/phrase.ts';
import { wantsText } from './about-check.ts';
import { becauseText, elbowText, plainFindingText, toTell } from './about-specs.ts';
import { ownNumbers } from './about-order.ts';
import { assumedTexts, measuredText } from './about-rest.ts';
import { countText, knownAmount, unitText } from './money.ts';
import { under, type Block, type Sheet } from './sheet.ts';
import { capital, phraseText, quantityText, type Units } from './text.ts';
import { layersText, pinchedText, specName } from './words.ts';

/** The paper of one quote. */
export function quoteSheet(quote: Quote, units: Units): Sheet {
  const { order, shop, day, validUntil, measured } = quote;
  const { customer, horse } = order;
  const who = [customer?.name, horse.name === undefined ? undefined : `horse ${horse.name}`];
  const named = who.filter((name) => name !== undefined).join(', ');
  const holds = validUntil === undefined ? '' : `; it holds until ${validUntil}`;
  return {
    title: `Quote for order ${order.order}`,
    shop: shop.name,
    about: [...(named === '' ? [] : [`For ${named}.`]), `Written ${day}${holds}.`],
    notice: measured
      ? undefined
      : 'Provisional length, judged only roughly: no cord is cut until ring to ring is measured, and the price may change with it.',
    blocks: [
      ...under('First of all', [
        { kind: 'list', items: quote.welfare.map((each) => phraseText(each, units)) },
      ]),
      ...suggestionBlocks(quote, units),
      ...under('What else would do', [
        { kind: 'list', items: quote.alternatives.map((other) => alternativeText(other, quote, units)) },
      ]),
      ...priceBlocks(quote),
      ...under('When', [{ kind: 'text', text: windowText(quote) }]),
      ...under('To be measured before cord is cut', [
        {
          kind: 'list',
          items: [
            ...quote.doubts.map((doubt) => phraseText(doubt, units)),
            ...quote.before.map(({ input, how }) => `${capital(input)}: ${how}.`),
          ],
        },
      ]),
      ...under('What this rests on', [{ kind: 'list', items: basisTexts(quote, units) }]),
    ],
    rules: quote.houseRules,
    cautions: quote.cautions,
  };
}

const headings = {
  first: 'What we suggest',
  wish: 'What you asked for',
  chosen: 'What is quoted',
} as const;

/** Why it is this one; a wish needs no reason but that it passes, which is told with it. */
function whyText({ takes, ranked }: Quote['taken'], units: Units): string {
  if (takes === 'wish' || ranked === undefined) return '';
  if (takes === 'first') return becauseText(ranked, units) ?? '';
  return `Chosen; it stands no. ${String(ranked.rank)} of those that pass.`;
}

function suggestionBlocks({ taken, order, facts, wants }: Quote, units: Units): Block[] {
  const { spec, takes } = taken;
  const { candidate: c } = spec;
  const pinched = pinchedText(c, units);
  const size = (value: number): string => quantityText({ value, as: 'length' }, units);
  const many = order.quantity === 1 ? '' : `${String(order.quantity)} x `;
  return under(headings[takes], [
    {
      kind: 'pairs',
      rows: [
        ['Cinch', `${many}${specName(c)}, ${layersText(c.layers)}`],
        ['Width', `${size(c.width)}${pinched === '' ? '' : `, ${pinched}`}`],
        ['Length', `${size(c.length)}, outside to outside of the hardware`],
        ['Buckles', `two ${c.buckle.id}${c.buckle.metal === undefined ? '' : `, ${c.buckle.metal}`}`],
        ['Elbow', capital(elbowText(spec, units))],
        ...colorRows(order),
      ],
    },
    { kind: 'text', text: whyText(taken, units) },
    { kind: 'text', text: wants === undefined ? '' : askedForText(wants, facts, units) },
    {
      kind: 'list',
      items: toTell(spec, facts).map((finding) => capital(toCustomer(plainFindingText(finding, units)))),
    },
  ]);
}

/** On the customer's own paper the customer is "you". */
const askedForText = (wants: Checked, facts: Quote['facts'], units: Units): string =>
  toCustomer(wantsText(wants, { specs: [], facts }, { units, reader: 'customer' })).replace(
    /^The customer asked/,
    'You asked',
  );

/** The customer has no shop file. */
const toCustomer = (text: string): string =>
  text.replaceAll('the shop file has no', 'we have no').replaceAll(' in the shop file', ' on our list');

function colorRows({ colors, options = [] }: Quote['order']): [string, string][] {
  const { body = [], accent = [] } = colors ?? {};
  return [
    ...(body.length === 0 ? [] : [['Body cord', listed(body)] as [string, string]]),
    ...(accent.length === 0 ? [] : [['Accent cord', listed(accent)] as [string, string]]),
    ...(options.length === 0 ? [] : [['Options', listed(options)] as [string, string]]),
  ];
}

function alternativeText({ spec, tradeOffs, dearerBy }: Alternative, quote: Quote, units: Units): string {
  const ours = spec.rank === 1 ? 'Our own first choice: ' : '';
  const differs = tradeOffs.map((phrase) => phraseText(phrase, units)).join('; ');
  return `${ours}${ours === '' ? capital(nameText(spec, units)) : nameText(spec, units)}: ${differs}${priceText(dearerBy, quote)}.`;
}

const nameText = ({ candidate }: RankedSpec, units: Units): string =>
  `${specName(candidate)}, ${quantityText({ value: candidate.length, as: 'length' }, units)} long`;

function priceText(dearerBy: number | undefined, { price: { currency } }: Quote): string {
  if (dearerBy === undefined || currency === undefined) return '';
  if (dearerBy === 0) return '; the same price';
  return `; ${moneyText(Math.abs(dearerBy), currency)} ${dearerBy > 0 ? 'more' : 'less'}`;
}

function priceBlocks({ price, assumed }: Quote): Block[] {
  const { currency, lines, missing, notes } = price;
  const head: Block[] =
    missing.length === 0
      ? []
      : [
          { kind: 'text', tone: 'strong', text: 'It cannot be added up yet. Not known is:' },
          { kind: 'list', items: missing.map(({ what }) => toCustomer(`${capital(what)}.`)) },
        ];
  const table: Block[] =
    currency === undefined
      ? []
      : [
          {
            kind: 'table',
            columns: [
              { head: 'What' },
              { head: 'How much', align: 'right' },
              { head: 'At', align: 'right' },
              { head: currency.code, align: 'right' },
            ],
            rows: lines.map((line) => lineRow(line, currency)),
            ...footRows({ price, currency }),
          },
        ];
  return under('Price', [...head, ...table, { kind: 'list', items: [...assumed, ...notes] }]);
}

type Known = { price: Quote['price']; currency: NonNullable<Quote['price']['currency']> };

const lineRow = (line: Line, currency: Known['currency']): string[] => [
  capital(line.what),
  countText(line),
  unitText(line.unit, currency),
  knownAmount(line.amount, currency),
];

/** Sums of what stands above, the total after tax; none while something is missing. */
function footRows({ price, currency }: Known): { foot: string[][]; total: number } {
  const { taxes, subtotal, total, deposit, depositPercent, balance } = price;
  if (total === undefined || subtotal === undefined) return { foot: [], total: 0 };
  const sum = (what: string, amount: number): string[] => [what, '', '', knownAmount(amount, currency)];
  const before =
    taxes.length === 0 ? [] : [sum('Before tax', subtotal), ...taxes.map((tax) => lineRow(tax, currency))];
  const after =
    deposit === undefined || balance === undefined
      ? []
      : [sum(`Deposit, ${String(depositPercent)} %`, deposit), sum('Left to pay', balance)];
  return { foot: [...before, sum('Total', total), ...after], total: before.length };
}

function windowText({ window, order: { due } }: Quote): string {
  const asked = due === undefined ? '' : ` Asked for by ${due}.`;
  if (window === undefined) return `No day can be promised yet.${asked}`;
  const { earliest, latest, basis } = window;
  const late = due !== undefined && due < earliest ? ` It cannot be ready by ${due}.` : asked;
  const days = latest === undefined ? `${earliest} at the earliest` : `between ${earliest} and ${latest}`;
  return `Ready ${days}, ${basis}.${late}`;
}

function basisTexts({ assumptions, shop, facts }: Quote, units: Units): string[] {
  const measured = measuredText(assumptions, units);
  const own = ownNumbers({ shop, model: facts.model });
  return [measured, ...assumedTexts(assumptions, units), own].filter((text) => text !== undefined);
}
