/** Is it a standard length? */
import { len, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const SHORTEST = 26;
const LONGEST = 34;
const EIGHTH = 0.125;

/** The nearest even length, inches. */
export const evenLength = (length: number): number => 2 * Math.round(length / 2);

/** Within an eighth, as nobody ties closer: 76 cm is 30 in. */
export const isEven = (length: number): boolean => Math.abs(length - evenLength(length)) <= EIGHTH;

export const usualLength = rule({
  id: 'usual-length',
  question: 'Is it a standard length?',
  reads: [],
  looks: ['length'],
  evidence: [{ basis: 'practice', source: 'usual-lengths', agreement: 'settled' }],
  can: ['good', 'acceptable'],
  judge(_, { length }) {
    const nearest = evenLength(length);
    const even = isEven(length);
    if (even && nearest >= SHORTEST && nearest <= LONGEST) {
      return { judgement: 'good', reason: () => say`${len(length)} is a standard length` };
    }
    const reason = () =>
      even
        ? say`${len(length)} is not a standard length`
        : say`${len(length)} is between the standard steps of ${len(2)}`;
    return { judgement: 'acceptable', reason };
  },
  examples: [
    { shows: '32 in', facts: {}, candidate: { length: 32 }, gives: 'good' },
    { shows: '76 cm, nearly 30 in', facts: {}, candidate: { length: 76 / 2.54 }, gives: 'good' },
    { shows: '31 in', facts: {}, candidate: { length: 31 }, gives: 'acceptable' },
    { shows: '22 in', facts: {}, candidate: { length: 22 }, gives: 'acceptable' },
  ],
  since: '0.1.0',
});
