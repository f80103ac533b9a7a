/** Are there enough cords for the work? */
import type { Order, Use } from '../order/types.ts';
import { count, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

/** Strands that are enough for work that pulls, and that are few [common practice, no source]. */
const work: Readonly<Partial<Record<Use, { readonly enough: number; readonly few: number }>>> = {
  roping: { enough: 19, few: 15 },
  ranch: { enough: 17, few: 13 },
};

/** Strands that the work asks for; 0 where it asks for none. */
export const enoughFor = (use: Use | undefined): number => (use === undefined ? 0 : (work[use]?.enough ?? 0));

const ropes = { order: { use: 'roping' } as unknown as Order };

export const ropingStrength = rule({
  id: 'roping-strength',
  question: 'Are there enough cords for roping or ranch work?',
  reads: ['order'],
  looks: ['strands'],
  evidence: [
    {
      basis: 'practice',
      source: 'common-practice',
      agreement: 'disputed',
      dissent: 'no published strength of mohair cinches was found, and no load rating is claimed',
    },
  ],
  can: ['good', 'acceptable', 'poor', 'not-applicable', 'cannot-tell'],
  judge({ order }, { strands }) {
    if (order.use === undefined)
      return { judgement: 'cannot-tell', reason: () => say`nobody said what the horse is used for` };
    const asks = work[order.use];
    if (asks === undefined)
      return {
        judgement: 'not-applicable',
        reason: () => say`${order.use ?? 'it'} pulls no harder than riding`,
      };
    const judgement = strands >= asks.enough ? 'good' : strands >= asks.few ? 'acceptable' : 'poor';
    const words = judgement === 'good' ? 'as usual for' : 'more are usual for';
    const reason = () => say`${count(strands)} strands: ${words} ${order.use ?? 'it'}`;
    return { judgement, margin: strands - asks.enough, reason };
  },
  examples: [
    { shows: '21 strands to rope from', facts: ropes, candidate: { strands: 21 }, gives: 'good' },
    { shows: '17 strands to rope from', facts: ropes, candidate: { strands: 17 }, gives: 'acceptable' },
    { shows: '11 strands to rope from', facts: ropes, candidate: { strands: 11 }, gives: 'poor' },
    {
      shows: '17 strands for ranch work',
      facts: { order: { use: 'ranch' } as unknown as Order },
      candidate: { strands: 17 },
      gives: 'good',
    },
    {
      shows: 'a trail horse',
      facts: { order: { use: 'trail' } as unknown as Order },
      candidate: { strands: 17 },
      gives: 'not-applicable',
    },
    {
      shows: 'use not said',
      facts: { order: {} as unknown as Order },
      candidate: { strands: 17 },
      gives: 'cannot-tell',
    },
  ],
  since: '0.1.0',
});
