/** Is a pony tied with as many strands as practice ties ponies? */
import type { Girth } from '../facts/girth-by-ring.ts';
import type { Order } from '../order/types.ts';
import { count, say, type Phrase } from '../units/phrase.ts';
import { rule } from './rule.ts';

const FEWEST = 11;
const MOST = 13;
/** From this girth on, inches (some 12 hands), a pony is tied as a small horse [choice]. */
const LARGE = 60;
const of = (kind: 'pony' | 'stock', value: number) => ({
  order: { horse: { kind } } as unknown as Order,
  girth: { value } as unknown as Girth,
});

const words = (_: unknown, { strands }: { strands: number }): Phrase =>
  strands >= FEWEST && strands <= MOST
    ? say`${count(strands)} strands, as ponies are usually tied`
    : say`${count(strands)} strands: ponies are usually tied with ${count(FEWEST)} to ${count(MOST)}`;

export const ponyStrands = rule({
  id: 'pony-strands',
  question: 'Are these as many strands as ponies are usually tied with?',
  reads: ['order', 'girth'],
  looks: ['strands'],
  evidence: [
    {
      basis: 'practice',
      source: 'common-practice',
      agreement: 'disputed',
      dissent: 'practice names no rigging; where the ring hangs far back the room would take more',
    },
    {
      basis: 'choice',
      source: 'engineering-choice',
      why: 'from 60 in of girth on it is tied as a small horse',
    },
  ],
  can: ['good', 'acceptable', 'not-applicable'],
  judge({ order, girth }, { strands }) {
    if (order.horse.kind !== 'pony')
      return { judgement: 'not-applicable', reason: () => say`nobody called it a pony` };
    if (girth.value >= LARGE)
      return { judgement: 'not-applicable', reason: () => say`so large a pony is tied as a small horse` };
    const margin = Math.min(strands - FEWEST, MOST - strands);
    return { judgement: margin >= 0 ? 'good' : 'acceptable', margin, reason: words };
  },
  examples: [
    { shows: 'a pony with 13 strands', facts: of('pony', 50), candidate: { strands: 13 }, gives: 'good' },
    {
      shows: 'a pony with 17 strands',
      facts: of('pony', 50),
      candidate: { strands: 17 },
      gives: 'acceptable',
    },
    { shows: 'a large pony', facts: of('pony', 64), candidate: { strands: 17 }, gives: 'not-applicable' },
    { shows: 'a stock horse', facts: of('stock', 72), candidate: { strands: 17 }, gives: 'not-applicable' },
  ],
  since: '0.1.0',
});
