/** Accent cord: shelf and ticket agree on the feet. */
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import { ticketOf } from '../../src/work/ticket.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import type { Shop } from '../../src/order/types.ts';
import { orderOf } from '../support/orders.ts';

const day = '2026-11-20';
const inColors = (...accent: string[]) => orderOf({ quantity: 2, colors: { body: ['natural'], accent } });
const order = inColors('rust');

const shopWithRust = (feet: number): Shop => ({
  ...defaultShop,
  cords: defaultShop.cords.map((cord) =>
    cord.color === 'rust' ? { ...cord, feetOnHand: feet, orderable: false, putUps: [] } : cord,
  ),
});

describe.each([[['rust']], [['rust', 'turquoise']], [['turquoise', 'rust', 'black']]])('in %j', (colors) => {
  const advice = sizeOrder(inColors(...colors), defaultShop);
  test.each(advice.specs.map((spec) => [`${spec.candidate.style} ${spec.candidate.strands}`, spec] as const))(
    '%s takes what its ticket says',
    (_, spec) => {
      const { accents } = ticketOf(spec, advice, { day });
      const feet = accents.reduce((sum, need) => sum + need.feet, 0);
      expect(spec.candidate.accentFeet).toBe(feet);
    },
  );
});

describe('accent cord on the shelf', () => {
  const advice = sizeOrder(order, defaultShop);

  test('is enough for the first choice to the foot, and one foot less is not', () => {
    const { candidate } = advice.specs[0]!;
    const need = 2 * candidate.accentFeet;
    const like = (feet: number): boolean =>
      sizeOrder(order, shopWithRust(feet)).specs.some(
        ({ candidate: c }) => c.style === candidate.style && c.strands === candidate.strands,
      );
    expect([like(need), like(need - 1)]).toEqual([true, false]);
  });
});
