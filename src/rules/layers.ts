/** Are the strands strung the usual way, single or double? */
import { isUsualLayer } from '../cinch/buckles.ts';
import { count, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const DOUBLE_FROM = 27;

export const layersRule = rule({
  id: 'layers',
  question: 'Is this many strands strung the usual way, single or double?',
  reads: [],
  looks: ['layers', 'strands'],
  evidence: [{ basis: 'practice', source: 'layers', agreement: 'settled' }],
  can: ['good', 'acceptable', 'poor', 'cannot-tell'],
  judge(_, { layers, strands }) {
    if (layers === 0) return { judgement: 'cannot-tell', reason: () => say`the buckle does not take them` };
    const how = layers === 1 ? 'strung single' : 'strung double';
    const reason = () => say`${count(strands)} strands ${how}`;
    if (layers === 1 && strands >= DOUBLE_FROM) return { judgement: 'poor', reason };
    return { judgement: isUsualLayer(layers, strands) ? 'good' : 'acceptable', reason };
  },
  examples: [
    { shows: '17 in a single layer', facts: {}, candidate: { layers: 1, strands: 17 }, gives: 'good' },
    { shows: '27 in a double layer', facts: {}, candidate: { layers: 2, strands: 27 }, gives: 'good' },
    { shows: '21 in a single layer', facts: {}, candidate: { layers: 1, strands: 21 }, gives: 'acceptable' },
    { shows: '29 in a single layer', facts: {}, candidate: { layers: 1, strands: 29 }, gives: 'poor' },
    {
      shows: 'a buckle that does not take that many',
      facts: {},
      candidate: { layers: 0, strands: 29 },
      gives: 'cannot-tell',
    },
  ],
  since: '0.1.0',
});
