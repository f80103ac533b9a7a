/** What an order file may say: every key and what it takes. */
import * as z from 'zod/mini';
import { blockOf, orElse, word, type Keys } from './key.ts';
import { cinchKeys } from './keys/cinch.ts';
import { horse, horseKeys } from './keys/horse.ts';
import { photo, photoKeys } from './photo-schema.ts';
import { saddle, saddleKeys } from './keys/saddle.ts';
import { age, day, freeText, listOf, wholeNumber } from './leaves.ts';

const customerKeys = {
  name: { read: freeText('name of the customer'), example: 'first and last' },
  phone: { read: freeText('telephone number'), example: '"555 0100"' },
  email: { read: freeText('email address'), example: 'name@example.com' },
};

const color = freeText('color of cord');
const colorKeys = {
  body: { read: listOf('colors of the body cord', color), example: '[natural]' },
  accent: { read: listOf('colors of the accent cord', color), example: '[rust]' },
};

const currentKeys = { ...cinchKeys, age: { read: age('age of the cinch'), example: '3 y' } };
const wantsKeys = { ...cinchKeys, strands: { ...cinchKeys.strands, example: '19' } };

/** Leaves out a cinch with nothing said. */
const toldCinch = <K extends Keys>(about: string, keys: K) => {
  const cinch = blockOf(about, keys, '{ style: straight, strands: 17, length: 32 in }');
  const isTold = (told: object): boolean => Object.values(told).some((part) => part !== undefined);
  return z.pipe(
    cinch,
    z.transform((told: z.output<typeof cinch>) => (isTold(told) ? told : undefined)),
  );
};

const cinchLines = `
## The current cinch, and the one the customer asks for, if any: keep only what is true.
## The style is straight, high-flare or low-flare; the buckle is one in the shop file.
`;
const photoLines = `
## Marks on a side photo, as [pixels from the left, from the top]; the reference is a stick of known length, or a flat
## sheet: { width: 8.5 in, height: 11 in, corners: [[x, y], [x, y], [x, y], [x, y]] } clockwise from its top left.
## Needed: file, image-size, reference (scale), ring (where the cinch hangs), elbow and girth-groove (room). The rest only helps.
`;

export const orderKeys = {
  order: {
    read: freeText('number or name of the order, unique in a backlog'),
    always: true as const,
    open: 'number or name of the order',
  },
  customer: { read: blockOf('who orders', customerKeys, '{ name: first and last }'), keys: customerKeys },
  taken: { read: day('when the order was taken'), example: '2026-11-20' },
  due: { read: day('when the order is due'), example: '2026-12-18' },
  quantity: {
    read: orElse(wholeNumber({ min: 1, max: 99, about: 'how many' }), 1),
    always: true as const,
    example: '1',
  },
  horse: { read: horse, always: true as const, keys: horseKeys, above: '\n' },
  saddle: { read: saddle, always: true as const, keys: saddleKeys, above: '\n' },
  use: word({
    about: 'main use',
    words: ['roping', 'ranch', 'trail', 'barrels', 'reining', 'packing', 'endurance', 'pleasure'],
    example: 'trail',
    above: '\n',
    sense: {
      heading: 'roping',
      header: 'roping',
      heeling: 'roping',
      heeler: 'roping',
      'team-roping': 'roping',
      'calf-roping': 'roping',
      'trail-riding': 'trail',
      'barrel-racing': 'barrels',
    },
    labels: ['use', 'riding', 'work', 'horse'],
  }),
  current: { read: toldCinch('the current cinch', currentKeys), keys: currentKeys, above: cinchLines },
  wants: { read: toldCinch('the cinch the customer asks for', wantsKeys), keys: wantsKeys },
  photo: { read: photo, keys: photoKeys, above: photoLines },
  colors: { read: blockOf('colors of cord', colorKeys, '{ body: [natural] }'), keys: colorKeys, above: '\n' },
  options: {
    read: listOf('options', freeText('name of an option in the shop file')),
    example: '[]',
    note: 'names of options in the shop file',
  },
  notes: { read: freeText('notes', 2000), example: 'anything else' },
};

/** Of one document. */
export const orderSchema = blockOf('an order', orderKeys);
