/** Questions at the counter: one order in full, many as one list by customer. */
import type { Worth } from '../ask/ask.ts';
import { listed } from '../units/phrase.ts';
import {
  byCustomer,
  changeText,
  customerName,
  gainText,
  insteadOf,
  leftOutText,
  meaningText,
  nothingText,
  nowText,
  orderText,
  thresholdText,
  type Asked,
  type AskedOrder,
} from './about-ask.ts';
import { questionWords } from './ask-words.ts';
import { visible } from './clean.ts';
import { cautionLines, hanging, unreadLines } from './heads.ts';
import { bothEnds, heading, item, pageFor, pageText, sentence, title, type Page } from './page.ts';
import { capital, chanceText } from './text.ts';
import type { ReportOptions } from './types.ts';
import { orderTitle } from './words.ts';

type Options = Pick<ReportOptions, 'color' | 'units' | 'width'>;

/** One order fills the screen; several become a list by customer. */
export function askScreen(results: readonly AskedOrder[], options: Options): string {
  const page = pageFor(options);
  const read = results.filter((result) => result.ok);
  const [only] = read;
  const body =
    read.length === 1 && only !== undefined
      ? orderLines(only, page)
      : read.length === 0
        ? []
        : listLines(read, page);
  const unread = results.flatMap((result) => (result.ok ? [] : unreadLines(result, page)));
  const advised = read.map(({ result }) => ({ ok: true, advice: result.advice }));
  return pageText([
    ...body,
    ...(unread.length > 0 && body.length > 0 ? [''] : []),
    ...unread,
    ...cautionLines(advised, page),
  ]);
}

function orderLines({ result, toAsk, photo }: Asked, page: Page): string[] {
  const { order } = result.advice.facts;
  const left = leftOutText(result.worths);
  return [
    ...title(page, orderTitle(order)),
    ...sentence(page, nowText(result, page.units), hanging),
    ...(toAsk.length === 0
      ? ['', ...sentence(page, nothingText(result), hanging)]
      : questionLines(toAsk, page)),
    ...(photo === undefined ? [] : photoLines(photo, toAsk, page)),
    ...(toAsk.length === 0 || left === undefined ? [] : ['', ...sentence(page, left, hanging)]),
    '',
    ...sentence(page, thresholdText(), hanging),
    ...(result.worths.length === 0 ? [] : sentence(page, meaningText(result), hanging)),
  ];
}

function questionLines(toAsk: readonly Worth[], page: Page): string[] {
  return [
    ...heading(page, `Ask, ${orderText(toAsk)}`),
    ...toAsk.flatMap((worth, i) => cardLines(worth, `${String(i + 1).padStart(3)}  `, page)),
  ];
}

const photoLines = (photo: Worth, toAsk: readonly Worth[], page: Page): string[] => [
  ...heading(page, `Or, instead of ${listed(insteadOf(toAsk))}`),
  ...cardLines(photo, '  -  ', page),
];

function cardLines(worth: Worth, lead: string, page: Page): string[] {
  const { asked, how, safely } = questionWords[worth.name];
  const name = `${lead}${asked}${worth.beforeCutting ? ' (before any cord is cut)' : ''}`;
  const [first = '', ...more] = bothEnds(page, name, gainText(worth.gain));
  return [
    first.replace(name, page.pen.strong(name)),
    ...more,
    ...sentence(page, changeText(worth, page.units), 5),
    ...sentence(page, `${how} ${safely}`, 5),
  ];
}

function listLines(read: readonly Asked[], page: Page): string[] {
  const customers = byCustomer(read).map(({ orders }) => ({
    orders: orders.filter(({ toAsk }) => toAsk.length > 0),
  }));
  const asked = customers.filter(({ orders }) => orders.length > 0);
  const done = read
    .filter(({ toAsk }) => toAsk.length === 0)
    .map(({ result }) => result.advice.facts.order.order);
  const count = read.length - done.length;
  return [
    ...title(page, `Questions by customer: ${String(count)} of ${String(read.length)} orders`),
    ...asked.flatMap(({ orders }, i) => [...(i === 0 ? [] : ['']), ...customerLines(orders, page)]),
    ...(done.length === 0
      ? []
      : ['', ...sentence(page, `No question is worth asking about ${listed(done.map(visible))}.`, hanging)]),
    '',
    ...sentence(page, thresholdText(), hanging),
    ...sentence(
      page,
      'In brackets: the gain in the chance that the cinch clears and reaches, and how often the answer changes what is tied or a verdict.',
      hanging,
    ),
  ];
}

function customerLines(orders: readonly Asked[], page: Page): string[] {
  const [first] = orders;
  if (first === undefined) return [];
  const { order } = first.result.advice.facts;
  const reach = [order.customer?.phone, order.customer?.email].filter(
    (part) => part !== undefined && part !== '',
  );
  const name = [customerName(order), ...reach].join(', ');
  return [
    ...sentence(page, name, hanging).map((line) => page.pen.strong(line)),
    ...orders.flatMap((each) => item(page, lineOf(each))),
  ];
}

function lineOf({ result, toAsk, photo }: Asked): string {
  const { order } = result.advice.facts;
  const horse = order.horse.name === undefined ? '' : `, horse ${visible(order.horse.name)}`;
  const parts = toAsk.map(
    (worth) => `${worth.name}${worth.beforeCutting ? ' (before any cord is cut)' : ''} ${shortWorth(worth)}`,
  );
  const instead =
    photo === undefined
      ? ''
      : `; or a side photo ${shortWorth(photo)} instead of ${listed(insteadOf(toAsk))}`;
  return `Order ${visible(order.order)}${horse}: ${capital(parts.join(', '))}${instead}.`;
}

const shortWorth = ({ gain, changes }: Worth): string => {
  const percent = Math.round(100 * gain.mean);
  return `(${percent < 1 ? 'under 1 %' : `+${String(percent)} %`}, changes ${chanceText(changes.mean)})`;
};
