/** Does the buckle take that many strands? */
import { defaultModel } from '../numbers/numbers.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { layersOn } from '../cinch/buckles.ts';
import { count, len, say, type Phrase } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule, type CaseFacts } from './rule.ts';

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
const facts = { model: defaultModel, shop: { buckles: [buckle] } };

type Parts = Seen<Candidate, 'style' | 'buckle.id' | 'layers' | 'strands' | 'width' | 'buckleWidth'>;

const notTaken = ({ shop }: Seen<CaseFacts, 'shop.buckles'>, { strands, buckle }: Parts): Phrase =>
  shop.buckles.some((other) => layersOn(other, strands) !== undefined)
    ? say`the ${buckle.id} buckle does not take ${count(strands)} strands`
    : say`none of the shop's buckles take ${count(strands)} strands`;

/** Straights spread right below the bar; ropers stay pinched. */
const widthBelow = ({ style, width, buckleWidth }: Parts): number =>
  style === 'straight' ? width : buckleWidth;

const tooWide = ({ model }: Seen<CaseFacts, 'model.special-buckle-width'>, made: Parts): Phrase =>
  say`${len(widthBelow(made))} wide below the buckle: needs a special buckle from ${len(model['special-buckle-width'])} up`;

const taken = (_: unknown, { buckle, strands, layers }: Parts): Phrase =>
  say`the ${buckle.id} buckle takes ${count(strands)} strands strung ${layers === 1 ? 'single' : 'double'}`;

export const buckleStrands = rule({
  id: 'buckle-strands',
  question: 'Does the buckle take that many strands?',
  reads: ['model.special-buckle-width', 'shop.buckles'],
  looks: ['style', 'buckle.id', 'buckle.special', 'layers', 'strands', 'width', 'buckleWidth'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'refuse'],
  judge({ model }, made) {
    if (made.layers === 0) return { judgement: 'refuse', reason: notTaken };
    const margin = model['special-buckle-width'] - widthBelow(made);
    if (margin <= 0 && !made.buckle.special) return { judgement: 'refuse', margin, reason: tooWide };
    return { judgement: 'good', reason: taken };
  },
  examples: [
    {
      shows: '17 strands on a buckle for 13 to 17',
      facts,
      candidate: { style: 'straight', buckle, layers: 1, strands: 17, width: 4.25, buckleWidth: 4 },
      gives: 'good',
    },
    {
      shows: '21 strands on it',
      facts,
      candidate: { style: 'straight', buckle, layers: 0, strands: 21, width: 5.25, buckleWidth: 4 },
      gives: 'refuse',
    },
    {
      shows: '7.25 in wide on an ordinary buckle',
      facts,
      candidate: { style: 'straight', buckle, layers: 2, strands: 29, width: 7.25, buckleWidth: 3.625 },
      gives: 'refuse',
    },
  ],
  since: '0.1.0',
});
