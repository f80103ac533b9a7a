/** One cinch per style and strand count. */
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
  // 37 in between rings: 28 in leave runs of 4 in; 24 in, with 6, hang buckles too low.
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
        // Two runs are left beside the cinch and an inch of give.
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

  // 44 in between rings: 29 in leave runs of 7 in; 26 in leave 8.5 in, too long.
  test('leave an accepted run before they are even', () => {
    const lengths = { min: 26, max: 29, step: 3 };
    const order = orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 44 } });
    const made = sizeOrder(order, { ...defaultShop, lengths }).specs.map(({ candidate }) => candidate.length);
    expect(made.length).toBeGreaterThan(5);
    expect(new Set(made)).toEqual(new Set([29]));
  });

  test('are even where an even one has an accepted run', () => {
    for (const order of orders) {
      const { specs, facts } = sizeOrder(order, defaultShop);
      if (order.horse.trouble.includes('buckle-rub')) continue;
      const runOf = (length: number) => (facts.lengthNeed.ringToRing.value - length - 1) / 2;
      for (const { candidate } of specs) {
        if (candidate.length % 2 === 0 || candidate.run < 4 || candidate.run > 8) continue;
        // Even neighbors here: run not accepted, or refused.
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

  test('taking a buckle off the list leaves cinches that do not use it unchanged and in order', () => {
    let left = 0;
    for (const drawn of orders.slice(0, cases(15, 40))) {
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
  // The ring is 4 - 2 in ahead, 22 in up: the center line leans 1/11. Buckles are 31 / 2 in less their frame
  // up. Special 6, 3.5 in per side, reaches 12.25 / 11 + 3.5 = 4.614 in; the elbow line is at 4 + 0.1 x
  // (12.25 - 7) = 4.525 in. Plain 4 reaches 12.5 / 11 + 2.375 = 3.511 in; the line is at 4.55 in.
  const order = orderOf({ horse: { elbowRoom: 4 }, saddle: { rigging: rigging('full'), ringToRing: 44 } });
  const on = (buckle: string) => {
    const asked = { style: 'low-flare', strands: 27, buckle, length: 30 } as const;
    const { judged, passes } = checkCinch(asked, 'wants', sizeOrder(order, defaultShop));
    const found = judged!.findings.find(({ rule }) => rule === 'elbow-clearance')!;
    return { passes, candidate: judged!.candidate, ...found, told: phraseText(found.reason, 'in') };
  };

  it('of two cinches that differ only in it, one passes and one reaches over the elbow line', () => {
    const [small, large] = [on('plain 4'), on('special 6')];
    expect([small.candidate.layers, large.candidate.layers]).toEqual([2, 2]);
    expect(small).toMatchObject({ passes: true });
    // Nearly parallel.
    within(small.candidate.frameClearance.inches, 4.55 - 3.511, 0.03);
    expect(large).toMatchObject({ passes: false, judgement: 'refuse' });
    within(large.margin!, 4.525 - 4.614, 0.001);
    expect(large.told).toMatch(/^the buckle reaches onto the elbow.* 1\/8 in/);
  });
});
