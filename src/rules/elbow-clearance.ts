/** Does the leading edge stay clear of the elbow? */
import { defaultModel } from '../numbers/numbers.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { chance, dist, gap, overlap, say, type Phrase } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule } from './rule.ts';

/** Closer distances would print alike. */
const SAME = 0.03;

const facts = { model: defaultModel };
const at = (inches: number, likely: number, where: 'cinch' | 'buckle' = 'cinch') => {
  const skin = where === 'cinch';
  return { clearance: { inches, likely, chance: likely, where, skin, floor: skin ? 1 : 0 } };
};

type Parts = Seen<Candidate, `clearance.${'inches' | 'floor' | 'skin' | 'where' | 'chance'}`>;

/** Against muscle, anything short of the elbow line will do. */
const clears = (_: unknown, { clearance: { inches, floor, skin, where, chance: sure } }: Parts): Phrase =>
  skin
    ? say`should clear the elbow by about ${gap(inches)}; ${chance(sure)} to keep the ${dist(floor)} it needs`
    : say`should clear the elbow by about ${gap(inches)} ${where === 'buckle' ? 'at the buckle' : 'above its point'}; ${chance(sure)} to clear`;

function tooNear(_: unknown, { clearance: { inches, floor, where } }: Parts): Phrase {
  if (inches < 0 && where === 'buckle')
    return say`the buckle reaches onto the elbow, about ${overlap(-inches)}`;
  if (inches < 0) return say`reaches onto the elbow, about ${overlap(-inches)}`;
  if (inches > floor - SAME) return say`too close: just short of the ${dist(floor)} it needs`;
  return say`too close: ${gap(inches)} off the elbow, needs ${dist(floor)}`;
}

export const elbowClearance = rule({
  id: 'elbow-clearance',
  question: 'Does the cinch stay clear of the elbow?',
  reads: ['model.chance-good', 'model.chance-acceptable'],
  looks: [
    'clearance.inches',
    'clearance.floor',
    'clearance.skin',
    'clearance.where',
    'clearance.chance',
    'clearance.likely',
  ],
  evidence: [
    { basis: 'practice', source: 'common-practice', agreement: 'settled' },
    { basis: 'published', source: 'murray-2013', where: 'pressure peaks over the muscle behind the elbow' },
  ],
  can: ['good', 'acceptable', 'poor', 'refuse'],
  judge({ model }, { clearance }) {
    const margin = clearance.inches - clearance.floor;
    if (margin < 0) return { judgement: 'refuse', margin, reason: tooNear };
    const { likely } = clearance;
    const good = likely >= model['chance-good'];
    const judgement = good ? 'good' : likely >= model['chance-acceptable'] ? 'acceptable' : 'poor';
    return { judgement, margin, reason: clears };
  },
  examples: [
    { shows: '1.5 in of clearance, 85% sure', facts, candidate: at(1.5, 0.85), gives: 'good' },
    { shows: '1.25 in, 70% sure', facts, candidate: at(1.25, 0.7), gives: 'acceptable' },
    { shows: '1.05 in, 54% sure', facts, candidate: at(1.05, 0.54), gives: 'poor' },
    { shows: '0.8 in, under the floor of 1 in', facts, candidate: at(0.8, 0.3), gives: 'refuse' },
    { shows: '0.99 in, just short of the floor', facts, candidate: at(0.99, 0.49), gives: 'refuse' },
    { shows: 'a buckle a quarter inch away', facts, candidate: at(0.25, 0.7, 'buckle'), gives: 'acceptable' },
    { shows: 'a buckle over the elbow line', facts, candidate: at(-0.1, 0.4, 'buckle'), gives: 'refuse' },
    { shows: 'half an inch over the elbow line', facts, candidate: at(-0.5, 0.01), gives: 'refuse' },
  ],
  since: '0.1.0',
});
