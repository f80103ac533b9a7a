/** What every backlog paper says about its orders. */
import { problemText } from '../work/problem-text.ts';
import type { Keyed } from '../work/planned.ts';
import { under, type Block } from '../pages/sheet.ts';
import { phraseText } from '../units/text.ts';
import type { PaperResult } from './types.ts';
import { specName } from './words.ts';

export type BacklogResult = PaperResult<Keyed>;

/** Comes first, so nobody cuts to a guess. */
export function provisionalNotice(orders: readonly Pick<Keyed, 'key' | 'ticket'>[]): string | undefined {
  const names = orders.filter(({ ticket }) => !ticket.measured).map(({ key }) => key);
  if (names.length === 0) return undefined;
  return `Do not cut until ring to ring is measured: ${names.join(', ')}. Their lengths, cord and hours may change.`;
}

/** Horses to look after, and measurements to take again. */
export function doubtBlocks(orders: readonly Pick<Keyed, 'key' | 'doubts' | 'welfare'>[]): Block[] {
  const items = (of: 'doubts' | 'welfare'): string[] =>
    orders.flatMap((order) => {
      const texts = order[of].map((phrase) => phraseText(phrase, 'in'));
      return texts.length === 0 ? [] : [`${order.key}: ${texts.join(' ')}`];
    });
  return [
    ...under('The horse first', [{ kind: 'list', items: items('welfare') }]),
    ...under('Measure again', [{ kind: 'list', items: items('doubts') }]),
  ];
}

/** The cinch of an order, and why. */
export function takenText({ candidate, takes, ticket }: Keyed): string {
  const many = ticket.quantity === 1 ? '' : `${String(ticket.quantity)} x `;
  const why = takes === 'wish' ? 'as the customer asked' : 'our pick';
  return `${many}${specName(candidate)}, ${why}`;
}

/** Orders not included, and why. */
export function leftOutBlocks(results: readonly BacklogResult[]): Block[] {
  const items = results.flatMap((result) => {
    const name = result.order === undefined ? '' : `${result.order} `;
    if (!result.ok)
      return [`${name}(${result.file}): not read: ${problemText(result.problems)}`.replace(/[^?]$/, '$&.')];
    return result.none === undefined ? [] : [`${name}(${result.file}): ${result.none}.`];
  });
  return under('Not included', [{ kind: 'list', items }]);
}

/** "natural, 8-ply". */
export const cordName = ({ color, ply }: { color: string | undefined; ply: number }): string =>
  `${color ?? 'no color chosen'}, ${String(ply)}-ply`;
