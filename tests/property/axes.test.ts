/** Verdicts are shared among candidates that agree on what their rules look at: so agreeing on it must mean being alike in it. */
import { expect, test } from 'vitest';
import { Trial } from '../../src/advice/trial.ts';
import { factsOf } from '../../src/facts/facts.ts';
import { axesOf, BODY, BUCKLE, CLEARANCE, LENGTH, STRANDS, STYLE } from '../../src/fit/axes.ts';
import type { Candidate } from '../../src/fit/candidate.ts';
import type { LaidCandidate } from '../../src/fit/lay.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { shelfOf } from '../../src/stock/shelf.ts';
import { randomOrders } from '../support/random-cases.ts';

/** The numbers of the choices behind some axes. */
const numbersOf = (axes: number, c: LaidCandidate): string =>
  [
    (axes & STYLE) > 0 ? c.styleNo : '',
    (axes & STRANDS) > 0 ? c.strandsNo : '',
    (axes & BUCKLE) > 0 ? c.buckleNo : '',
    (axes & LENGTH) > 0 ? c.lengthNo : '',
    (axes & BODY) > 0 ? c.bodyNo : '',
    (axes & CLEARANCE) > 0 ? c.clearanceNo : '',
  ].join();

const parts = Object.keys(axesOf) as (keyof Candidate)[];

test.each(parts)('%s', (part) => {
  let shared = 0;
  for (const order of randomOrders(3, 25)) {
    const shop = defaultShop;
    const facts = { ...factsOf(order, shop.model), shop, shelf: shelfOf(order, shop) };
    const known = new Map<string, string>();
    for (const { candidate } of new Trial(facts).all) {
      const numbers = numbersOf(axesOf[part], candidate as LaidCandidate);
      const value = JSON.stringify(candidate[part] ?? null);
      const before = known.get(numbers);
      if (before !== undefined) shared += 1;
      expect(value).toBe(before ?? value);
      known.set(numbers, value);
    }
  }
  // Only what depends on every choice is never shared.
  if (axesOf[part] !== (STYLE | STRANDS | BUCKLE | LENGTH)) expect(shared).toBeGreaterThan(1000);
});
