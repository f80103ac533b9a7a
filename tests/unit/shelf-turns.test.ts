/** The shelf by hand: who takes its cord, what is bought for the others, and what may stand in for a buckle. */
import { describe, expect, test } from 'vitest';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import type { Cord } from '../../src/order/types.ts';
import { EIGHTHS_A_FOOT } from '../../src/units/feet.ts';
import { cutsFromShelf } from '../../src/work/cord-shelf.ts';
import type { TicketCut } from '../../src/work/cuts.ts';
import type { Keyed } from '../../src/work/planned.ts';
import { shelfPlan } from '../../src/work/shelf-plan.ts';
import { sharedShelf } from '../../src/work/shelf.ts';
import { keyed, natural, rare, shopOf } from '../support/cords.ts';

/** One piece of natural cord for each order, by feet, in their turn. */
const cuts = (...feet: number[]): TicketCut[] =>
  feet.map((length, i) => ({
    ...{ id: `${i + 1}`, order: `${i + 1}`, color: 'natural', ply: 8, known: true, use: 'strands' },
    ...{ length: length * EIGHTHS_A_FOOT, quantity: 1 },
  }));
const served = (list: readonly TicketCut[], cord: Cord): string =>
  [...cutsFromShelf(list, shopOf(cord))].join(' ');

describe('a hundred feet on the shelf', () => {
  test.each([
    ['all of it', [60, 40], '1 2'],
    ['in turn, who needs too much passed over', [60, 50, 40], '1 3'],
    ['and who needs more than that, too', [60, 50, 55, 41, 40], '1 5'],
    ['as many as fit from the start', [30, 30, 30, 30, 30, 10], '1 2 3 6'],
    ['nobody where the first needs more than all', [101], ''],
  ])('go to %s', (...[, feet, who]) => {
    expect(served(cuts(...feet), natural)).toBe(who);
  });

  test('go to as many pieces as can be where no more is to be had', () => {
    expect(served(cuts(60, 50, 50), natural)).toBe('1');
    expect(served(cuts(60, 50, 50), rare)).toBe('2 3');
    // As many pieces either way: in turn.
    expect(served(cuts(60, 50), rare)).toBe('1');
    const [, two] = cuts(60, 25);
    const pair = { ...two!, quantity: 2 };
    expect(served([...cuts(60), pair], rare)).toBe('2');
  });

  test('go to nobody whose cord nobody knows, or who needs none', () => {
    const [one, two, three] = cuts(60, 30, 0);
    expect(served([{ ...one!, known: false }, two!, three!], natural)).toBe('2');
  });

  test('and a spool to buy are planned as one', () => {
    const list = cuts(60, 50);
    const [plan] = shelfPlan(list, new Set(['1']), shopOf(natural)).materials;
    const feet = (eighths: number): number => eighths / EIGHTHS_A_FOOT;
    expect(plan!.putUps.map(({ origin, pieces }) => [origin, pieces.map(({ order }) => order)])).toEqual([
      ['remnant', ['1']],
      ['bought', ['2']],
    ]);
    expect(plan!.toBuy.map(({ count, length }) => [count, feet(length)])).toEqual([[1, 300]]);
    expect(plan).toMatchObject({ short: [], proven: true, score: { short: { value: 0, bound: 0 } } });
    expect(plan!.score.bought.value).toBe(1);
    expect(feet(plan!.returned)).toBe(40 + 250);
    // What is left of both is too short to keep.
    const [tight] = shelfPlan(cuts(95, 295), new Set(['1']), shopOf(natural)).materials;
    expect(feet(tight!.score.waste.value)).toBe(5 + 5);
    expect(feet(tight!.score.waste.bound)).toBe(5 + 5);
    expect(tight!.returned).toBe(0);
  });

  test('colors are planned by name, whether they are on the shelf or bought', () => {
    const black = {
      ...natural,
      color: 'black',
      feetOnHand: 0,
      putUps: [{ ...natural.putUps[0]!, opened: [] }],
    };
    const [one, two] = cuts(60, 50);
    const list = [one!, { ...two!, color: 'black' }];
    const plan = shelfPlan(list, new Set(['1']), shopOf(natural, black));
    expect(plan.materials.map(({ color, score }) => [color, score.bought.value])).toEqual([
      ['black', 1],
      ['natural', 0],
    ]);
    expect([plan.proven, plan.gap]).toEqual([true, 0]);
    // Black is short whoever goes first, so nothing is hidden by natural.
    const { materials, proven } = shelfPlan(
      [...list, { ...one!, id: '3', order: '3', color: 'black', length: 400 * EIGHTHS_A_FOOT }],
      new Set(['1']),
      shopOf(natural, { ...black, putUps: [{ lot: 'K', feet: 300, count: 0, opened: [] }] }),
    );
    expect(materials.map(({ short }) => short.map(({ order }) => order))).toEqual([['3'], []]);
    expect(proven).toBe(true);
  });

  test('leave somebody short where no more is to be had, and who is first may leave more', () => {
    const short = (list: readonly TicketCut[], here: readonly string[]) => {
      const { materials, proven } = shelfPlan(list, new Set(here), shopOf(rare));
      expect(materials[0]!.proven).toBe(proven);
      return [materials[0]!.score.short, proven];
    };
    expect(short(cuts(60, 50), ['1'])).toEqual([{ value: 1, bound: 1 }, true]);
    expect(short(cuts(60, 50, 50), ['1'])).toEqual([{ value: 2, bound: 1 }, false]);
    expect(short(cuts(60, 50, 50), ['2', '3'])).toEqual([{ value: 1, bound: 1 }, true]);
  });

  test('each color short of its own orders alone', () => {
    const black = cuts(90, 80, 70).map((cut) => ({
      ...cut,
      id: `b${cut.id}`,
      order: `b${cut.id}`,
      color: 'black',
    }));
    const { materials } = shelfPlan(
      [...cuts(60, 50), ...black],
      new Set(['1', 'b1']),
      shopOf(rare, { ...rare, color: 'black' }),
    );
    expect(
      materials.map(({ color, short, score }) => [color, short.map(({ order }) => order), score.short]),
    ).toEqual([
      ['black', ['b2', 'b3'], { value: 2, bound: 2 }],
      ['natural', ['2'], { value: 1, bound: 1 }],
    ]);
  });
});

test('dees that are short have no swap', () => {
  const order = keyed('1', []);
  const [dee] = defaultShop.dees;
  const ticket = { ...order.ticket, dees: [{ id: dee!.id, count: 2, option: 'dees' }] };
  const shop = { ...defaultShop, dees: [{ ...dee!, onHand: 1 }] };
  const { lacks } = sharedShelf([{ ...order, ticket }], shop, '2026-11-30').shares.get('1')!;
  expect(lacks).toEqual([
    { kind: 'dee', name: dee!.id, ply: undefined, amount: 1, supply: 'ordered', comes: '2026-12-10' },
  ]);
});

test('for a buckle that is short the first that is free and takes the strands the same way is named', () => {
  const thirteen = { min: 13, max: 13 };
  const [plain] = defaultShop.buckles;
  const buckle = (id: string, onHand: number) => ({
    ...plain!,
    ...{ id, onHand, single: thirteen, double: undefined },
  });
  const double = { ...buckle('double', 9), single: undefined, double: thirteen };
  const buckles = [buckle('plain', 1), double, buckle('taken', 3), buckle('few', 1), buckle('free', 2)];
  const shop = { ...defaultShop, buckles };
  const tied = (key: string, id: string, quantity = 1): Keyed => {
    const order = keyed(key, []);
    return {
      ...order,
      ticket: { ...order.ticket, quantity, buckle: buckles.find((each) => each.id === id)! },
    };
  };
  const swaps = (quantity: number) =>
    sharedShelf([tied('1', 'plain', quantity), tied('2', 'taken')], shop, '2026-11-30')
      .shares.get('1')!
      .lacks.map((lack) => [lack.name, lack.amount, lack.swap]);
  expect(swaps(1)).toEqual([['plain', 1, 'free']]);
  // Two cinches need four.
  expect(swaps(2)).toEqual([['plain', 3, undefined]]);
});
