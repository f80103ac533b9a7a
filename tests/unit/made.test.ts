/** Make: of each style and strand count one cinch; its details are settled within it and decide nothing else. */
import { describe, expect, it, test } from 'vitest';
import type { Advice } from '../../src/advice/advice.ts';
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import type { Shop } from '../../src/order/types.ts';
import { phraseText } from '../../src/units/text.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases } from '../support/cases.ts';
import { orderIn } from '../support/door.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { randomOrders } from '../support/random-cases.ts';
import { within } from '../support/within.ts';

const orders = randomOrders(77, 120);
const kindOf = ({ style, strands }: Candidate): string => `${style} ${String(strands)}`;
const detailOf = ({ buckle, length, layers }: Candidate): string =>
  `${buckle.id}, ${String(length)} in, ${String(layers)}`;

test('each style and strand count is told once', () => {
  for (const order of orders) {
    const advice = sizeOrder(order, defaultShop);
    expect(new Set(advice.specs.map(({ candidate }) => kindOf(candidate))).size).toBe(advice.specs.length);
  }
});

describe('lengths', () => {
  // Rings 37 in apart leave a straight of 28 in 4 in of latigo each side; buckles of 24 in, with 6, would hang too low.
  test('give up latigo to lift the buckle under a dropped rigging', () => {
    const text =
      'order: 1\nhorse: {heart-girth: 74 in, elbow-room: 4 in}\nsaddle: {rigging: 7/8, style: dropped, ring-to-ring: 37 in}\n';
    const { first } = sizeOrder(orderIn(text), defaultShop);
    expect(first?.candidate.style).toBe('straight');
    expect(first?.candidate.run).toBeGreaterThanOrEqual(3);
    expect(first?.candidate.run).toBeLessThan(6);
    expect(first?.judgementOf('elbow-clearance')).not.toBe('poor');
  });

  test.each([
    { min: 20, max: 38, step: 1 },
    { min: 20, max: 40, step: 4 },
    { min: 21.5, max: 33, step: 0.75 },
  ])('of all made in a shop of %j leave a run of 3 to 10 in and are of the shop', (lengths) => {
    let seen = 0;
    for (const order of orders) {
      const { specs, facts } = sizeOrder(order, { ...defaultShop, lengths });
      for (const { candidate } of specs) {
        // What is left of ring to ring, once the cord has given an inch, is two runs.
        const run = (facts.lengthNeed.ringToRing.value - candidate.length - 1) / 2;
        within(candidate.run, run, 1e-9);
        expect(run).toBeGreaterThanOrEqual(3);
        expect(run).toBeLessThanOrEqual(10);
        const steps = (candidate.length - lengths.min) / lengths.step;
        within(steps, Math.round(steps), 1e-9);
        expect(candidate.length).toBeLessThanOrEqual(lengths.max);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(400);
  });

  // Rings 44 in apart leave 29 in a run of 7 in, and 26 in one of 8.5 in, which is more than is accepted.
  test('leave an accepted run before they are even', () => {
    const lengths = { min: 26, max: 29, step: 3 };
    const order = orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 44 } });
    const made = sizeOrder(order, { ...defaultShop, lengths }).specs.map(({ candidate }) => candidate.length);
    expect(made.length).toBeGreaterThan(5);
    expect(new Set(made)).toEqual(new Set([29]));
  });

  test('are even where an even one has a run that is accepted', () => {
    for (const order of orders) {
      const { specs, facts } = sizeOrder(order, defaultShop);
      if (order.horse.trouble.includes('buckle-rub')) continue;
      const runOf = (length: number) => (facts.lengthNeed.ringToRing.value - length - 1) / 2;
      for (const { candidate } of specs) {
        if (candidate.length % 2 === 0 || candidate.run < 4 || candidate.run > 8) continue;
        // Both even neighbors on this buckle: out of the accepted run, or refused.
        for (const length of [candidate.length - 1, candidate.length + 1]) {
          if (runOf(length) < 4 || runOf(length) > 8) continue;
          const asked = { style: candidate.style, strands: candidate.strands, buckle: candidate.buckle.id };
          const { passes } = checkCinch({ ...asked, length }, 'wants', sizeOrder(order, defaultShop));
          expect([order.order, kindOf(candidate), length, passes]).toEqual([
            order.order,
            kindOf(candidate),
            length,
            false,
          ]);
        }
      }
    }
  });
});

describe('details never decide between kinds', () => {
  const without = (id: string): Shop => ({
    ...defaultShop,
    buckles: defaultShop.buckles.filter((buckle) => buckle.id !== id),
  });

  test('a buckle taken off the list leaves kinds that do not use it as they were, and in their order', () => {
    let left = 0;
    for (const drawn of orders.slice(0, cases(15, 40))) {
      // The one ridden in now is laid with a buckle of the list.
      const order = { ...drawn, current: undefined };
      const full = sizeOrder(order, defaultShop);
      for (const { id } of defaultShop.buckles) {
        const fewer = sizeOrder(order, without(id));
        const kept = full.specs.filter(({ candidate }) => candidate.buckle.id !== id);
        const kinds = new Set(kept.map(({ candidate }) => kindOf(candidate)));
        const told = (specs: Advice['specs']): string[] =>
          specs.map(({ candidate }) => `${kindOf(candidate)}: ${detailOf(candidate)}`);
        expect(told(fewer.specs.filter(({ candidate }) => kinds.has(kindOf(candidate))))).toEqual(told(kept));
        left += kept.length;
      }
    }
    expect(left).toBeGreaterThan(cases(750, 2000));
  });
});

describe('the buckle is live', () => {
  // The ring hangs 4 - 2 in ahead, 22 in up: the center line leans 1/11. A cinch of 30 in, given 1 in, puts buckles 15.5 in less their
  // frame up. There the frame of special 6, 3.5 in to each side, reaches 12.25 / 11 + 3.5 = 4.614 in forward, and the elbow line lies at
  // 4 + 0.1 x (12.25 - 7) = 4.525 in. That of plain 4 reaches 12.5 / 11 + 2.375 = 3.511 in, and the line lies at 4.55 in.
  const order = orderOf({ horse: { elbowRoom: 4 }, saddle: { rigging: rigging('full'), ringToRing: 44 } });
  const on = (buckle: string) => {
    const asked = { style: 'low-flare', strands: 27, buckle, length: 30 } as const;
    const { judged, passes } = checkCinch(asked, 'wants', sizeOrder(order, defaultShop));
    const found = judged!.findings.find(({ rule }) => rule === 'elbow-clearance')!;
    return { passes, candidate: judged!.candidate, ...found, told: phraseText(found.reason, 'in') };
  };

  it('of two cinches that differ in nothing else one passes and one lies over the elbow line', () => {
    const [small, large] = [on('plain 4'), on('special 6')];
    expect([small.candidate.layers, large.candidate.layers]).toEqual([2, 2]);
    expect(small).toMatchObject({ passes: true });
    // Nearly parallel: an inch of room all along.
    within(small.candidate.frameClearance.inches, 4.55 - 3.511, 0.03);
    expect(large).toMatchObject({ passes: false, judgement: 'refuse' });
    within(large.margin!, 4.525 - 4.614, 0.001);
    expect(large.told).toMatch(/^the buckle reaches onto the elbow.* 1\/8 in/);
  });
});
