/** Does the style hold a saddle that wants to slip? */
import { listed, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const need = (level: number) => ({ slipNeed: { level, because: level === 0 ? [] : ['the saddle rolls'] } });

export const grip = rule({
  id: 'grip',
  question: 'Does it hold a saddle that wants to slip?',
  reads: ['slipNeed'],
  looks: ['style'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'acceptable', 'not-applicable'],
  judge({ slipNeed }, { style }) {
    if (slipNeed.level === 0) {
      return {
        judgement: 'not-applicable',
        reason: () => say`nothing asks for more grip than any cinch has`,
      };
    }
    const why = listed(slipNeed.because);
    if (style === 'high-flare') {
      return {
        judgement: 'good',
        reason: () => say`fans out high on the side, which holds best where ${why}`,
      };
    }
    if (style === 'straight' && slipNeed.level === 1) {
      return { judgement: 'good', reason: () => say`its width against the sides is enough where ${why}` };
    }
    return {
      judgement: 'acceptable',
      reason: () => say`a fan high on the side would hold better where ${why}`,
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
      shows: 'a straight on the same horse',
      facts: need(2),
      candidate: { style: 'straight' },
      gives: 'acceptable',
    },
    {
      shows: 'a straight where little asks for grip',
      facts: need(1),
      candidate: { style: 'straight' },
      gives: 'good',
    },
    {
      shows: 'a horse that needs nothing special',
      facts: need(0),
      candidate: { style: 'straight' },
      gives: 'not-applicable',
    },
  ],
  since: '0.1.0',
});
