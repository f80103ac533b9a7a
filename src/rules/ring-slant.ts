/** Does the ring hang near plumb over the groove? */
import { defaultModel } from '../numbers/numbers.ts';
import { dist, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = (x: number) => ({ ring: { x }, k: 1, model: defaultModel });
const ROUNDING = 1e-9;

export const ringSlant = rule({
  id: 'ring-slant',
  question: 'Does the ring hang near plumb over the groove?',
  reads: ['ring.x', 'k', 'model.slant-fine', 'model.slant-mention', 'model.slant-warn'],
  looks: [],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'poor'],
  judge({ ring, k, model }) {
    const off = Math.abs(ring.x);
    const where = ring.x >= 0 ? 'ahead of' : 'behind';
    const upTo = (bound: number): boolean => off <= bound * k + ROUNDING;
    const margin = model['slant-mention'] * k - off;
    if (upTo(model['slant-fine'])) {
      return {
        judgement: 'good',
        margin,
        reason: () => say`the ring hangs ${dist(off)} from plumb over the groove`,
      };
    }
    const place = () => say`the ring hangs ${dist(off)} ${where} the groove`;
    if (upTo(model['slant-mention'])) return { judgement: 'acceptable', margin, reason: place };
    if (upTo(model['slant-warn'])) {
      return {
        judgement: 'poor',
        margin,
        reason: () => say`the ring hangs ${dist(off)} ${where} the groove, and pulls the cinch that way`,
      };
    }
    return {
      judgement: 'poor',
      margin,
      reason: () =>
        say`the ring hangs ${dist(off)} ${where} the groove: a saddle maker's call; no cinch fixes it`,
    };
  },
  examples: [
    { shows: 'half an inch ahead', facts: facts(0.5), candidate: {}, gives: 'good' },
    { shows: '2 in ahead: full position', facts: facts(2), candidate: {}, gives: 'acceptable' },
    { shows: '3 in behind', facts: facts(-3), candidate: {}, gives: 'poor' },
    { shows: '5 in behind', facts: facts(-5), candidate: {}, gives: 'poor' },
  ],
  since: '0.1.0',
});
