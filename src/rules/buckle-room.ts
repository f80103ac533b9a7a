/** Does the buckle's own frame stay clear of the elbow? */
import type { Candidate } from '../fit/candidate.ts';
import { dist, say, type Phrase } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = { floor: 1, required: 1.25 };

const kept = (_: unknown, { buckleClearance }: Pick<Candidate, 'buckleClearance'>): Phrase =>
  buckleClearance < 0
    ? say`the buckle's frame lies over the elbow line`
    : say`the buckle's frame keeps ${dist(buckleClearance)} from the elbow line`;

export const buckleRoom = rule({
  id: 'buckle-room',
  question: "Does the buckle's frame stay clear of the elbow?",
  reads: ['floor', 'required'],
  looks: ['buckleClearance'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'poor'],
  judge({ floor, required }, { buckleClearance }) {
    const judgement = buckleClearance >= required ? 'good' : buckleClearance >= floor ? 'acceptable' : 'poor';
    return { judgement, margin: buckleClearance - floor, reason: kept };
  },
  examples: [
    { shows: 'a frame 2.5 in away', facts, candidate: { buckleClearance: 2.5 }, gives: 'good' },
    { shows: 'a frame 1.1 in away', facts, candidate: { buckleClearance: 1.1 }, gives: 'acceptable' },
    { shows: 'a frame 0.5 in away', facts, candidate: { buckleClearance: 0.5 }, gives: 'poor' },
  ],
  since: '0.1.0',
});
