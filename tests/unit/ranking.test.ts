/** How use and trouble change the ranking; ways out. */
import { describe, expect, it } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging, shopWith } from '../support/orders.ts';
import { within } from '../support/within.ts';

const firstOf = (order: Order, shop = defaultShop) => sizeOrder(order, shop).specs[0]?.candidate;

describe('ranking', () => {
  it('to rope from a full rig puts more cords before a narrow straight', () => {
    const roping = firstOf(orderOf({ use: 'roping' }));
    expect(roping?.strands).toBeGreaterThanOrEqual(19);
    expect(firstOf(orderOf({ use: 'trail' }))?.style).toBe('straight');
  });

  // Roping 19 strands; weaving that adds nothing is no maker's: common practice, no source.
  it.each([
    ['full', undefined, 'low-flare'],
    // A straight of 19 clears the elbow, but nobody ties it.
    ['full', 5, 'low-flare'],
    // One of 19 is tied, but hardly clears.
    ['7/8', undefined, 'low-flare'],
    ['7/8', 4, 'straight'],
    ['3/4', 3.5, 'straight'],
    ['center-fire', 5, 'straight'],
  ] as const)(
    'to rope from %s with %f in of room takes 19 strands, straight if one is good: %s',
    (...row) => {
      const [position, elbowRoom, style] = row;
      const order = orderOf({ use: 'roping', horse: { elbowRoom }, saddle: { rigging: rigging(position) } });
      const advice = sizeOrder(order, defaultShop);
      expect(advice.first?.candidate.style).toBe(style);
      expect(advice.first?.candidate.strands).toBeGreaterThanOrEqual(19);
      if (style !== 'straight') return;
      expect(advice.first?.judgementOf('elbow-clearance')).toBe('good');
      const roper = advice.specs.find(({ candidate }) => candidate.style !== 'straight')!;
      expect(roper.candidate.strands).toBeGreaterThan(advice.first!.candidate.strands);
      const { words } = advice.firstBefore(roper).words;
      expect(words.join('')).toBe('a straight with enough strands to rope off of needs no weaving');
    },
  );

  it('of a rubbed horse looks at the frame only until it is clear enough', () => {
    const rubbed = orderOf({ horse: { trouble: ['buckle-rub'] }, saddle: { rigging: rigging('3/4') } });
    const plain = orderOf({ saddle: { rigging: rigging('3/4') } });
    expect(firstOf(rubbed)?.strands).toBe(firstOf(plain)?.strands);
  });

  it('of a galled horse asks for 90 %, not for the narrowest', () => {
    const galled = firstOf(
      orderOf({ horse: { trouble: ['elbow-gall'] }, saddle: { rigging: rigging('7/8') } }),
    );
    expect(galled?.clearance.chance).toBeGreaterThanOrEqual(0.9);
    expect(galled?.strands).toBeGreaterThan(11);
  });

  it('weighs the shelf once: buckles to be ordered do not put a narrower cinch first', () => {
    const bare = { ...defaultShop, buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, onHand: 0 })) };
    const half = {
      ...defaultShop,
      buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, onHand: buckle.barWidth < 3 ? 9 : 0 })),
    };
    const order = orderOf({ saddle: { rigging: rigging('3/4') } });
    expect(firstOf(order, half)?.strands).toBe(firstOf(order, bare)?.strands);
  });

  it('of buckles that nothing tells apart takes the first by name, wherever it stands in the list', () => {
    const [buckle] = defaultShop.buckles;
    for (const names of ['a b c', 'b a c', 'c b a']) {
      const buckles = names.split(' ').map((id) => ({ ...buckle!, id }));
      expect(firstOf(orderOf(), { ...defaultShop, buckles })?.buckle.id).toBe('a');
    }
  });
});

describe('stock', () => {
  it('looks the accent cord up too', () => {
    const shop = {
      ...defaultShop,
      cords: [
        { color: 'natural', ply: 8, putUps: [], feetOnHand: 500, orderable: true },
        { color: 'sage', ply: 2, putUps: [], feetOnHand: 0, orderable: false },
      ],
    };
    const advice = sizeOrder(orderOf({ colors: { body: ['natural'], accent: ['sage'] } }), shop);
    expect(advice.specs).toEqual([]);
    expect(sizeOrder(orderOf({ colors: { body: ['natural'] } }), shop).specs.length).toBeGreaterThan(0);
  });
});

describe('way out', () => {
  // 3 in is no close groove yet; the ring hangs ahead of full.
  it('is the least further set-back with which something passes and is not poor, and less is not', () => {
    const ahead = (setBack: number) =>
      sizeOrder(
        orderOf({ horse: { elbowRoom: 3 }, saddle: { rigging: { kind: 'measured', setBack } } }),
        defaultShop,
      );
    for (const setBack of [-2, -1.5]) {
      const { specs, wayOut } = ahead(setBack);
      expect(specs).toEqual([]);
      const notPoor = (further: number) =>
        ahead(setBack + further).specs.filter((spec) => spec.judgementOf('elbow-clearance') !== 'poor')
          .length;
      expect(notPoor(wayOut?.further ?? Number.NaN)).toBeGreaterThan(0);
      expect(notPoor((wayOut?.further ?? Number.NaN) - 0.25)).toBe(0);
    }
  });

  it('is not looked for where something passes, and is nothing where no place of the ring helps', () => {
    expect(sizeOrder(orderOf(), defaultShop).wayOut).toBeUndefined();
    expect(
      sizeOrder(orderOf({ horse: { heartGirth: 90, elbowRoom: 1 } }), defaultShop).wayOut,
    ).toBeUndefined();
  });
});

describe('a shop file with its own numbers', () => {
  it('changes the answer', () => {
    const order = orderOf({ saddle: { rigging: rigging('3/4') } });
    const strict = firstOf(order, shopWith({ 'chance-good': 0.95 }));
    expect(strict?.strands).toBeLessThan(firstOf(order)?.strands ?? 0);
    expect(strict?.clearance.likely).toBeGreaterThanOrEqual(0.95);
  });
});

describe('orders as files', () => {
  it('a measured drop in centimetres tells the ring as half of the girth less the drop', () => {
    const read = readOrders(
      'order: 1\nhorse: { heart-girth: 180 cm }\nsaddle: { rigging: full, ring-drop: 40 cm }\n',
      'a',
    );
    const order = read[0]?.ok === true ? read[0].order : undefined;
    if (order === undefined) throw new Error('not read');
    within(sizeOrder(order, defaultShop).facts.ring.station.value, 50 / 2.54, 1e-9);
  });
});
