/** What a customer could be asked about an order, and which of it nobody knows yet. */
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

/** In a fixed order, in which equals are listed. */
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
  /** The lengths it would read; none where the answer is a word. */
  readonly unknowns: (facts: Facts) => readonly Unknown[];
  /** Whether the program weighs the reading with what is usual, as it does with a photo, and does not take it as it stands. */
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

/** What a photo from the side shows, with a photo's spreads: only what is still open. */
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

/** Names of the single questions that a side photo answers, though less surely. */
export const answeredByPhoto: readonly QuestionName[] = ['elbow room', 'ring set-back', 'barrel shape'];

export const questions: readonly Question[] = [
  { name: 'ring to ring', open: isOpen['ring to ring'], unknowns: (facts) => [ringToRingUnknown(facts)] },
  { name: 'elbow room', open: isOpen['elbow room'], unknowns: (facts) => [roomUnknown(facts)] },
  { name: 'ring set-back', open: isOpen['ring set-back'], unknowns: (facts) => [setBackUnknown(facts)] },
  { name: 'heart girth', open: isOpen['heart girth'], unknowns: (facts) => [girthUnknown(facts)] },
  { name: 'barrel shape', open: isOpen['barrel shape'], unknowns: () => [] },
  {
    name: 'side photo',
    // One that is there already has been read.
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

/** How likely each word for the barrel is: that of the nearest ratio, for a ratio spread as the model has it. */
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
