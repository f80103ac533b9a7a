/** Does the style hold a saddle that slips? */
import type { Trouble } from '../order/types.ts';
import { listed, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const need = (level: number, ...trouble: Trouble[]) => ({
  slipNeed: { level, because: level === 0 ? [] : ['the saddle slips'] },
  order: { horse: { trouble } },
});

export const grip = rule({
  id: 'grip',
  question: 'Does it hold a saddle that slips?',
  reads: ['slipNeed.level', 'slipNeed.because', 'order.horse.trouble'],
  looks: ['style'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'not-applicable'],
  judge({ slipNeed, order }, { style }) {
    if (slipNeed.level === 0) {
      return {
        judgement: 'not-applicable',
        reason: () => say`no extra grip needed`,
      };
    }
    const why = listed(slipNeed.because);
    // A saddle creeping forward takes the cinch to the elbow: no room for a high flare.
    const creeps = order.horse.trouble.includes('creeps-forward');
    if (style === 'low-flare' && creeps) {
      return {
        judgement: 'good',
        reason: () => say`grips, and leaves room at the elbow: ${why}`,
      };
    }
    if (style === 'high-flare' && !creeps) {
      return {
        judgement: 'good',
        reason: () => say`a flare that starts high holds best: ${why}`,
      };
    }
    if (style === 'straight' && slipNeed.level === 1) {
      return { judgement: 'good', reason: () => say`wide enough to hold: ${why}` };
    }
    return {
      judgement: 'acceptable',
      reason: () =>
        creeps
          ? say`a low flare would leave more room at the elbow: ${why}`
          : say`a flare that starts high would hold better: ${why}`,
    };
  },
  examples: [
    {
      shows: 'a high flare on a horse whose saddle rolls',
      facts: need(2),
      candidate: { style: 'high-flare' },
      gives: 'good',
    },
    {
      shows: 'a low flare on a horse whose saddle creeps forward',
      facts: need(2, 'creeps-forward'),
      candidate: { style: 'low-flare' },
      gives: 'good',
    },
    {
      shows: 'a straight on the same horse',
      facts: need(2),
      candidate: { style: 'straight' },
      gives: 'acceptable',
    },
    {
      shows: 'a straight on a horse that needs some grip',
      facts: need(1),
      candidate: { style: 'straight' },
      gives: 'good',
    },
    {
      shows: 'a horse that needs no extra grip',
      facts: need(0),
      candidate: { style: 'straight' },
      gives: 'not-applicable',
    },
  ],
  since: '0.1.0',
});
