/** Is it a length the trade keeps? */
import { len, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const SHORTEST = 26;
const LONGEST = 34;

export const usualLength = rule({
  id: 'usual-length',
  question: 'Is it a length the trade keeps?',
  reads: [],
  looks: ['length'],
  evidence: [{ basis: 'practice', source: 'usual-lengths', agreement: 'settled' }],
  can: ['good', 'acceptable'],
  judge(_, { length }) {
    const even = Math.abs(length / 2 - Math.round(length / 2)) < 1e-9;
    if (even && length >= SHORTEST && length <= LONGEST) {
      return { judgement: 'good', reason: () => say`${len(length)} is a length the trade keeps` };
    }
    const why = even ? 'outside the usual lengths' : 'between the usual 2 in steps';
    return { judgement: 'acceptable', reason: () => say`${len(length)} is ${why}` };
  },
  examples: [
    { shows: '32 in', facts: {}, candidate: { length: 32 }, gives: 'good' },
    { shows: '31 in', facts: {}, candidate: { length: 31 }, gives: 'acceptable' },
    { shows: '22 in', facts: {}, candidate: { length: 22 }, gives: 'acceptable' },
  ],
  since: '0.1.0',
});
