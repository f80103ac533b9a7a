/** Small steps of a tape change the answer little. */
import { describe, expect, test } from 'vitest';
import { seededRandom, type Random } from '../../src/math/random.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { horseKeys } from '../../src/order/keys/horse.ts';
import { saddleKeys } from '../../src/order/keys/saddle.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases, long } from '../support/cases.ts';
import { pick } from '../support/draw.ts';
import { orderOf, rigging } from '../support/orders.ts';

interface Sweep {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** The order, had this been measured. */
  readonly put: (order: Order, value: number) => Order;
}

const horse = ({ horse: before, ...order }: Order, change: Partial<Order['horse']>): Order => ({
  ...order,
  horse: { ...before, ...change },
});
const saddle = ({ saddle: before, ...order }: Order, change: Partial<Order['saddle']>): Order => ({
  ...order,
  saddle: { ...before, ...change },
});

/** Everything somebody measures. */
const sweeps: Readonly<Record<string, Sweep>> = {
  'heart-girth': { from: 60, to: 84, step: 0.05, put: (order, heartGirth) => horse(order, { heartGirth }) },
  height: {
    from: 54,
    to: 72,
    step: 0.05,
    put: (order, height) => horse(order, { height, heartGirth: undefined }),
  },
  'elbow-room': { from: 2, to: 6, step: 0.02, put: (order, elbowRoom) => horse(order, { elbowRoom }) },
  'set-back': {
    from: -1,
    to: 8,
    step: 0.02,
    put: (order, setBack) => saddle(order, { rigging: { kind: 'measured', setBack } }),
  },
  'ring-to-ring': { from: 34, to: 52, step: 0.05, put: (order, ringToRing) => saddle(order, { ringToRing }) },
  'ring-drop': { from: 12, to: 19, step: 0.05, put: (order, ringDrop) => saddle(order, { ringDrop }) },
  'bar-span': { from: 10, to: 16, step: 0.05, put: (order, barSpan) => saddle(order, { barSpan }) },
};

interface First {
  /** Poor at the elbow, or too narrow for a grown horse. */
  readonly lastResort: boolean;
  readonly style: string;
  readonly strands: number;
  readonly length: number;
}

function firstOf(order: Order): First {
  const { first } = sizeOrder(order, defaultShop);
  if (first === undefined) return { lastResort: true, style: 'nothing', strands: 0, length: 0 };
  const { style, strands, length } = first.candidate;
  const narrow = style === 'straight' && strands < 13;
  return { lastResort: narrow || first.judgementOf('elbow-clearance') === 'poor', style, strands, length };
}

/** Jumps, and returns to a style once left, unless the even length has changed. */
function breaks({ from, to, step, put }: Sweep, order: Order): string[] {
  const found: string[] = [];
  // Each style once left, with its length then.
  const left = new Map<string, number>();
  let before = firstOf(put(order, from));
  for (let i = 1; i <= Math.round((to - from) / step); i++) {
    const value = Math.round((from + i * step) * 1e6) / 1e6;
    const now = firstOf(put(order, value));
    const words = `at ${String(value)} from ${before.style} ${String(before.strands)} to ${now.style} ${String(now.strands)}`;
    if (now.style === before.style) {
      if (Math.abs(now.strands - before.strands) > 2) found.push(`jumps ${words}`);
    } else {
      if (!before.lastResort) left.set(before.style, before.length);
      if (left.has(now.style) && left.get(now.style) === now.length && now.length === before.length)
        found.push(`comes back ${words}`);
    }
    before = now;
  }
  return found;
}

const positions = ['full', '7/8', '3/4', '5/8', 'center-fire'] as const;

/** A rigging, style and trouble; for more work also its use and ribs. */
function drawn(random: Random, worked: boolean): Order {
  const trouble = pick(random, [undefined, ...horseKeys.trouble.words]);
  return orderOf({
    ...(worked ? { use: pick(random, ['roping', 'ranch', 'packing'] as const) } : {}),
    horse: {
      trouble: trouble === undefined ? [] : [trouble],
      ...(worked ? { barrel: pick(random, horseKeys.barrel.words) } : {}),
    },
    saddle: { rigging: rigging(pick(random, positions)), style: pick(random, saddleKeys.style.words) },
  });
}

function named({ use, horse: { trouble, barrel }, saddle: { rigging: hung, style } }: Order): string {
  const position = hung.kind === 'named' ? hung.name : undefined;
  const ribs = typeof barrel === 'string' ? barrel : undefined;
  return [use, position, style, ribs, ...trouble].filter((part) => part !== undefined).join(', ');
}

describe.each(Object.entries(sweeps))('%s in small steps', (name, sweep) => {
  const random = seededRandom(Object.keys(sweeps).indexOf(name) + 2417);
  // Half of them at the gate.
  const kinds = long ? [false, true] : [Object.keys(sweeps).indexOf(name) % 2 === 0];
  const orders = kinds.map((worked) => drawn(random, worked));

  test.each(orders.map((order) => [named(order), order] as const))('%s', (_, order) => {
    expect(breaks({ ...sweep, step: cases(2, 1) * sweep.step }, order)).toEqual([]);
  });
});
