/** Numbers for `learn`: what we expect before any outcome, and how soon trouble shows. */
import { choice as ownChoice, fixedOn } from './model-number.ts';

const choice = fixedOn<'in' | 'in*k' | 'chance' | 'days' | 'log' | 'outcomes'>(ownChoice);

export const learningNumbers = {
  'rub-chance': choice(0.1, 'chance', 'share of cinches that would rub at the required clearance'),
  'required-sd': choice(0.2, 'in*k', 'spread of the default required clearance'),
  softness: choice(0.15, 'in*k', 'clearance that changes the odds of a rub by a factor of e'),
  'softness-sd': choice(0.5, 'log', 'spread of its logarithm'),
  'days-to-rub': choice(14, 'days', 'average days in use until a rub shows'),
  'days-to-slack': choice(5, 'days', 'average days in use until a wrong length shows'),
  'give-sd': choice(0.5, 'in', 'spread of the default stretch: half of it'),
  'run-softness': choice(
    0.5,
    'in',
    'latigo run that changes the odds of a length complaint by a factor of e',
  ),
  'least-settled': choice(
    0.2,
    'chance',
    'no change when outcomes settle less than this share of the unknown',
  ),
  'misfit-chance': choice(0.01, 'chance', 'outcomes misfit when chance brings them no more often than this'),
  'contrary-share': choice(
    0.25,
    'chance',
    'like cinches contradict each other when both sides have this share, and two',
  ),
  interval: choice(0.9, 'chance', 'chance that an interval holds the number'),
  'one-by-one': choice(
    400,
    'outcomes',
    'up to here outcomes are left out one at a time, beyond in fifty groups',
  ),
} as const;

/** Value of one number. */
export const learning = (key: keyof typeof learningNumbers): number => learningNumbers[key].value;
