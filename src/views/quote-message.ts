/** Quotes and invoices as short phone messages. */
import { hasCloseGroove, mustHeal } from '../advice/welfare.ts';
import { isUnsure } from '../advice/judge.ts';
import { shortCaution } from '../numbers/cautions.ts';
import type { Message } from '../pages/messages.ts';
import { dayText } from '../units/days.ts';
import { formatLength } from '../units/print.ts';
import type { Units } from '../units/text.ts';
import {
  aCinch,
  bucklesText,
  chanceWords,
  horseName,
  soreText,
  vetText,
  wideText,
} from '../words/counter-words.ts';
import type { PaperResult } from '../words/types.ts';
import type { Quote } from '../work/quote.ts';
import { totalText } from './price-blocks.ts';
import { cinchesText, readyText, wishText } from './quote-sheet.ts';

/** One per paper. */
export const quoteMessages = (results: readonly PaperResult<Quote>[], units: Units): Message[] =>
  results.flatMap((result) =>
    result.ok && result.paper !== undefined ? [messageOf(result.paper, units)] : [],
  );

function messageOf(quote: Quote, units: Units): Message {
  const { order, invoice, shop } = quote;
  return [
    `${`Hi ${order.customer?.name?.trim() ?? ''}`.trim()},`,
    ...(invoice === undefined ? quoteParts(quote, units) : invoiceParts(quote, invoice.number)),
    shortCaution,
    shop.name,
  ];
}

function quoteParts(quote: Quote, units: Units): string[] {
  const { order, taken, shop, validUntil, measured } = quote;
  const { candidate: c } = taken.spec;
  const cinch = `${aCinch(c)}, ${wideText(c, units)}, ${formatLength(c.length, units)} long, on ${bucklesText(c.buckle, shop, units)}`;
  const unsure = isUnsure(taken.spec)
    ? ` We are not sure that it clears the elbow: the chance is ${chanceWords(c.clearance.chance)}.`
    : '';
  return [
    ...firstThings(quote),
    `Quote ${order.order}, ${cinchesText(order)}: ${cinch}.${unsure} ${wishText(quote, units)}`.trim(),
    totalText(quote),
    `${readyText(quote)}${validUntil === undefined ? '' : ` Quote good through ${dayText(validUntil)}.`}`,
    measured ? '' : "We won't cut cord until ring to ring is measured.",
  ];
}

/** What comes before any cinch. */
function firstThings({ order, facts }: Quote): string[] {
  const horse = horseName(order);
  return [
    mustHeal(facts) ? soreText(horse) : '',
    vetText([order]),
    hasCloseGroove(facts)
      ? `The saddle works forward on ${horse}: have the saddle fit looked at first. No cinch fixes that.`
      : '',
  ];
}

const invoiceParts = (quote: Quote, number: string): string[] => [
  `Invoice ${number} for order ${quote.order.order}: ${cinchesText(quote.order)}.`,
  totalText(quote),
];
