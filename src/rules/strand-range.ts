/** Does the shop tie that many strands? */
import { count, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const shop = { strands: { min: 11, max: 31 } };

export const strandRange = rule({
  id: 'strand-range',
  question: 'Does the shop tie that many strands?',
  reads: ['shop.strands.min', 'shop.strands.max'],
  looks: ['strands'],
  evidence: [
    { basis: 'practice', source: 'common-practice', agreement: 'settled' },
    { basis: 'choice', source: 'engineering-choice', why: 'the shop file sets the range' },
  ],
  can: ['good', 'refuse'],
  judge({ shop: { strands: range } }, { strands }) {
    if (strands % 2 === 0) {
      const reason = () =>
        say`${count(strands)} strands is even; only an odd count leaves a tail at each buckle`;
      return { judgement: 'refuse', reason };
    }
    const margin = Math.min(strands - range.min, range.max - strands);
    if (margin < 0) {
      const reason = () =>
        say`${count(strands)} strands; the shop ties ${count(range.min)} to ${count(range.max)}`;
      return { judgement: 'refuse', margin, reason };
    }
    return {
      judgement: 'good',
      margin,
      reason: () => say`${count(strands)} strands is a count the shop ties`,
    };
  },
  examples: [
    { shows: '17 of 11 to 31', facts: { shop }, candidate: { strands: 17 }, gives: 'good' },
    { shows: '33 of 11 to 31', facts: { shop }, candidate: { strands: 33 }, gives: 'refuse' },
    { shows: 'an even count', facts: { shop }, candidate: { strands: 18 }, gives: 'refuse' },
  ],
  since: '0.1.0',
});
