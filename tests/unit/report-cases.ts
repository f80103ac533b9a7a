/** Very different orders for the printers' tests. */
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Horse, Order, Saddle, Shop } from '../../src/order/types.ts';
import type { ReportOptions } from '../../src/pages/page.ts';
import type { CheckResult, SizeResult } from '../../src/words/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { rigging } from '../support/orders.ts';
import { sizeScreen } from '../support/screens.ts';

export const plainOptions: ReportOptions = {
  units: 'in',
  color: false,
  width: 80,
  top: 3,
  why: false,
  all: false,
};

export const screen = (result: SizeResult, change: Partial<ReportOptions> = {}): string =>
  sizeScreen([result], { ...plainOptions, ...change });

type Change = Partial<Omit<Order, 'horse' | 'saddle'>> & { horse?: Partial<Horse>; saddle?: Partial<Saddle> };

/** A plain horse of 72 in, ring rigging in full position. */
export function orderWith({ horse, saddle, ...rest }: Change): Order {
  return {
    order: '2417',
    customer: { name: 'Jo Alvarez' },
    quantity: 1,
    use: 'trail',
    ...rest,
    horse: { name: 'Biscuit', heartGirth: 72, trouble: [], ...horse },
    saddle: { rigging: rigging('full'), ...saddle },
  };
}

export const cases = {
  full: orderWith({}),
  sevenEighths: orderWith({
    order: '2418',
    use: 'roping',
    horse: { heartGirth: 73, elbowRoom: 4, barrel: 'average', withers: 'low', kind: 'stock' },
    saddle: { rigging: rigging('7/8'), style: 'flat-plate' },
  }),
  centerFire: orderWith({
    order: '2419',
    horse: { name: 'Dunny', heartGirth: undefined, height: 60 },
    saddle: { rigging: rigging('center-fire'), style: 'in-skirt', ringToRing: 40 },
  }),
  pony: orderWith({
    order: 'P-7',
    use: 'pleasure',
    horse: { name: 'Pepper', heartGirth: undefined, height: 46, kind: 'pony', barrel: 'round' },
    saddle: { rigging: rigging('full') },
  }),
  draft: orderWith({
    order: 'D-1',
    use: 'packing',
    horse: { name: 'Samson', heartGirth: 90, kind: 'draft', barrel: 'round', condition: 7 },
    saddle: { rigging: rigging('3/4'), style: 'dropped' },
  }),
  gall: orderWith({
    order: '2420',
    use: 'ranch',
    horse: { heartGirth: 73, trouble: ['elbow-gall', 'saddle-rolls'] },
    saddle: { rigging: rigging('7/8'), style: 'flat-plate', ringToRing: 44 },
    current: { style: 'straight', strands: 27, length: 32, age: 3 },
    wants: { style: 'straight', strands: 21 },
    colors: { body: ['buckskin'] },
  }),
  nothing: orderWith({
    order: '2421',
    horse: { heartGirth: 72, elbowRoom: 1.75 },
    saddle: { rigging: rigging('full'), ringToRing: 44 },
  }),
  measured: orderWith({
    order: '2422',
    use: 'reining',
    horse: { heartGirth: 74, elbowRoom: 4.25, barrel: 'average', withers: 'average', condition: 5 },
    saddle: {
      rigging: { kind: 'measured', setBack: 2 },
      style: 'ring',
      barSpan: 13,
      ringToRing: 45,
    },
  }),
  otherScripts: orderWith({
    order: '注文 12',
    customer: { name: '山田 太郎 👩‍🌾 with a name that goes on and on and on and on and on and on and on' },
    horse: { name: 'متقدم 🐴🐴🐴' },
  }),
} satisfies Record<string, Order>;

export function sized(order: Order, shop: Shop = defaultShop): SizeResult & { ok: true } {
  const advice = sizeOrder(order, shop);
  const wants = order.wants === undefined ? undefined : checkCinch(order.wants, 'wants', advice);
  return { ok: true, file: 'orders.yaml', advice, wants };
}

export function checked(order: Order, shop: Shop = defaultShop): CheckResult & { ok: true } {
  const advice = sizeOrder(order, shop);
  const asked = (['wants', 'current'] as const).flatMap((which) => {
    const cinch = order[which];
    return cinch === undefined ? [] : [checkCinch(cinch, which, advice)];
  });
  return { ok: true, file: 'orders.yaml', advice, checked: asked };
}

export const failed: SizeResult & { ok: false } = {
  ok: false,
  file: 'bad.yaml',
  order: '99',
  problems: [
    {
      file: 'bad.yaml',
      line: 4,
      column: 16,
      path: 'horse.heart-girth',
      found: '73',
      expected: 'a length with its unit, such as 73 in',
      hint: 'write 73 in',
    },
  ],
};
