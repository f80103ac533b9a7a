/** Does the buckle take that many strands? */
import { defaultModel } from '../sources/numbers.ts';
import { count, len, say } from '../units/phrase.ts';
import { rule } from './rule.ts';

const facts = { model: defaultModel };
const buckle = {
  id: 'example',
  barWidth: 4,
  frameWidth: 4.75,
  frameHeight: 3,
  single: { min: 13, max: 17 },
  special: false,
  onHand: 2,
  orderable: true,
};

export const buckleStrands = rule({
  id: 'buckle-strands',
  question: 'Does the buckle take that many strands?',
  reads: ['model'],
  looks: ['buckle', 'layers', 'strands', 'buckleWidth'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'refuse'],
  judge({ model }, { buckle, layers, strands, buckleWidth }) {
    if (layers === 0) {
      return {
        judgement: 'refuse',
        reason: () => say`has a buckle that does not take ${count(strands)} strands: ${buckle.id}`,
      };
    }
    const wide = model['special-buckle-width'];
    if (buckleWidth >= wide && !buckle.special) {
      const reason = () =>
        say`is ${len(buckleWidth)} wide at the buckle and needs a special one; from ${len(wide)} an ordinary one will not do`;
      return { judgement: 'refuse', margin: wide - buckleWidth, reason };
    }
    const how = layers === 1 ? 'a single layer' : 'a double layer';
    return {
      judgement: 'good',
      reason: () => say`the ${buckle.id} buckle takes ${count(strands)} strands in ${how}`,
    };
  },
  examples: [
    {
      shows: '17 strands on a buckle for 13 to 17',
      facts,
      candidate: { buckle, layers: 1, strands: 17, buckleWidth: 4.25 },
      gives: 'good',
    },
    {
      shows: '21 strands on it',
      facts,
      candidate: { buckle, layers: 0, strands: 21, buckleWidth: 5.25 },
      gives: 'refuse',
    },
    {
      shows: '7.25 in wide on an ordinary buckle',
      facts,
      candidate: { buckle, layers: 2, strands: 29, buckleWidth: 7.25 },
      gives: 'refuse',
    },
  ],
  since: '0.1.0',
});
