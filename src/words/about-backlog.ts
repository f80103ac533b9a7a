/** What every paper about a backlog says of its orders: what is taken, what is provisional, what was left out. */
import { problemText } from '../work/problem-text.ts';
import type { Keyed } from '../work/planned.ts';
import { under, type Block } from '../pages/sheet.ts';
import { phraseText } from '../units/text.ts';
import type { PaperResult } from './types.ts';
import { specName } from './words.ts';

/** An order of the backlog, or why it is not in. */
export type BacklogResult = PaperResult<Keyed>;

/** What must be seen first: nobody cuts to a length that nobody measured. */
export function provisionalNotice(orders: readonly Pick<Keyed, 'key' | 'ticket'>[]): string | undefined {
  const names = orders.filter(({ ticket }) => !ticket.measured).map(({ key }) => key);
  if (names.length === 0) return undefined;
  return `Do not cut until ring to ring is measured: ${names.join(', ')}. Their lengths, and with them cord and hours, may change.`;
}

/** Horses that somebody has to look after first, and what to measure again before anything is cut or promised. */
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

/** The cinch of an order, and why that one. */
export function takenText({ candidate, takes, ticket }: Keyed): string {
  const many = ticket.quantity === 1 ? '' : `${String(ticket.quantity)} x `;
  const why = takes === 'wish' ? 'as the customer asked' : 'first of those that pass';
  return `${many}${specName(candidate)}, ${why}`;
}

/** Orders that are not in, each with its reason. */
export function leftOutBlocks(results: readonly BacklogResult[]): Block[] {
  const items = results.flatMap((result) => {
    const name = result.order === undefined ? '' : `${result.order} `;
    if (!result.ok)
      return [
        `${name}(${result.file}): not read: ${problemText(result.problems) ?? ''}`.replace(/[^?]$/, '$&.'),
      ];
    return result.none === undefined ? [] : [`${name}(${result.file}): ${result.none}.`];
  });
  return under('Left out', [{ kind: 'list', items }]);
}

/** "natural, 8-ply". */
export const cordName = ({ color, ply }: { color: string | undefined; ply: number }): string =>
  `${color ?? 'color not said'}, ${String(ply)}-ply`;
