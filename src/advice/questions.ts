/** What a customer could be asked, and what is still open. */
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

/** Listed in this order on ties. */
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
  /** Lengths it would read; none for a word. */
  readonly unknowns: (facts: Facts) => readonly Unknown[];
  /** Averaged with the usual, as a photo is. */
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

/** What a side photo would show, with a photo's spreads. */
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

/** A side photo answers these, less surely. */
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

/** Chance of ratios nearest to each word's. */
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
