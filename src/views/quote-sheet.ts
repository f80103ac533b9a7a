/** A quote for the customer: the total, what we suggest, alternatives, and when. */
import type { Checked } from '../advice/check.ts';
import { isUnsure } from '../advice/judge.ts';
import type { Order } from '../order/types.ts';
import type { Alternative, Quote } from '../work/quote.ts';
import { same } from '../work/taken.ts';
import { styles } from '../cinch/styles.ts';
import { dayText } from '../units/days.ts';
import { moneyText } from '../units/money.ts';
import { gap, listed } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { ownNumbers } from '../words/about-order.ts';
import { standingOf } from '../words/about-check.ts';
import { visible } from '../units/clean.ts';
import { aCinch, bucklesText, chanceWords, horseName, wideText } from '../words/counter-words.ts';
import { straightOrRoper } from '../words/instead-words.ts';
import { paragraph, under, withoutEmpty, type Block, type Drawing, type Sheet } from '../pages/sheet.ts';
import { capital, phraseText, quantityText, type Units } from '../units/text.ts';
import { customers, priceBlocks, totalText } from './price-blocks.ts';
import { namedText, reasonsText } from '../words/wish-words.ts';

export interface QuoteLook {
  readonly units: Units;
  /** Every line instead of one per part. */
  readonly itemized: boolean;
  /** For page printers. */
  readonly picture?: Drawing | undefined;
}

/** The paper. */
export function quoteSheet(quote: Quote, { units, itemized, picture }: QuoteLook): Sheet {
  const { order, shop, day, validUntil, measured, welfare, doubts, before } = quote;
  const until = validUntil === undefined ? '' : `, good through ${dayText(validUntil)}`;
  return {
    title: `Quote ${order.order}${forCustomer(order)}: ${cinchesText(order)}`,
    shop: shop.name,
    about: [`${dayText(day)}${until}.`, totalText(quote)],
    notice: measured
      ? undefined
      : "DO NOT CUT: ring to ring is not measured. The length is a guess; we won't cut cord until we have it, and the price may change.",
    blocks: withoutEmpty([
      ...welfare.map((phrase): Block => ({ kind: 'text', text: phraseText(phrase, units), tone: 'strong' })),
      ...pictured(picture, [
        paragraph(suggestText(quote, units)),
        paragraph([styleText(quote), wishText(quote, units)].filter((text) => text !== '').join(' ')),
        paragraph(colorText(order)),
        ...under('You could also have', [
          { kind: 'list', items: quote.alternatives.map((other) => otherText(other, quote, units)) },
        ]),
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

const pictured = (picture: Drawing | undefined, blocks: readonly Block[]): readonly Block[] =>
  picture === undefined ? blocks : [{ kind: 'beside', picture, blocks: withoutEmpty(blocks) }];

/** " for Leda Castellane", or "". */
export const forCustomer = ({ customer }: Order): string =>
  customer?.name === undefined ? '' : ` for ${customer.name}`;

/** "6 mohair cinches for Marble". */
export function cinchesText({ quantity, horse }: Order): string {
  const many = quantity === 1 ? 'a mohair cinch' : `${String(quantity)} mohair cinches`;
  return horse.name === undefined ? many : `${many} for ${horse.name}`;
}

const leads = { first: 'We suggest', wish: 'As you asked:', chosen: 'We quote' } as const;

/** How it should clear, and how sure we are. */
function suggestText(quote: Quote, units: Units): string {
  const { taken, order, facts } = quote;
  const { candidate: c } = taken.spec;
  const lead = isUnsure(taken.spec)
    ? `Not sure: ${taken.takes === 'chosen' ? 'we quote' : 'the best we can tie is'}`
    : leads[taken.takes];
  const horse = horseName(order);
  const clears = quantityText(gap(c.cordClearance.inches), units);
  const least = quantityText({ value: c.cordClearance.floor, as: 'fine-length' }, units);
  const guess = facts.room.kind === 'measured' ? '' : ', as elbow room was not measured';
  return [
    `${lead} ${tiedText(quote, units)}.`,
    `It should clear ${horse}'s elbow by about ${clears}. We want ${least}; the chance of that is ${chanceWords(c.clearance.chance)}${guess}.`,
  ].join(' ');
}

/** "a straight, 17 strands, ..., with two 3 in buckles". */
export function tiedText(
  { taken: { spec }, order: { quantity }, shop }: Pick<Quote, 'taken' | 'order' | 'shop'>,
  units: Units,
): string {
  const { candidate: c } = spec;
  const metal = c.buckle.metal === undefined ? '' : `${visible(c.buckle.metal)} `;
  const each = quantity === 1 ? '' : ` each, ${String(2 * quantity)} buckles in all`;
  const buckles = `two ${metal}${bucklesText(c.buckle, shop, units)}${each}`;
  return `${aCinch(c)}, ${wideText(c, units)} and ${formatLength(c.length, units)} long, with ${buckles}`;
}

/** A chosen spec needs no reason from us. */
const styleText = ({ taken, facts }: Quote): string =>
  taken.takes === 'first' ? straightOrRoper({ first: taken.spec, facts }) : '';

/** "You asked for 25 strands. On Marble that is too close: ..." */
export function wishText(quote: Quote, units: Units): string {
  const { wants, taken, order } = quote;
  if (taken.takes === 'wish') return surerText(quote, units);
  if (wants === undefined) return '';
  if (wants.judged !== undefined && same(wants.judged, taken.spec)) return 'That is what you asked for.';
  const isAlike = wants.asked.style === taken.spec.candidate.style && wants.asked.strands !== undefined;
  const named = namedText(isAlike ? { ...wants.asked, style: undefined } : wants.asked, units);
  const asked = `You asked for ${named}.`;
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

/** Our pick, where it is surer than the wish we quote. */
function surerText({ taken: { spec }, alternatives }: Quote, units: Units): string {
  const ours = alternatives.find((each) => each.spec.rank === 1)?.spec.candidate;
  const [own, other] = [spec.candidate.clearance.chance, ours?.clearance.chance ?? 0];
  if (ours === undefined || chanceWords(own) === chanceWords(other) || other < own) return '';
  return `We would tie ${aCinch(ours)}, ${wideText(ours, units)}: the chance to clear the elbow is ${chanceWords(other)} against ${chanceWords(own)}.`;
}

const cannotText = ({ cannot }: Checked, units: Units): string =>
  cannot === undefined ? 'we cannot tie it' : phraseText(cannot, units);

/** "With body cord natural and initials." */
export function colorText({ colors, options = [] }: Order): string {
  const { body = [], accent = [] } = colors ?? {};
  const parts = [
    ...(body.length === 0 ? [] : [`body cord ${listed(body)}`]),
    ...(accent.length === 0 ? [] : [`accent cord ${listed(accent)}`]),
    ...options,
  ];
  const several = parts.some((part) => part.includes(' and '));
  return parts.length === 0 ? '' : `With ${several ? parts.join('; ') : listed(parts)}.`;
}

/** "17 strands, 1/2 in narrower: surer at the elbow, $12.20 less." */
function otherText({ spec, dearerBy }: Alternative, quote: Quote, units: Units): string {
  const [a, b] = [spec.candidate, quote.taken.spec.candidate];
  const name = a.style === b.style ? `${String(a.strands)} strands` : aCinch(a);
  const wider = a.elbowWidth - b.elbowWidth;
  const side =
    Math.abs(wider) < 0.125
      ? ''
      : `, ${formatLength(Math.abs(wider), units)} ${wider > 0 ? 'wider' : 'narrower'} at the elbow`;
  const about = a.style === b.style ? '' : `, ${styles[a.style].about}`;
  const [odds, own] = [chanceWords(a.clearance.chance), chanceWords(b.clearance.chance)];
  const surer = a.clearance.chance > b.clearance.chance ? 'surer' : 'less sure';
  const sure = `${odds === own ? 'as sure' : surer} at the elbow (${odds})`;
  return `${capital(name)}${about}${side}: ${sure}${priceText(dearerBy, quote)}.`;
}

function priceText(dearerBy: number | undefined, { price: { currency } }: Quote): string {
  if (dearerBy === undefined || currency === undefined) return '';
  if (dearerBy === 0) return ', the same price';
  return `, ${moneyText(Math.abs(dearerBy), currency)} ${dearerBy > 0 ? 'more' : 'less'}`;
}

/** "Ready Nov 21, 2026 at the earliest." */
export function readyText({ window, order: { due } }: Quote): string {
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
