/** Verdicts are shared among candidates that agree on what their rules look at: so agreeing on it must mean being alike in it. */
import { expect, test } from 'vitest';
import { Trial } from '../../src/advice/trial.ts';
import { factsOf } from '../../src/facts/facts.ts';
import { ALL, axesOf } from '../../src/fit/axes.ts';
import type { Candidate } from '../../src/fit/candidate.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { shelfOf } from '../../src/stock/shelf.ts';
import { numbersOf } from '../support/numbers.ts';
import { randomOrders } from '../support/random-cases.ts';

const parts = Object.keys(axesOf) as (keyof Candidate)[];

test.each(parts)('%s', (part) => {
  let shared = 0;
  for (const order of randomOrders(3, 25)) {
    const shop = defaultShop;
    const facts = { ...factsOf(order, shop.model), shop, shelf: shelfOf(order, shop) };
    const known = new Map<string, string>();
    for (const judged of new Trial(facts).all) {
      const { candidate } = judged;
      const numbers = numbersOf(axesOf[part], judged);
      const value = JSON.stringify(candidate[part] ?? null);
      const before = known.get(numbers);
      if (before !== undefined) shared += 1;
      expect(value).toBe(before ?? value);
      known.set(numbers, value);
    }
  }
  // Only what depends on every choice is never shared.
  if (axesOf[part] !== ALL) expect(shared).toBeGreaterThan(1000);
});
