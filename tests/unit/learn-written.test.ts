/** What is written to a shop file of what was learned, and the least clearance that follows. */
import { describe, expect, test } from 'vitest';
import { entriesOf, floorOf, writtenOf } from '../../src/learn/entries.ts';
import type { Learned } from '../../src/learn/learn.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { modelNumbers } from '../../src/numbers/numbers.ts';
import { shopWith } from '../support/orders.ts';

describe('what is written', () => {
  const learned = (
    value: number,
    { recommended = true, own = false, before = undefined as number | undefined, inForce = 1 } = {},
  ) =>
    ({
      clearance: {
        key: 'required-clearance',
        value,
        recommended,
        outcomes: 88,
        after: { low: value - 0.104, high: value + 0.2 },
      },
      give: {
        key: 'stretch',
        value: 0.8,
        recommended: false,
        outcomes: 30,
        after: { low: -0.1, high: 0.75 },
      },
      shop: {
        ...shopWith({ 'floor-clearance': inForce }),
        overridden: own || before !== undefined ? ['floor-clearance'] : [],
        learned:
          before === undefined ? undefined : { 'floor-clearance': { outcomes: 9, until: '2026-01-01' } },
      },
    }) as unknown as Learned;

  // By default 1.25 in are required and 1 in is the least.
  test.each([
    ['more is required: the least stays a quarter of an inch below', learned(1.42), 1.42, 1.17, 'follows'],
    ['as much as was learned before', learned(1.42, { before: 1.17, inForce: 1.17 }), 1.42, 1.17, 'follows'],
    ['as much as by default', learned(1.25), 1.25, 1, 'stays'],
    ['less: never below the default', learned(0.9), 1, 1, 'stays'],
    [
      'less, where it was raised before: back to the default',
      learned(1.1, { before: 1.2, inForce: 1.2 }),
      1.1,
      1,
      'follows',
    ],
    ['the shop set the least itself', learned(1.42, { own: true, inForce: 1.3 }), 1.42, 1.3, 'set-by-shop'],
    [
      'and the required never goes below that',
      learned(1.1, { own: true, inForce: 1.3 }),
      1.3,
      1.3,
      'set-by-shop',
    ],
    ['nothing is recommended', learned(1.42, { recommended: false, inForce: 1.1 }), 1.42, 1.1, 'stays'],
  ] as const)('where %s', (...[, from, written, value, moves]) => {
    expect(writtenOf(from.clearance, from)).toBe(written);
    expect(floorOf(from)).toEqual({ value, moves });
  });

  test('the least goes no higher than a shop file may have it', () => {
    expect(floorOf(learned(9)).value).toBe(modelNumbers['floor-clearance'].max);
  });

  test('numbers first, then what they rest on, the interval to the hundredth and never past the number', () => {
    const shown = (from: Learned) =>
      entriesOf(from, '2026-11-20').map(({ block, key, value }) => `${block} ${key} ${value}`);
    expect(shown(learned(1.42))).toEqual([
      'model required-clearance 1.42 in',
      'learned required-clearance { outcomes: 88, until: 2026-11-20, low: 1.32 in, high: 1.62 in }',
      'model floor-clearance 1.17 in',
      'learned floor-clearance { outcomes: 88, until: 2026-11-20 }',
    ]);
    const both = learned(0.9);
    expect(shown({ ...both, give: { ...both.give, recommended: true } })).toEqual([
      'model required-clearance 1 in',
      'model stretch 0.8 in',
      'learned required-clearance { outcomes: 88, until: 2026-11-20, low: 0.8 in, high: 1.1 in }',
      'learned stretch { outcomes: 30, until: 2026-11-20, low: 0 in, high: 0.8 in }',
    ]);
    expect(shown({ ...learned(1.42, { recommended: false }), shop: defaultShop })).toEqual([]);
  });
});
