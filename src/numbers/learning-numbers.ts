/** Numbers of learning from outcomes: what is thought before any is known, and how soon trouble shows; each with its basis. */
import { choice as ownChoice, fixedOn } from './model-number.ts';

const choice = fixedOn<'in' | 'in*k' | 'chance' | 'days' | 'log' | 'outcomes'>(ownChoice);

/** The table; the shop file does not override these. */
export const learningNumbers = {
  'rub-chance': choice(
    0.1,
    'chance',
    'the required clearance is the one at which this share of cinches would come to rub',
  ),
  'required-sd': choice(
    0.2,
    'in*k',
    'how unsure the default required clearance is before any outcome is known',
  ),
  softness: choice(0.15, 'in*k', 'over this much clearance the odds of a rub change by a factor of e'),
  'softness-sd': choice(0.5, 'log', 'how unsure that is, as a spread of its logarithm'),
  'days-to-rub': choice(
    14,
    'days',
    'a cinch that is going to rub has shown it after so many days in use, on average',
  ),
  'days-to-slack': choice(
    5,
    'days',
    'a length that does not fit has shown it after so many days in use, on average',
  ),
  'give-sd': choice(
    0.5,
    'in',
    'how unsure the default give of new cord is before any outcome is known: half of it',
  ),
  'run-softness': choice(
    0.5,
    'in',
    'over this much latigo run the odds of a complaint about the length change by a factor of e',
  ),
  'least-settled': choice(
    0.2,
    'chance',
    'outcomes that take away less than this share of what was unknown change nothing',
  ),
  'misfit-chance': choice(
    0.01,
    'chance',
    'what came does not fit the new numbers when chance would bring it no more often than this',
  ),
  'contrary-share': choice(
    0.25,
    'chance',
    'reports on like cinches contradict each other when this share of them, and two, rubbed or did not',
  ),
  interval: choice(0.9, 'chance', 'intervals hold the number with this chance'),
  'one-by-one': choice(
    400,
    'outcomes',
    'up to so many outcomes each is left out by itself; of more, every fiftieth together',
  ),
} as const;

/** One number of the table. */
export const learning = (key: keyof typeof learningNumbers): number => learningNumbers[key].value;
