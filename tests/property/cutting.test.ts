/** Laws of cutting plans: nothing lost or cut twice, one dye lot per order. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planCuts } from '../../src/work/cutting/plan.ts';
import type { CuttingPlan, CuttingTask } from '../../src/work/cutting/types.ts';
import { cases } from '../support/cases.ts';
import { smallTask } from '../support/cutting-cases.ts';
import { randomCuts, randomShelf } from '../support/random-shop-work.ts';

/** Small tasks, and shop-sized ones with few steps. */
const tasks: fc.Arbitrary<CuttingTask> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc
      .record({ task: smallTask, steps: fc.integer({ min: 0, max: 100_000 }) })
      .map(({ task, steps }) => ({ ...task, steps })),
  },
  {
    weight: 1,
    arbitrary: fc
      .record({
        orders: fc.integer({ min: 1, max: 40 }),
        seed: fc.nat(1000),
        fill: fc.constantFrom(0, 0.1, 1),
        buy: fc.boolean(),
      })
      .map(({ orders, seed, fill, buy }) => {
        const { onHand, buyable } = randomShelf(seed, fill);
        const cuts = randomCuts(orders, seed);
        return { cuts, onHand, buyable: buy ? buyable : [], usable: 1920, steps: 2_000_000 };
      }),
  },
);

const holds = (law: (task: CuttingTask, plan: CuttingPlan) => void, numRuns = cases(25, 80)): void => {
  fc.assert(
    fc.property(tasks, (task) => {
      law(task, planCuts(task));
    }),
    { seed: 31, numRuns },
  );
};

describe('a cutting plan', () => {
  it('loses no piece and cuts none twice', () => {
    holds(({ cuts }, { materials }) => {
      const found = materials.flatMap(({ putUps, short }) => [
        ...putUps.flatMap(({ pieces }) => pieces),
        ...short.flatMap(({ pieces }) => pieces),
      ]);
      const asked = cuts.flatMap(({ id, quantity, length }) =>
        Array.from({ length: quantity }, (_, i) => `${id} ${i + 1} ${length}`),
      );
      expect(found.map(({ cut, number, length }) => `${cut} ${number} ${length}`).sort()).toEqual(
        asked.sort(),
      );
    });
  });

  it('cuts no put-up over its length, and no more of them than there are', () => {
    holds((task, { materials }) => {
      const kinds = new Map([...task.onHand, ...task.buyable].map((kind) => [kind.id, kind]));
      const putUps = materials.flatMap((material) => material.putUps);
      for (const { id, copy, length, color, ply, pieces, leftover } of putUps) {
        const kind = kinds.get(id)!;
        const cut = pieces.reduce((sum, piece) => sum + piece.length, 0);
        expect([length, color, ply]).toEqual([kind.length, kind.color, kind.ply]);
        expect(cut + leftover).toBe(length);
        expect(leftover).toBeGreaterThanOrEqual(0);
        expect(pieces.length).toBeGreaterThan(0);
        expect(copy).toBeLessThanOrEqual(kind.count ?? Infinity);
      }
      expect(new Set(putUps.map(({ id, copy }) => `${id} ${copy}`)).size).toBe(putUps.length);
    });
  });

  it('takes all pieces of one order, color and ply from one dye lot, or none', () => {
    holds((_, { materials }) => {
      for (const { putUps, short } of materials) {
        const lots = new Map<string, string>(short.map(({ order }) => [order, 'short']));
        for (const { lot, origin, pieces } of putUps) {
          const name = `${origin === 'bought' ? 'bought' : 'here'} ${lot}`;
          for (const { order } of pieces) {
            expect(lots.get(order) ?? name).toBe(name);
            lots.set(order, name);
          }
        }
      }
    });
  });

  it('scores what it says', () => {
    holds(({ usable }, { materials, proven, gap }) => {
      for (const { putUps, short, score, toBuy, returned } of materials) {
        const of = (origin: string): number => putUps.filter((putUp) => putUp.origin === origin).length;
        expect(score.short.value).toBe(short.reduce((sum, { pieces }) => sum + pieces.length, 0));
        expect(score.bought.value).toBe(of('bought'));
        expect(score.opened.value).toBe(of('shelf'));
        expect(toBuy.reduce((sum, { count }) => sum + count, 0)).toBe(of('bought'));
        const leftovers = putUps.map(({ leftover }) => leftover);
        const long = leftovers.filter((leftover) => leftover >= usable);
        expect(returned).toBe(long.reduce((a, b) => a + b, 0));
        expect(score.waste.value).toBe(leftovers.reduce((a, b) => a + b, 0) - returned);
      }
      if (proven) expect(gap).toBe(0);
    });
  });

  it('never has a bound above what was found', () => {
    holds((_, { materials }) => {
      for (const { score } of materials) {
        for (const part of [score.short, score.bought, score.opened, score.waste]) {
          expect(part.bound).toBeLessThanOrEqual(part.value);
        }
      }
    });
  });

  it('is the same whatever the order of the input', () => {
    holds((task, plan) => {
      const turned = {
        ...task,
        cuts: [...task.cuts].reverse(),
        onHand: [...task.onHand.slice(1), ...task.onHand.slice(0, 1)].reverse(),
        buyable: [...task.buyable].reverse(),
      };
      expect(planCuts(turned)).toEqual(plan);
    }, 40);
  });

  it('buys nothing that the shelf could give', () => {
    holds((task, { materials }) => {
      const without = planCuts({ ...task, buyable: [] });
      materials.forEach(({ score, proven }, i) => {
        if (proven && without.materials[i]!.score.short.value === 0) expect(score.bought.value).toBe(0);
      });
    }, 40);
  });
});

describe('what no caller may hand over', () => {
  const cut = { id: 'a', order: '1', color: 'natural', ply: 8, length: 8, quantity: 1 };
  const task: CuttingTask = { cuts: [cut], onHand: [], buyable: [], usable: 0 };
  it.each([
    [
      'a length that is no whole number',
      { ...task, cuts: [{ ...cut, length: 1.5 }] },
      /length of cut a is 1.5/,
    ],
    ['a quantity below 0', { ...task, cuts: [{ ...cut, quantity: -1 }] }, /quantity of cut a is -1/],
    ['an id used twice', { ...task, cuts: [cut, cut] }, /the cut a is there twice/],
    ['steps that are no number', { ...task, steps: Number.NaN }, /steps is NaN/],
  ])('%s', (_, wrong, message) => {
    expect(() => planCuts(wrong)).toThrow(message);
  });
});
