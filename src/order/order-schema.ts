/** What an order file may say: every key, what it takes, and nothing else. */
import * as z from 'zod/mini';
import {
  age,
  block,
  conditionScore,
  day,
  freeText,
  jsonOf,
  listOf,
  oneOf,
  strandCount,
  trueFalse,
  wholeNumber,
} from './leaves.ts';
import { measure, ranges } from './measure.ts';
import { barrelSense, kindSense, styleSense, troubleSense, useSense, withersSense } from './near-in-sense.ts';
import { photo } from './photo-schema.ts';
import { rigging } from './rigging.ts';
import { barrelWords, kinds, riggingStyles, styles, troubles, uses, withersWords } from './words.ts';

const maybe = z.optional;

const barrelExpected = `shape of the barrel: ${barrelWords.join(', ')}, or { depth: 27 in }`;
const barrel = z.union(
  [
    oneOf('shape of the barrel', barrelWords, barrelSense),
    block('measured barrel', { depth: measure(ranges.barrelDepth) }),
  ],
  barrelExpected,
);
jsonOf.set(barrel, { description: barrelExpected });

const side = measure(ranges.elbowRoom);
const elbowExpected = `${ranges.elbowRoom.about}: ${ranges.elbowRoom.example}, or { near: 4 in, off: 4 1/2 in }`;
const elbowRoom = z.union([side, block('elbow room of each side', { near: side, off: side })], elbowExpected);
jsonOf.set(elbowRoom, { description: elbowExpected });

const customer = block(
  'who orders',
  {
    name: maybe(freeText('name of the customer')),
    phone: maybe(freeText('telephone number')),
    email: maybe(freeText('mail address')),
  },
  '{ name: first and last }',
);

export const horse = block('the horse', {
  name: maybe(freeText('name of the horse')),
  height: maybe(measure(ranges.height)),
  'heart-girth': maybe(measure(ranges.heartGirth)),
  'body-length': maybe(measure(ranges.bodyLength)),
  'elbow-room': maybe(elbowRoom),
  barrel: maybe(barrel),
  withers: maybe(oneOf('withers', withersWords, withersSense)),
  condition: maybe(conditionScore()),
  kind: maybe(oneOf('kind of horse', kinds, kindSense)),
  trouble: maybe(listOf('trouble with the cinch in use', oneOf('trouble', troubles, troubleSense))),
});

// Zod is not told: a check of it would be left out as soon as another key is wrong. See plausible.ts.
jsonOf.set(horse, {
  description: 'the horse; height or heart-girth is needed',
  anyOf: [{ required: ['height'] }, { required: ['heart-girth'] }],
});

export const saddle = block('the saddle', {
  rigging,
  style: maybe(oneOf('style of rigging', riggingStyles)),
  'bar-span': maybe(measure(ranges.barSpan)),
  'ring-to-ring': maybe(measure(ranges.ringToRing)),
  'ring-drop': maybe(measure(ranges.ringDrop)),
  double: maybe(
    trueFalse(
      'whether the saddle is double rigged',
      ': the ticket then has a keeper for the connecting strap; the front cinch is sized alone',
    ),
  ),
});

export const cinch = {
  style: maybe(oneOf('style of cinch', styles, styleSense)),
  strands: maybe(strandCount('strands')),
  buckle: maybe(freeText('id of a buckle in the shop file')),
  length: maybe(measure(ranges.cinchLength)),
};

const cinchSample = '{ style: straight, strands: 17, length: 32 in }';

const color = freeText('color of cord');

/** One document of an order file; leaves in, values out, keys as written. */
export const orderSchema = block('an order', {
  order: freeText('number or name of the order, unique in a backlog'),
  customer: maybe(customer),
  taken: maybe(day('when the order was taken')),
  due: maybe(day('when the order is due')),
  quantity: maybe(wholeNumber({ min: 1, max: 99, about: 'how many' })),
  horse,
  saddle,
  use: maybe(oneOf('main use', uses, useSense)),
  current: maybe(
    block('the cinch in use now', { ...cinch, age: maybe(age('age of the cinch')) }, cinchSample),
  ),
  wants: maybe(block('the cinch the customer asks for', cinch, cinchSample)),
  colors: maybe(
    block(
      'colors of cord',
      {
        body: maybe(listOf('colors of the body cord', color)),
        accent: maybe(listOf('colors of the accent cord', color)),
      },
      '{ body: [natural] }',
    ),
  ),
  options: maybe(listOf('options', freeText('name of an option in the shop file'))),
  photo: maybe(photo),
  notes: maybe(freeText('notes', 2000)),
});

export type WrittenOrder = z.output<typeof orderSchema>;
