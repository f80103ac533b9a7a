/** A strand count that no buckle takes is not blamed on the buckle that was taken for it, and an empty wish is none. */
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Buckle } from '../../src/order/types.ts';
import { layersOn, mustBeOrdered, strandsAway } from '../../src/cinch/buckles.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { phraseText } from '../../src/units/text.ts';
import { orderOf } from '../support/orders.ts';

const checked = (strands: number, shop = defaultShop) =>
  checkCinch({ style: 'straight', strands }, 'command line', sizeOrder(orderOf(), shop));

const refusal = (strands: number, shop = defaultShop): string => {
  const { judged } = checked(strands, shop);
  const finding = judged?.findings.find(({ rule }) => rule === 'buckle-strands');
  return finding === undefined ? '' : phraseText(finding.reason, 'in');
};

describe('strands that no buckle takes', () => {
  test.each([5, 9, 41])('%i: the shop is named, not a buckle', (strands) => {
    expect(refusal(strands)).toContain(`shop's buckles take ${String(strands)} strands`);
  });

  test('the buckle that comes nearest is taken for it, so that what changes is only what must', () => {
    expect(checked(5).judged?.candidate.buckle.id).toBe('plain 2 1/2');
    expect(checked(41).judged?.candidate.buckle.id).toBe('special 6');
  });

  test('where another buckle takes them, the one that does not is named', () => {
    const { judged } = checkCinch(
      { style: 'straight', strands: 31, buckle: 'plain 3' },
      'command line',
      sizeOrder(orderOf(), defaultShop),
    );
    const finding = judged?.findings.find(({ rule }) => rule === 'buckle-strands');
    expect(finding && phraseText(finding.reason, 'in')).toMatch(/plain 3 .*31 strands/);
  });
});

test('cords lie in the usual layer where the buckle lets them, else as it does', () => {
  const both = { single: { min: 13, max: 21 }, double: { min: 15, max: 29 } } as unknown as Buckle;
  expect([13, 17, 19, 21, 29, 31].map((strands) => layersOn(both, strands))).toEqual([
    ...[1, 1, 2, 2, 2, undefined],
  ]);
  expect(layersOn({ ...both, double: undefined }, 19)).toBe(1);
  expect(layersOn({ ...both, single: undefined }, 15)).toBe(2);
});

test('two buckles a cinch must be ordered where fewer are on hand, if they are to be had', () => {
  const stock = (onHand: number, orderable: boolean) => mustBeOrdered({ onHand, orderable } as Buckle, 2);
  expect([stock(3, true), stock(4, true), stock(3, false)]).toEqual([true, false, false]);
});

test('strands away are counted to the nearer end of the nearer range', () => {
  const buckle = { single: { min: 13, max: 17 }, double: { min: 23, max: 27 } } as unknown as Buckle;
  const away = [9, 13, 17, 19, 21, 25, 31].map((strands) => strandsAway(buckle, strands));
  expect(away).toEqual([4, 0, 0, 2, 2, 0, 4]);
  expect(strandsAway({} as Buckle, 17)).toBe(Infinity);
});

test.each(['wants', 'current'] as const)('an empty %s says nothing', (block) => {
  const text = `order: E-1\nhorse: {heart-girth: 72 in}\nsaddle: {rigging: 7/8}\n${block}: {}\n`;
  const [read] = readOrders(text, 'e.yaml');
  expect(read?.ok === true ? read.order[block] : 'faulty').toBeUndefined();
});
