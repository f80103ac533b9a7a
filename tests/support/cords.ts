/** Cord on a small shelf. */
import type { Cord, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import type { Keyed } from '../../src/work/planned.ts';

export const natural: Cord = {
  ...{ color: 'natural', ply: 8, feetOnHand: 100, orderable: true, leadDays: 7 },
  putUps: [{ lot: 'A', feet: 300, count: 0, opened: [100] }],
};
export const shopOf = (...cords: Cord[]): Shop => ({ ...defaultShop, cords });
export const rare = { ...natural, orderable: false };

/** An order of one cinch of these colors and feet. */
export const keyed = (
  key: string,
  pieces: readonly [string | undefined, number][],
  accent?: [string, number],
): Keyed =>
  ({
    key,
    ticket: {
      ...{ quantity: 1, buckle: defaultShop.buckles[0], strands: 13, layers: 1, dees: [] },
      pieces: pieces.map(([color, feet]) => ({ color, ply: 8, feet, strands: '1 to 13' })),
      accents: accent === undefined ? [] : [{ color: accent[0], feet: accent[1] }],
    },
  }) as unknown as Keyed;
