/** What a shop file may say: every key and what it takes. */
import * as z from 'zod/mini';
import { modelNumbers, type ModelKey } from '../numbers/numbers.ts';
import type { LearnedKey } from './types.ts';
import {
  block,
  day,
  didYouMean,
  freeText,
  leaf,
  plainNumber,
  strandCount,
  trueFalse,
  wholeNumber,
  type Leaf,
} from './leaves.ts';
import { cinchKeys } from './keys/cinch.ts';
import { measure, type LengthRange } from './measure.ts';
import { parseNumber, toNumber } from '../units/number.ts';
import { cordShape, hardwareShape, list, tradeShape } from './trade-schema.ts';

const maybe = z.optional;

const bar: LengthRange = { about: 'width of the bar', min: 1, max: 12, example: '3 1/2 in' };
const frameWidth: LengthRange = { about: 'width of the frame', min: 1, max: 14, example: '4 1/4 in' };
const frameHeight: LengthRange = { about: 'height of the frame', min: 0.5, max: 8, example: '3 in' };
const step: LengthRange = { about: 'step of lengths', min: 0.25, max: 4, example: '1 in' };

const strandRange = (about: string) =>
  block(
    about,
    { min: strandCount('fewest strands'), max: strandCount('most strands') },
    '{ min: 11, max: 31 }',
  );

const buckle = block('a buckle', {
  id: freeText('name of the buckle, unique in the shop'),
  bar: measure(bar),
  'frame-width': measure(frameWidth),
  'frame-height': measure(frameHeight),
  single: maybe(strandRange('strands it takes in a single layer')),
  double: maybe(strandRange('strands it takes in a double layer')),
  special: maybe(trueFalse('whether it is made for cinches of 7 in and over')),
  ...hardwareShape,
});

const cord = block('a cord', {
  color: freeText('color of the cord'),
  ply: wholeNumber({ min: 1, max: 24, about: 'plies, 8 for body cord, 2 for accent cord' }),
  ...cordShape,
});

/** Lengths with units, forces in lbf, the rest plain. */
function modelLeaf(key: ModelKey): Leaf<number> {
  const { unit, min, max, value, about } = modelNumbers[key];
  if (unit === 'in' || unit === 'in*k') return measure({ about, min, max, example: `${String(value)} in` });
  return unit === 'lbf' ? force({ about, min, max }) : plainNumber({ about, min, max });
}

function force({ about, min, max }: { about: string; min: number; max: number }): Leaf<number> {
  const expected = `${about}, a force from ${String(min)} lbf to ${String(max)} lbf`;
  return leaf({ expected, json: { type: 'string', pattern: 'lbf\\s*$', description: about } }, (text) => {
    const [, number = '', unit = ''] = /^([\d.]+) ?([a-z]*)$/i.exec(text) ?? [];
    const read = parseNumber(number);
    if (!read.ok) return { ok: false, hint: didYouMean(read.suggestion && `${read.suggestion} lbf`) };
    if (unit !== 'lbf') return { ok: false, hint: 'forces are in pounds-force: lbf' };
    const value = toNumber(read.exact);
    return value >= min && value <= max ? { ok: true, value } : { ok: false };
  });
}

/** In the table's order. */
export const modelKeys = Object.keys(modelNumbers) as ModelKey[];

const model = block(
  'numbers of the model that the shop sets itself',
  Object.fromEntries(modelKeys.map((key) => [key, maybe(modelLeaf(key))])) as Record<
    ModelKey,
    z.ZodMiniOptional<Leaf<number>>
  >,
);

const learnedFrom = (key: LearnedKey): z.ZodMiniOptional<ReturnType<typeof learnedBlock>> =>
  maybe(learnedBlock(key));

function learnedBlock(key: LearnedKey) {
  const { about, min, max, value } = modelNumbers[key];
  const end = (which: string): Leaf<number> =>
    measure({
      about: `${which} end of the interval of: ${about}`,
      min: 0,
      max: 2 * max,
      example: `${String(min + value / 2)} in`,
    });
  return block(
    `where ${key} was learned`,
    {
      outcomes: wholeNumber({ min: 1, max: 999_999, about: 'how many outcomes' }),
      until: day('last day of the outcomes'),
      low: maybe(end('lower')),
      high: maybe(end('upper')),
    },
    '{ outcomes: 212, until: 2026-11-20 }',
  );
}

/** Written by `learn`. */
const learned = block('which numbers of the model were learned from outcomes', {
  'required-clearance': learnedFrom('required-clearance'),
  'floor-clearance': learnedFrom('floor-clearance'),
  stretch: learnedFrom('stretch'),
});

/** Keys as written. */
export const shopSchema = block('a shop', {
  shop: freeText('name of the shop'),
  strands: strandRange('strands the shop ties'),
  lengths: block(
    'lengths the shop ties',
    {
      min: measure({ ...cinchKeys.length, about: 'shortest cinch' }),
      max: measure({ ...cinchKeys.length, about: 'longest cinch' }),
      step: measure(step),
    },
    '{ min: 20 in, max: 38 in, step: 1 in }',
  ),
  buckles: list('buckles', buckle),
  cord: list('cord', cord),
  ...tradeShape,
  model: maybe(model),
  learned: maybe(learned),
});

export type WrittenShop = z.output<typeof shopSchema>;
