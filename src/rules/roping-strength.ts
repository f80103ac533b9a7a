/** Are there enough strands for the work? */
import type { Use } from '../order/types.ts';
import { count, say } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule, type CaseFacts } from './rule.ts';

/** [common practice, no source] */
const work: Readonly<Partial<Record<Use, { readonly enough: number; readonly few: number }>>> = {
  roping: { enough: 19, few: 15 },
  ranch: { enough: 17, few: 13 },
};

/** For a pony the usual strands are enough [choice]. */
const PONY = 13;

type Work = Seen<CaseFacts, 'order.use' | 'practice.ponyShare'>;

/** Strands the work needs on this size of horse; 0 for none. */
export function enoughFor({ order: { use }, practice: { ponyShare } }: Work): number {
  const enough = use === undefined ? undefined : work[use]?.enough;
  return enough === undefined ? 0 : enough + (PONY - enough) * ponyShare;
}

const on = (use?: Use, ponyShare = 0): Work => ({ order: { use }, practice: { ponyShare } });

export const ropingStrength = rule({
  id: 'roping-strength',
  question: 'Are there enough strands for roping or ranch work?',
  reads: ['order.use?', 'practice.ponyShare'],
  looks: ['strands'],
  evidence: [
    {
      basis: 'practice',
      source: 'common-practice',
      agreement: 'disputed',
      dissent: 'we found no published strength for mohair cinches and claim no load rating',
    },
    {
      basis: 'choice',
      source: 'engineering-choice',
      why: 'interpolated between pony and horse',
    },
  ],
  can: ['good', 'acceptable', 'poor', 'not-applicable', 'cannot-tell'],
  judge(facts, { strands }) {
    const { order, practice } = facts;
    if (order.use === undefined) return { judgement: 'cannot-tell', reason: () => say`no use given` };
    const asks = work[order.use];
    if (asks === undefined)
      return {
        judgement: 'not-applicable',
        reason: () => say`no extra strength needed for ${order.use ?? 'it'}`,
      };
    const enough = enoughFor(facts);
    const few = asks.few * (1 - practice.ponyShare);
    const judgement = strands >= enough ? 'good' : strands >= few ? 'acceptable' : 'poor';
    const words = judgement === 'good' ? 'enough for' : 'few for';
    const reason = () =>
      say`${count(strands)} strands are ${words} ${order.use === 'ranch' ? 'ranch work' : 'roping'}`;
    return { judgement, margin: strands - enough, reason };
  },
  examples: [
    { shows: '21 strands to rope off of', facts: on('roping'), candidate: { strands: 21 }, gives: 'good' },
    {
      shows: '17 strands to rope off of',
      facts: on('roping'),
      candidate: { strands: 17 },
      gives: 'acceptable',
    },
    {
      shows: '13 strands to rope off of a pony',
      facts: on('roping', 1),
      candidate: { strands: 13 },
      gives: 'good',
    },
    { shows: '11 strands to rope off of', facts: on('roping'), candidate: { strands: 11 }, gives: 'poor' },
    {
      shows: '17 strands for ranch work',
      facts: on('ranch'),
      candidate: { strands: 17 },
      gives: 'good',
    },
    {
      shows: 'a trail horse',
      facts: on('trail'),
      candidate: { strands: 17 },
      gives: 'not-applicable',
    },
    {
      shows: 'no use given',
      facts: on(),
      candidate: { strands: 17 },
      gives: 'cannot-tell',
    },
  ],
  since: '0.1.0',
});
