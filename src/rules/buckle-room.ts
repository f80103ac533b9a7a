/** Does the buckle's frame stay clear of the elbow? */
import { defaultModel } from '../numbers/numbers.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { gap, say, type Phrase } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule } from './rule.ts';

const facts = { k: 1, model: defaultModel };
const at = (inches: number) => ({ frameClearance: { inches } });

const kept = (
  _: unknown,
  { frameClearance: { inches } }: Seen<Candidate, 'frameClearance.inches'>,
): Phrase =>
  inches < 0
    ? say`the buckle's frame reaches onto the elbow`
    : say`the buckle's frame stays ${gap(inches)} off the elbow`;

export const buckleRoom = rule({
  id: 'buckle-room',
  question: "Does the buckle's frame stay clear of the elbow?",
  reads: ['k', 'model.muscle-floor', 'model.muscle-wanted'],
  looks: ['frameClearance.inches'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'poor'],
  judge({ k, model }, { frameClearance: { inches } }) {
    const floor = model['muscle-floor'] * k;
    const wanted = model['muscle-wanted'] * k;
    const judgement = inches >= wanted ? 'good' : inches >= floor ? 'acceptable' : 'poor';
    return { judgement, margin: inches - floor, reason: kept };
  },
  examples: [
    { shows: 'a frame 1 in away', facts, candidate: at(1), gives: 'good' },
    { shows: 'a frame 0.25 in away', facts, candidate: at(0.25), gives: 'acceptable' },
    { shows: 'a frame over the elbow line', facts, candidate: at(-0.25), gives: 'poor' },
  ],
  since: '0.1.0',
});
