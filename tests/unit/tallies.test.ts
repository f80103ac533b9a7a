/** How seldom a rule is asked: only for the choices that can change its verdict on this order. */
import { expect, test } from 'vitest';
import { ruleOf } from '../../src/advice/judge.ts';
import { axesOfRule } from '../../src/advice/tallies.ts';
import { factsOf } from '../../src/facts/facts.ts';
import { ALL, BUCKLE, LENGTH, STRANDS } from '../../src/fit/axes.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { shelfOf } from '../../src/stock/shelf.ts';
import { orderOf } from '../support/orders.ts';

function factsIn(body: string, accent: string): CaseFacts {
  const order = orderOf({ colors: { body: [body], accent: [accent] } });
  return { ...factsOf(order, defaultShop.model), shop: defaultShop, shelf: shelfOf(order, defaultShop) };
}

// Of natural there is more than any cinch takes; of the others less.
test.each([
  ['natural', 'natural', BUCKLE],
  ['sorrel', 'natural', BUCKLE | STRANDS | LENGTH],
  ['natural', 'turquoise', ALL],
] as const)('what is on the shelf for %s cord and %s accents', (body, accent, axes) => {
  expect(axesOfRule(ruleOf('stock')!, factsIn(body, accent))).toBe(axes);
});

test('a rule that misses a fact says the same of all candidates', () => {
  const facts = factsIn('natural', 'natural');
  const elbow = ruleOf('elbow-clearance')!;
  expect(axesOfRule(elbow, facts)).not.toBe(0);
  expect(axesOfRule(elbow, { ...facts, floor: undefined as unknown as number })).toBe(0);
});
