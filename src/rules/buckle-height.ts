/** Does the buckle sit well above the elbow, and not over the widest part of the barrel? */
import { defaultModel } from '../sources/numbers.ts';
import { dist, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = { k: 1, model: defaultModel };

export const buckleHeight = rule({
  id: 'buckle-height',
  question: 'Does the buckle sit high enough above the elbow, and below the widest part of the barrel?',
  reads: ['k', 'model'],
  looks: ['buckleAboveElbow', 'buckleBelowWidest'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'refuse'],
  judge({ k, model }, { buckleAboveElbow, buckleBelowWidest }) {
    const least = model['buckle-above-elbow-floor'] * k;
    const aim = model['buckle-above-elbow-target'] * k;
    if (buckleBelowWidest < 0) {
      const reason = () =>
        say`puts the buckle's low edge ${dist(-buckleBelowWidest)} above the widest part of the barrel`;
      return { judgement: 'refuse', margin: buckleBelowWidest, reason };
    }
    const margin = buckleAboveElbow - least;
    if (margin < 0) {
      const reason = () =>
        buckleAboveElbow < 0
          ? say`puts the buckle's low edge ${dist(-buckleAboveElbow)} below the point of the elbow; the least is ${dist(least)} above`
          : say`puts the buckle's low edge only ${dist(buckleAboveElbow)} above the point of the elbow; the least is ${dist(least)}`;
      return { judgement: 'refuse', margin, reason };
    }
    const judgement = buckleAboveElbow >= aim ? 'good' : 'acceptable';
    return {
      judgement,
      margin,
      reason: () => say`the buckle sits ${dist(buckleAboveElbow)} above the point of the elbow`,
    };
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
