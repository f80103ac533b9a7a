/** The value of each question, in sentences. */
import { answeredByPhoto, type QuestionName } from '../advice/questions.ts';
import type { AskResult, Worth } from '../advice/ask.ts';
import type { Mean } from '../math/worth.ts';
import type { Order } from '../order/types.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import { listed } from '../units/phrase.ts';
import { visible } from '../units/clean.ts';
import { chanceText, quantityText, type Units } from '../units/text.ts';
import type { Unread } from './types.ts';
import { aCinch } from './counter-words.ts';

export type AskedOrder =
  | {
      readonly ok: true;
      readonly file: string;
      readonly result: AskResult;
      /** Before cutting first, then most useful. */
      readonly toAsk: readonly Worth[];
      /** In place of some of them. */
      readonly photo: Worth | undefined;
    }
  | Unread;

export type Asked = AskedOrder & { readonly ok: true };

/** "6%, give or take 1", "under 1%". */
export function gainText({ mean, error }: Mean): string {
  const percent = Math.round(100 * mean);
  if (percent < 1) return 'under 1%';
  const spread = Math.round(100 * error);
  return `${String(percent)}%${spread < 1 ? '' : `, give or take ${String(spread)}`}`;
}

/** "May change the cinch or a verdict: 73%, ..." */
export function changeText({ changes, instead }: Worth, units: Units): string {
  if (changes.mean < 0.005) return 'Changes nothing about what we tie.';
  const most =
    instead === undefined
      ? ''
      : `, most often to ${aCinch(instead)}, ${quantityText({ value: instead.length, as: 'length' }, units)} long`;
  return `May change the cinch or a verdict: ${chanceText(changes.mean)}${most}.`;
}

const { 'worth-gain': worthGain, 'worth-change': worthChange } = askingNumbers;

/** When a question is worth asking. */
export const thresholdText = (): string =>
  `A question is worth asking if it adds at least ${chanceText(worthGain.value)}, one remake saved in a hundred (asking takes minutes, a remake hours), or changes the cinch or a verdict at least ${chanceText(worthChange.value)} of the time.`;

/** Questions not worth asking. */
export function leftOutText(worths: readonly Worth[]): string | undefined {
  const left = worths.filter(({ worthAsking }) => !worthAsking).map(({ name }) => name);
  return left.length === 0 ? undefined : `Not worth asking: ${listed(left)}.`;
}

/** Why we ask nothing. */
export const nothingText = ({ worths }: AskResult): string =>
  worths.length === 0
    ? 'Nothing left to ask: everything we could ask for is measured.'
    : `Nothing to ask. ${leftOutText(worths) ?? ''}`;

/** The questions a photo would answer. */
export const insteadOf = (toAsk: readonly Worth[]): readonly QuestionName[] =>
  toAsk.map(({ name }) => name).filter((name) => answeredByPhoto.includes(name));

/** Same name, phone and mail: one customer. Orders without a customer sort last. */
function customerKey({ customer, order }: Order): string {
  const parts = [customer?.name, customer?.phone, customer?.email].map((part) => (part ?? '').trim());
  return parts.every((part) => part === '')
    ? `\uffff${order}`
    : parts.map((part) => part.toLowerCase()).join('\n');
}

/** "Wilma Tarrow", or the order number. */
export const customerName = ({ customer, order }: Order): string => {
  const name = customer?.name?.trim() ?? '';
  return name === '' ? `Customer of order ${visible(order)}` : visible(name);
};

export interface OfCustomer {
  readonly orders: readonly Asked[];
}

/** Sorted by customer, then order. */
export function byCustomer(results: readonly AskedOrder[]): OfCustomer[] {
  const groups = new Map<string, Asked[]>();
  for (const result of results) {
    if (!result.ok) continue;
    const key = customerKey(result.result.advice.facts.order);
    const known = groups.get(key);
    if (known === undefined) groups.set(key, [result]);
    else known.push(result);
  }
  const text = ({ result, file }: Asked): string => `${result.advice.facts.order.order}\n${file}`;
  const sorted = [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
  return sorted.map(([, orders]) => ({ orders: orders.sort((a, b) => (text(a) < text(b) ? -1 : 1)) }));
}
