/** What a file of outcomes may say. */
import * as z from 'zod/mini';
import { outcomeResults } from '../numbers/outcome-results.ts';
import { cinchKeys } from './keys/cinch.ts';
import { horse } from './keys/horse.ts';
import { saddle } from './keys/saddle.ts';
import { block, freeText, oneOf, wholeNumber } from './leaves.ts';
import type { Sense } from './near-in-sense.ts';
import { list } from './trade-schema.ts';

/** [common practice, no source]. */
const resultSense = {
  ok: 'good',
  fine: 'good',
  gall: 'elbow-rub',
  'elbow-gall': 'elbow-rub',
  rub: ['elbow-rub', 'buckle-rub'],
  rubbed: ['elbow-rub', 'buckle-rub'],
  slips: 'slipped',
  long: 'too-long',
  short: 'too-short',
} as const satisfies Sense;

/** Read even when the rest is faulty. */
export const tiedSchema = block(
  'the cinch tied',
  {
    style: cinchKeys.style.read,
    strands: cinchKeys.strands.read,
    buckle: z.optional(cinchKeys.buckle.read),
    length: cinchKeys.length.read,
  },
  '{ style: straight, strands: 19, length: 32 in }',
);

const outcome = block('an outcome', {
  order: z.optional(freeText('number of the order')),
  horse: z.optional(horse),
  saddle: z.optional(saddle),
  tied: tiedSchema,
  days: wholeNumber({ min: 0, max: 5000, about: 'days in use when it was reported' }),
  result: oneOf('how it turned out', outcomeResults, resultSense),
  notes: z.optional(freeText('notes', 2000)),
});

/** Keys as written. */
export const outcomesSchema = block('outcomes', { outcomes: list('outcomes', outcome) });

export type WrittenOutcome = z.output<typeof outcome>;
