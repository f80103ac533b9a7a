/** How hard would this width press behind the elbow, compared with the others? */
import type { Candidate } from '../fit/candidate.ts';
import { psi, say, type Phrase } from '../units/phrase.ts';
import { rule } from './rule.ts';

/** Mean and maximum under a saddle, kPa to psi. */
const MEAN = 13.2 / 6.894757;
const MOST = 34.5 / 6.894757;
/** Sensors read up to 42 % away from the hoop law. */
const SPREAD = 1.42;

const presses = (_: unknown, { pressure }: Pick<Candidate, 'pressure'>): Phrase =>
  say`${psi(pressure)} behind the elbow, a number only to compare widths by`;

export const pressureIndex = rule({
  id: 'pressure-index',
  question: 'How hard does this width press behind the elbow?',
  reads: [],
  looks: ['pressure'],
  evidence: [
    {
      basis: 'published',
      source: 'werner-2002',
      where: 'limits under a saddle: mean 13.2, maximum 34.5 kPa',
    },
    { basis: 'published', source: 'girth-tension', where: '13 kgf of girth tension' },
    {
      basis: 'practice',
      source: 'hoop-law',
      agreement: 'disputed',
      dissent: 'sensors read up to 42 % away from it',
    },
  ],
  can: ['good', 'acceptable', 'poor'],
  judge(_, { pressure }) {
    const judgement = pressure * SPREAD <= MEAN ? 'good' : pressure * SPREAD <= MOST ? 'acceptable' : 'poor';
    return { judgement, margin: MEAN - pressure, reason: presses };
  },
  examples: [
    { shows: 'index 1 psi', facts: {}, candidate: { pressure: 1 }, gives: 'good' },
    {
      shows: 'index 1.8 psi: within the mean limit, but not by its spread',
      facts: {},
      candidate: { pressure: 1.8 },
      gives: 'acceptable',
    },
    { shows: 'index 4 psi', facts: {}, candidate: { pressure: 4 }, gives: 'poor' },
  ],
  since: '0.1.0',
});
