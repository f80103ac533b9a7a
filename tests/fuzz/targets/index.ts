/** Every input of the program. */
import type { Target } from '../target.ts';
import { ordersTarget } from './orders.ts';
import { outcomesTableTarget, outcomesTarget } from './outcomes.ts';
import { picturesTarget } from './pictures.ts';
import { shopTarget } from './shop.ts';
import { wordsTarget } from './words.ts';

interface Entry {
  readonly make: () => Target;
  /** Percent of the tries without --target. */
  readonly share: number;
}

export const targets: Readonly<Record<string, Entry>> = {
  orders: { make: ordersTarget, share: 21 },
  shop: { make: shopTarget, share: 7 },
  words: { make: wordsTarget, share: 26 },
  pictures: { make: picturesTarget, share: 25 },
  'outcomes-yaml': { make: outcomesTarget, share: 6 },
  'outcomes-csv': { make: outcomesTableTarget, share: 15 },
};
