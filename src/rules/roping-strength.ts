/** Are there enough cords for a horse that is roped from? */
import type { Order } from '../order/types.ts';
import { count, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const ENOUGH = 19;
const FEW = 15;
const ropes = { order: { use: 'roping' } as unknown as Order };

export const ropingStrength = rule({
  id: 'roping-strength',
  question: 'Are there enough cords to rope from?',
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
    if (order.use !== 'roping')
      return { judgement: 'not-applicable', reason: () => say`it is not roped from` };
    const judgement = strands >= ENOUGH ? 'good' : strands >= FEW ? 'acceptable' : 'poor';
    const words = judgement === 'good' ? 'as ropers are usually tied' : 'ropers are usually tied with more';
    return { judgement, margin: strands - ENOUGH, reason: () => say`${count(strands)} strands: ${words}` };
  },
  examples: [
    { shows: '21 strands to rope from', facts: ropes, candidate: { strands: 21 }, gives: 'good' },
    { shows: '17 strands to rope from', facts: ropes, candidate: { strands: 17 }, gives: 'acceptable' },
    { shows: '11 strands to rope from', facts: ropes, candidate: { strands: 11 }, gives: 'poor' },
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
