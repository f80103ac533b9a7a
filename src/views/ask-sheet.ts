/** `ask` at the counter: what to ask, most useful first. */
import type { Worth } from '../advice/ask.ts';
import { isUnsure } from '../advice/judge.ts';
import { listed } from '../units/phrase.ts';
import {
  byCustomer,
  changeText,
  customerName,
  gainText,
  insteadOf,
  leftOutText,
  nothingText,
  type Asked,
  type AskedOrder,
} from '../words/about-ask.ts';
import { visible } from '../units/clean.ts';
import { shortCaution } from '../numbers/cautions.ts';
import { cinchText, orderName } from '../words/counter-words.ts';
import { counterSheet, paragraph, under, unreadSheet, type Block, type Sheet } from '../pages/sheet.ts';
import { capital, chanceText, lower, phraseText, type Units } from '../units/text.ts';

const foot = ['Message to the customer: --format text, or --long for the whole of it.', shortCaution];

/** One order in full, several as a list by customer. */
export function askSheets(results: readonly AskedOrder[], units: Units): Sheet[] {
  const read = results.filter((result) => result.ok);
  const [only] = read;
  const sheets =
    read.length > 1 ? [listSheet(read, units)] : only === undefined ? [] : [orderSheet(only, units)];
  return [...sheets, ...results.flatMap((result) => (result.ok ? [] : [unreadSheet(result)]))];
}

const names = (toAsk: readonly Worth[]): string => listed(toAsk.map(({ name }) => name));

function orderSheet({ result, toAsk, photo }: Asked, units: Units): Sheet {
  const { advice } = result;
  const welfare = advice.welfare.map((phrase) => phraseText(phrase, units));
  const ask = toAsk.length === 0 ? nothingText(result) : `ask for ${names(toAsk)}.`;
  const left = leftOutText(result.worths);
  return counterSheet({
    title: orderName(advice.facts.order),
    lead: welfare[0] ?? ask,
    blocks: [
      ...(welfare.length === 0 ? [] : [...welfare.slice(1), capital(ask)].map(paragraph)),
      paragraph(nowText(result, units)),
      ...advice.remarks.map((remark) => paragraph(phraseText(remark, units))),
      { kind: 'list', items: toAsk.map((worth) => worthText(worth, units)), mark: 'number', apart: true },
      ...(photo === undefined
        ? []
        : [
            paragraph(
              `Or a side photo, instead of ${listed(insteadOf(toAsk))}: ${lower(changeText(photo, units))}`,
            ),
          ]),
      ...(left === undefined || toAsk.length === 0 ? [] : [paragraph(left)]),
    ],
    cautions: advice.cautions,
    foot,
  });
}

/** "Elbow room. May change the cinch or a verdict: 73%. Adds 4%." */
const worthText = (worth: Worth, units: Units): string =>
  `${capital(worth.name)}${worth.beforeCutting ? ', before we cut cord' : ''}. ${changeText(worth, units)} Adds ${gainText(worth.gain)}.`;

function nowText({ advice, now }: Asked['result'], units: Units): string {
  const { first } = advice;
  if (first === undefined || now === undefined) return 'For now no cinch we tie passes here.';
  return `For now${isUnsure(first) ? ', not sure' : ''}: ${cinchText(first.candidate, { advice, units })}. ${chanceText(now.both)} to clear the elbow at the right length.`;
}

function listSheet(read: readonly Asked[], units: Units): Sheet {
  const asking = read.filter(({ toAsk }) => toAsk.length > 0);
  const done = read
    .filter(({ toAsk }) => toAsk.length === 0)
    .map(({ result }) => result.advice.facts.order.order);
  return counterSheet({
    title: 'Questions',
    lead: `${String(asking.length)} of ${String(read.length)} orders have a question worth asking.`,
    blocks: [
      ...under('The horse first', [
        { kind: 'list', items: read.flatMap((each) => welfareText(each, units)) },
      ]),
      ...byCustomer(asking).flatMap(({ orders }): Block[] => [
        { kind: 'text', text: reachText(orders), tone: 'strong', apart: true },
        { kind: 'list', items: orders.map(lineOf) },
      ]),
      ...read.flatMap(({ result: { advice } }) =>
        advice.remarks.map((remark) =>
          paragraph(`${visible(advice.facts.order.order)}: ${phraseText(remark, units)}`),
        ),
      ),
      ...(done.length === 0
        ? []
        : [{ ...paragraph(`Nothing to ask about ${listed(done.map(visible))}.`), apart: true } as const]),
      paragraph(
        'In parentheses: what it adds to the chance, and how often it changes the cinch or a verdict.',
      ),
    ],
    cautions: read[0]?.result.advice.cautions ?? [],
    foot,
  });
}

function welfareText({ result: { advice } }: Asked, units: Units): string[] {
  const texts = advice.welfare.map((phrase) => phraseText(phrase, units));
  return texts.length === 0 ? [] : [`${visible(advice.facts.order.order)}: ${texts.join(' ')}`];
}

function reachText([first]: readonly Asked[]): string {
  if (first === undefined) return '';
  const { order } = first.result.advice.facts;
  const reach = [order.customer?.phone, order.customer?.email].filter(
    (part) => part !== undefined && part !== '',
  );
  return [customerName(order), ...reach].join(', ');
}

function lineOf({ result, toAsk, photo }: Asked): string {
  const { order } = result.advice.facts;
  const horse = order.horse.name === undefined ? '' : `, ${visible(order.horse.name)}`;
  const parts = toAsk.map((worth) => `${worth.name} ${shortWorth(worth)}`);
  const instead = photo === undefined ? '' : `; or a side photo ${shortWorth(photo)}`;
  return `${visible(order.order)}${horse}: ${parts.join(', ')}${instead}.`;
}

const shortWorth = ({ gain, changes, beforeCutting }: Worth): string =>
  `(${beforeCutting ? 'before cutting, ' : ''}${gainText(gain)}, changes ${chanceText(changes.mean)})`;
