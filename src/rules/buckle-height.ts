/** Does the buckle sit high enough, yet below the barrel's widest part? */
import { defaultModel } from '../numbers/numbers.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { dist, gap, overlap, say, type Phrase } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule, type CaseFacts } from './rule.ts';

const facts = { k: 1, model: defaultModel };

type Needed = Seen<CaseFacts, 'k' | 'model.buckle-above-elbow-floor'>;
type Parts = Seen<Candidate, 'buckleAboveElbow' | 'buckleBelowWidest'>;

const leastOf = ({ k, model }: Needed): number => model['buckle-above-elbow-floor'] * k;

const tooHigh = (_: unknown, { buckleBelowWidest }: Parts): Phrase =>
  say`buckle too high: ${overlap(-buckleBelowWidest)} above the widest part of the barrel`;

const tooLow = (seen: Needed, { buckleAboveElbow }: Parts): Phrase =>
  buckleAboveElbow < 0
    ? say`buckle too low: ${overlap(-buckleAboveElbow)} below the point of the elbow, needs ${dist(leastOf(seen))} above`
    : say`buckle too low: ${gap(buckleAboveElbow)} above the point of the elbow, needs ${dist(leastOf(seen))}`;

const sits = (_: unknown, { buckleAboveElbow }: Parts): Phrase =>
  say`the buckle sits ${dist(buckleAboveElbow)} above the point of the elbow`;

export const buckleHeight = rule({
  id: 'buckle-height',
  question: 'Does the buckle sit high enough above the elbow, and below the widest part of the barrel?',
  reads: ['k', 'model.buckle-above-elbow-floor', 'model.buckle-above-elbow-target'],
  looks: ['buckleAboveElbow', 'buckleBelowWidest'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'refuse'],
  judge(seen, { buckleAboveElbow, buckleBelowWidest }) {
    if (buckleBelowWidest < 0) return { judgement: 'refuse', margin: buckleBelowWidest, reason: tooHigh };
    const margin = buckleAboveElbow - leastOf(seen);
    if (margin < 0) return { judgement: 'refuse', margin, reason: tooLow };
    const aim = seen.model['buckle-above-elbow-target'] * seen.k;
    return { judgement: buckleAboveElbow >= aim ? 'good' : 'acceptable', margin, reason: sits };
  },
  examples: [
    {
      shows: '5 in above the elbow',
      facts,
      candidate: { buckleAboveElbow: 5, buckleBelowWidest: 4 },
      gives: 'good',
    },
    {
      shows: '3.5 in above it',
      facts,
      candidate: { buckleAboveElbow: 3.5, buckleBelowWidest: 5 },
      gives: 'acceptable',
    },
    {
      shows: '2 in above it',
      facts,
      candidate: { buckleAboveElbow: 2, buckleBelowWidest: 7 },
      gives: 'refuse',
    },
    {
      shows: 'over the widest part',
      facts,
      candidate: { buckleAboveElbow: 9, buckleBelowWidest: -0.5 },
      gives: 'refuse',
    },
  ],
  since: '0.1.0',
});
