/** Does this length leave enough latigo, but not too much? */
import { defaultModel } from '../numbers/numbers.ts';
import { dist, overlap, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = { model: defaultModel };

export const latigoRun = rule({
  id: 'latigo-run',
  question: 'Does this length leave a usable ring-to-buckle gap on each side?',
  reads: ['model.run-least', 'model.run-low', 'model.run-high', 'model.run-most'],
  looks: ['run', 'runSd'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'poor', 'refuse'],
  judge({ model }, { run, runSd }) {
    const margin = Math.min(run - model['run-low'], model['run-high'] - run);
    const tooShort = run < model['run-least'];
    if (tooShort || run > model['run-most']) {
      const bound = tooShort ? model['run-least'] : model['run-most'];
      const side = tooShort ? 'too short' : 'too long';
      const rest = tooShort ? 'needs' : 'at most';
      return {
        judgement: 'refuse',
        margin: Math.min(run - model['run-least'], model['run-most'] - run),
        reason: () =>
          run < 0
            ? say`the cinch reaches ${overlap(-run)} past each ring; the ring-to-buckle gap needs ${dist(bound)}`
            : say`ring-to-buckle gap ${side}: ${dist(run)} each side, ${rest} ${dist(bound)}`,
      };
    }
    // A margin smaller than its spread is not good.
    const judgement = margin < 0 ? 'poor' : margin < runSd ? 'acceptable' : 'good';
    return {
      judgement,
      margin,
      reason: () => say`ring-to-buckle gap ${dist(run)} each side, give or take ${dist(runSd)}`,
    };
  },
  examples: [
    { shows: '6 in each side, taped', facts, candidate: { run: 6, runSd: 0.35 }, gives: 'good' },
    {
      shows: '6 in each side, give or take 3 in',
      facts,
      candidate: { run: 6, runSd: 3 },
      gives: 'acceptable',
    },
    { shows: '9 in each side', facts, candidate: { run: 9, runSd: 0.35 }, gives: 'poor' },
    { shows: '2 in each side', facts, candidate: { run: 2, runSd: 0.35 }, gives: 'refuse' },
    { shows: '1 in past the ring', facts, candidate: { run: -1, runSd: 0.35 }, gives: 'refuse' },
  ],
  since: '0.1.0',
});
