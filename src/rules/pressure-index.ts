/** How hard would this width press behind the elbow? */
import type { Candidate } from '../cinch/candidate.ts';
import { psi, say, type Phrase } from '../units/phrase.ts';
import { rule } from './rule.ts';

/** Mean limit under a saddle, kPa to psi; none is known for girths, so nothing is poor [choice]. */
const MEAN = 13.2 / 6.894757;
/** Sensors under bandages read up to 42% below the hoop law; counted both ways [choice]. */
const SPREAD = 1.42;

const presses = (_: unknown, { pressure }: Pick<Candidate, 'pressure'>): Phrase =>
  say`${psi(pressure)} behind the elbow; compares widths only`;

export const pressureIndex = rule({
  id: 'pressure-index',
  question: 'How hard does this width press behind the elbow?',
  reads: [],
  looks: ['pressure'],
  evidence: [
    { basis: 'published', source: 'hoop-law', where: 'the highest behind the elbow' },
    { basis: 'published', source: 'girth-tension', where: '13 kgf of girth tension' },
    {
      basis: 'published',
      source: 'garrigues-ramon-2021',
      where: 'the spread of the law',
    },
    { basis: 'published', source: 'werner-2002', where: 'the mean under a saddle, 13.2 kPa' },
    {
      basis: 'choice',
      source: 'engineering-choice',
      why: 'we found no limit for girths, so the one for saddles splits good from acceptable and nothing is poor; the 42% counts both ways',
    },
  ],
  can: ['good', 'acceptable'],
  judge(_, { pressure }) {
    const judgement = pressure * SPREAD <= MEAN ? 'good' : 'acceptable';
    return { judgement, margin: MEAN - pressure, reason: presses };
  },
  examples: [
    { shows: 'index 1 psi', facts: {}, candidate: { pressure: 1 }, gives: 'good' },
    {
      shows: 'index 1.8 psi: within the limit, but by less than its spread',
      facts: {},
      candidate: { pressure: 1.8 },
      gives: 'acceptable',
    },
    {
      shows: 'index 4 psi: over it, but not poor, as no girth limit is known',
      facts: {},
      candidate: { pressure: 4 },
      gives: 'acceptable',
    },
  ],
  since: '0.1.0',
});
