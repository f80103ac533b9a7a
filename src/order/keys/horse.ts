/** The keys of the horse. */
import * as z from 'zod/mini';
import type { Inches } from '../../units/length.ts';
import { photoBounds } from '../../numbers/photo-bounds.ts';
import { blockOf, length, word, words } from '../key.ts';
import { conditionScore, conditionWords, freeText, jsonOf } from '../leaves.ts';

const barrelShape = word({
  about: 'shape of the barrel',
  words: ['slab-sided', 'average', 'round'],
  sense: {
    medium: 'average',
    normal: 'average',
    fat: 'round',
    keg: 'round',
    'well-sprung': 'round',
    flat: 'slab-sided',
    'flat-sided': 'slab-sided',
    narrow: 'slab-sided',
    slab: 'slab-sided',
  },
});

export const barrelDepth = {
  depth: length({
    about: 'depth of the barrel',
    ...photoBounds.barrelDepth,
    example: '27 in',
    always: true,
    labels: ['depth', 'barrel depth', 'deep'],
  }),
};

const barrelExpected = `shape of the barrel: ${barrelShape.words.join(', ')}, or { depth: 27 in }`;
const barrel = z.union([barrelShape.read, blockOf('measured barrel', barrelDepth)], barrelExpected);
jsonOf.set(barrel, { description: barrelExpected });

const roomAbout = 'back of elbow to girth groove';
const side = (label: string) =>
  length({
    about: roomAbout,
    ...photoBounds.elbowRoom,
    example: '4 in',
    always: true,
    labels: [label],
    of: 'room',
  });
const elbowSides = { near: side('near'), off: side('off') };
const elbowRoom = length({
  about: roomAbout,
  ...photoBounds.elbowRoom,
  example: '4 in',
  note: 'back of the elbow to the girth groove; { near: 4 in, off: 4 1/2 in } where the sides differ',
  labels: ['room', 'elbow room'],
});

const roomExpected = `${roomAbout}: 4 in, or { near: 4 in, off: 4 1/2 in }`;
const roomRead = z.union([elbowRoom.read, blockOf('elbow room of each side', elbowSides)], roomExpected);
jsonOf.set(roomRead, { description: roomExpected });

export const horseKeys = {
  height: length({
    about: 'height at the withers',
    min: 28,
    max: 80,
    example: '15.1 hh',
    hands: true,
    open: 'such as 15.1 hh; heart-girth will do instead, both are better',
    labels: ['height', 'tall'],
  }),
  'heart-girth': length({
    about: 'heart girth',
    min: 36,
    max: 100,
    example: '73 in',
    note: 'around the barrel in the girth groove',
    labels: ['girth', 'heart girth'],
  }),
  'elbow-room': { ...elbowRoom, read: roomRead, keys: elbowSides },
  'body-length': length({
    about: 'body length',
    more: 'point of shoulder to point of buttock; gives the weight, not the cinch',
    min: 30,
    max: 100,
    example: '67 in',
    note: 'point of shoulder to point of buttock, gives the weight',
    labels: ['body length'],
  }),
  name: { read: freeText('name of the horse'), example: 'horse' },
  barrel: {
    ...barrelShape,
    read: barrel,
    keys: barrelDepth,
    example: 'average',
    note: `${barrelShape.note}, or { depth: 27 in }`,
    labels: ['barrel', 'ribs'],
  },
  withers: word({
    about: 'withers',
    words: ['low', 'average', 'high'],
    example: 'average',
    sense: {
      mutton: 'low',
      'mutton-withered': 'low',
      flat: 'low',
      medium: 'average',
      normal: 'average',
    },
    labels: ['withers'],
  }),
  // Moves an untaped girth; a fleshy horse lets a saddle slip.
  condition: {
    read: conditionScore(),
    example: '5',
    note: 'Henneke score, 1 to 9',
    words: Object.keys(conditionWords),
    sense: { chubby: 'fleshy', skinny: 'thin' },
    labels: ['condition', 'condition score', 'score'],
    labeled: /^[\d.]+$/,
  },
  kind: word({
    about: 'kind of horse',
    words: ['pony', 'stock', 'light', 'draft', 'mule', 'donkey'],
    example: 'stock',
    sense: {
      'quarter-horse': 'stock',
      quarter: 'stock',
      qh: 'stock',
      draught: 'draft',
      'draft-cross': 'draft',
      burro: 'donkey',
      mustang: 'stock',
      paint: 'stock',
      appaloosa: 'stock',
      arab: 'light',
      arabian: 'light',
      thoroughbred: 'light',
      tb: 'light',
      morgan: 'light',
      saddlebred: 'light',
      percheron: 'draft',
      belgian: 'draft',
      clydesdale: 'draft',
      shetland: 'pony',
      welsh: 'pony',
    },
    labels: ['horse'],
  }),
  trouble: words({
    about: 'trouble with the current cinch',
    each: 'trouble',
    words: ['elbow-gall', 'buckle-rub', 'saddle-rolls', 'creeps-forward', 'slips-back', 'girthy'],
    example: '[]',
    sense: {
      gall: 'elbow-gall',
      galls: 'elbow-gall',
      'girth-gall': 'elbow-gall',
      'girth-galls': 'elbow-gall',
      'cinch-gall': 'elbow-gall',
      galled: 'elbow-gall',
      'galled-elbow': 'elbow-gall',
      'sore-elbow': 'elbow-gall',
      sore: ['elbow-gall', 'buckle-rub'],
      raw: ['elbow-gall', 'buckle-rub'],
      'rubbed-raw': ['elbow-gall', 'buckle-rub'],
      bleeding: ['elbow-gall', 'buckle-rub'],
      rub: ['buckle-rub', 'elbow-gall'],
      rolls: 'saddle-rolls',
      rolling: 'saddle-rolls',
      slips: ['saddle-rolls', 'slips-back'],
      slides: ['saddle-rolls', 'slips-back'],
      'slides-back': 'slips-back',
      creeps: 'creeps-forward',
      'slides-forward': 'creeps-forward',
      cinchy: 'girthy',
    },
    labels: [],
  }),
};

const horseBlock = blockOf('the horse', horseKeys);

interface HorseRead extends Omit<z.output<typeof horseBlock>, 'elbowRoom'> {
  readonly elbowRoom?: Inches | undefined;
  readonly elbowSides?: { readonly near: Inches; readonly off: Inches } | undefined;
}

/** The cinch must clear both elbows; the tighter decides. */
export const horse = z.pipe(
  horseBlock,
  z.transform(({ elbowRoom: room, ...told }: z.output<typeof horseBlock>): HorseRead => {
    const sides = typeof room === 'object' ? room : undefined;
    const tighter = typeof room === 'object' ? Math.min(room.near, room.off) : room;
    return { ...told, elbowRoom: tighter, elbowSides: sides };
  }),
);

// Zod would skip this check after another fault: see plausible.ts.
jsonOf.set(horse, {
  description: 'the horse; height or heart-girth is needed',
  anyOf: [{ required: ['height'] }, { required: ['heart-girth'] }],
});
