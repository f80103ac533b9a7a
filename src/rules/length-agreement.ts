/** Does the length agree with the girth's rule of thumb? */
import { defaultModel } from '../numbers/numbers.ts';
import { len, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = { lengthNeed: { crossCheck: 32, measured: true }, model: defaultModel };

export const lengthAgreement = rule({
  id: 'length-agreement',
  question: 'Does the length agree with the rule of thumb from the girth?',
  reads: ['lengthNeed.crossCheck', 'lengthNeed.measured', 'model.length-disagreement'],
  looks: ['length'],
  evidence: [
    {
      basis: 'published',
      source: 'extension-length',
      where: 'heart girth / 2 - 3, rounded up to a whole number',
    },
    {
      basis: 'choice',
      source: 'engineering-choice',
      why: 'to an even number, because the shop keeps even lengths',
    },
  ],
  can: ['good', 'acceptable'],
  judge({ lengthNeed, model }, { length }) {
    const apart = Math.abs(length - lengthNeed.crossCheck);
    const margin = model['length-disagreement'] - apart;
    if (margin >= -1e-9) {
      return {
        judgement: 'good',
        margin,
        reason: () => say`agrees with the rule of thumb, ${len(lengthNeed.crossCheck)} by the girth`,
      };
    }
    // There is no tape to check yet.
    const reason = () =>
      lengthNeed.measured
        ? say`${len(apart)} off the rule of thumb, ${len(lengthNeed.crossCheck)} by the girth: check the tape`
        : say`${len(apart)} off the rule of thumb, ${len(lengthNeed.crossCheck)} by the girth: tape ring to ring`;
    return { judgement: 'acceptable', margin, reason };
  },
  examples: [
    { shows: '32 in where the girth says 32', facts, candidate: { length: 32 }, gives: 'good' },
    { shows: '28 in where the girth says 32', facts, candidate: { length: 28 }, gives: 'acceptable' },
  ],
  since: '0.1.0',
});
