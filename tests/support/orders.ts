/** Orders and shops as the door gives them. */
import type { Buckle, Order } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { defaultModel, type Model } from '../../src/numbers/numbers.ts';

type Change = Partial<Omit<Order, 'horse' | 'saddle'>> & {
  horse?: Partial<Order['horse']>;
  saddle?: Partial<Order['saddle']>;
};

/** An average trail horse of 72 in girth, full-position ring rigging. */
export function orderOf({ horse, saddle, ...rest }: Change = {}): Order {
  return {
    order: 'T-1',
    quantity: 1,
    use: 'trail',
    ...rest,
    horse: { heartGirth: 72, trouble: [], ...horse },
    saddle: { rigging: rigging('full'), style: 'ring', ...saddle },
  };
}

const fractions = { full: 1, '7/8': 7 / 8, '3/4': 3 / 4, '5/8': 5 / 8, 'center-fire': 1 / 2 } as const;

export function rigging(name: keyof typeof fractions): Order['saddle']['rigging'] {
  return { kind: 'named', name, fraction: fractions[name] };
}

export const shopWith = (change: Partial<Model>) => ({
  ...defaultShop,
  model: { ...defaultModel, ...change },
});

/** It never decides. */
export const plainBuckle: Buckle = {
  id: 'b',
  barWidth: 3,
  frameWidth: 3.75,
  frameHeight: 2.5,
  special: true,
  onHand: 9,
  orderable: true,
};
