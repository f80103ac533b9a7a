/** Does a high flare crowd the armpit under a forward ring? */
import { defaultModel } from '../numbers/numbers.ts';
import { say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = (value: number) => ({
  ring: { setBack: { value } },
  k: 1,
  model: defaultModel,
});

export const flarePosition = rule({
  id: 'flare-position',
  question: 'Does the flare suit where the ring hangs?',
  reads: ['ring.setBack.value', 'k', 'model.slant-fine'],
  looks: ['style'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'poor', 'not-applicable'],
  judge({ ring, k, model }, { style }) {
    if (style === 'straight')
      return { judgement: 'not-applicable', reason: () => say`a straight has no flare` };
    if (style === 'low-flare') {
      return { judgement: 'good', reason: () => say`the flare starts near the chest, below the elbow` };
    }
    const back = ring.setBack.value;
    const margin = back - model['slant-fine'] * k;
    if (margin < 0) {
      const away = Math.abs(back) < 0.05 ? 'at' : back < 0 ? 'ahead of' : 'close behind';
      const reason = () =>
        say`a high flare crowds the armpit with the ring ${away} full position: never on a full rig`;
      return { judgement: 'poor', margin, reason };
    }
    return {
      judgement: 'good',
      margin,
      reason: () => say`the ring hangs far enough back for a high flare`,
    };
  },
  examples: [
    {
      shows: 'a high flare with the ring 1.5 in back of full (7/8)',
      facts: facts(1.5),
      candidate: { style: 'high-flare' },
      gives: 'good',
    },
    {
      shows: 'a high flare on a full rig',
      facts: facts(0),
      candidate: { style: 'high-flare' },
      gives: 'poor',
    },
    {
      shows: 'a low flare on a full rig',
      facts: facts(0),
      candidate: { style: 'low-flare' },
      gives: 'good',
    },
    { shows: 'a straight', facts: facts(0), candidate: { style: 'straight' }, gives: 'not-applicable' },
  ],
  since: '0.1.0',
});
