/** What a customer could be asked, and which of it nobody knows yet. */
import type { Facts } from '../horse/facts.ts';
import { normalCdf } from '../math/normal.ts';
import type { BarrelWord } from '../order/types.ts';
import { askingNumbers } from '../numbers/asking-numbers.ts';
import {
  depthUnknown,
  dropUnknown,
  girthUnknown,
  ringToRingUnknown,
  roomUnknown,
  setBackUnknown,
  type Unknown,
} from './unknowns.ts';

/** Ties are listed in this order. */
export const questionNames = [
  'ring to ring',
  'elbow room',
  'ring set-back',
  'heart girth',
  'barrel shape',
  'side photo',
] as const;
export type QuestionName = (typeof questionNames)[number];

export interface Question {
  readonly name: QuestionName;
  readonly open: (facts: Facts) => boolean;
  /** The lengths it would read; none when the answer is a word. */
  readonly unknowns: (facts: Facts) => readonly Unknown[];
  /** The reading is averaged with the usual, as for a photo. */
  readonly weighed?: true;
}

const isOpen = {
  'ring to ring': ({ ring }: Facts) => !ring.taped,
  'elbow room': ({ room }: Facts) => room.kind !== 'measured',
  'ring set-back': ({ ring }: Facts) => ring.setBack.kind !== 'measured',
  'heart girth': ({ girth }: Facts) => girth.kind !== 'measured',
  'barrel shape': ({ order }: Facts) => order.horse.barrel === undefined,
  drop: ({ ring }: Facts) => ring.station.kind !== 'measured',
};

/** What is still open and a side photo shows, with a photo's spreads. */
function photoUnknowns(facts: Facts): Unknown[] {
  return [
    ...(isOpen['elbow room'](facts) ? [roomUnknown(facts, askingNumbers['photo-room-sd'].value)] : []),
    ...(isOpen['ring set-back'](facts)
      ? [setBackUnknown(facts, askingNumbers['photo-set-back-sd'].value)]
      : []),
    ...(isOpen.drop(facts) ? [dropUnknown(facts)] : []),
    ...(isOpen['barrel shape'](facts) ? [depthUnknown(facts)] : []),
  ];
}

/** Questions a side photo answers, less surely. */
export const answeredByPhoto: readonly QuestionName[] = ['elbow room', 'ring set-back', 'barrel shape'];

export const questions: readonly Question[] = [
  { name: 'ring to ring', open: isOpen['ring to ring'], unknowns: (facts) => [ringToRingUnknown(facts)] },
  { name: 'elbow room', open: isOpen['elbow room'], unknowns: (facts) => [roomUnknown(facts)] },
  { name: 'ring set-back', open: isOpen['ring set-back'], unknowns: (facts) => [setBackUnknown(facts)] },
  { name: 'heart girth', open: isOpen['heart girth'], unknowns: (facts) => [girthUnknown(facts)] },
  { name: 'barrel shape', open: isOpen['barrel shape'], unknowns: () => [] },
  {
    name: 'side photo',
    // An existing photo has been read already.
    open: (facts) =>
      facts.photo === undefined && (isOpen['elbow room'](facts) || isOpen['ring set-back'](facts)),
    weighed: true,
    unknowns: photoUnknowns,
  },
];

export interface BarrelAnswer {
  readonly word: BarrelWord;
  readonly chance: number;
}

/** Chance of each barrel word: that of ratios nearest to its own. */
export function barrelAnswers({ model }: Facts): BarrelAnswer[] {
  const [slab, average, round] = [model['ratio-slab-sided'], model['ratio-average'], model['ratio-round']];
  const below = (ratio: number): number => normalCdf((ratio - average) / model['ratio-sd']);
  const [low, high] = [below((slab + average) / 2), below((average + round) / 2)];
  return [
    { word: 'slab-sided', chance: low },
    { word: 'average', chance: high - low },
    { word: 'round', chance: 1 - high },
  ];
}
