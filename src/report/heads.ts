/** What every screen about an order has at its head and its foot. */
import type { Advice } from '../advice/advice.ts';
import { welfareTexts } from './about-styles.ts';
import { ownNumbers, ringText, roomText, situation } from './about-order.ts';
import { visible } from './clean.ts';
import { item, markOf, sentence, title, type Page } from './page.ts';
import { phraseText } from './text.ts';
import { orderTitle } from './words.ts';

/** Further lines two columns in. */
export const hanging = { first: 0, rest: 2 };

/** The one line that a failed order leaves among the others; its problems go to the messages. */
export function unreadLines(
  { file, order }: { file: string; order?: string | undefined },
  page: Page,
): string[] {
  const named = order === undefined ? 'An order' : `Order ${visible(order)}`;
  return sentence(page, `${named} in ${visible(file)} could not be read: see the messages.`);
}

/** Cautions that go with every order, said once for all of them. */
export function cautionLines(
  results: readonly { ok: boolean; advice?: Pick<Advice, 'cautions'> }[],
  page: Page,
): string[] {
  const all = new Set(results.flatMap(({ advice }) => advice?.cautions ?? []));
  return all.size === 0 ? [] : ['', ...leadIn(page, 'Keep in mind:', [...all].join(' '), 0)];
}

/** A paragraph that starts with a strong word. */
export function leadIn(
  page: Page,
  ...[lead, text, rest = 2]: [lead: string, text: string, rest?: number]
): string[] {
  const [first = '', ...more] = sentence(page, `${lead} ${text}`, { first: 0, rest });
  return [first.replace(lead, page.pen.strong(lead)), ...more];
}

/** Title, what comes before any cinch, the pair, room and ring: the head of every screen about an order. */
export function headLines(advice: Advice, page: Page): string[] {
  const { facts, remarks } = advice;
  const own = ownNumbers(facts);
  return [
    ...title(page, orderTitle(facts.order)),
    ...welfareTexts(advice, page.units).flatMap((text) => item(page, text, markOf('poor', page, 0))),
    ...sentence(page, situation(facts, page.units), hanging),
    ...sentence(page, roomText(facts, page.units), hanging),
    ...sentence(page, ringText(facts, page.units), hanging),
    ...(own === undefined ? [] : sentence(page, own, hanging)),
    ...remarks.flatMap((remark) => sentence(page, phraseText(remark, page.units), hanging)),
  ];
}
