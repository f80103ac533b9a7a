/** Remarks where tapes contradict each other. */
import { describe, expect, it } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { tapeRemarks } from '../../src/horse/tape-remarks.ts';
import type { Order } from '../../src/order/types.ts';
import { phraseText } from '../../src/units/text.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { sizeOrder } from '../../src/index.ts';
import { orderOf } from '../support/orders.ts';

const remarks = (order: Order): string[] =>
  tapeRemarks(factsOf(order, defaultModel)).map((one) => phraseText(one, 'in'));

describe('height and heart girth', () => {
  // 1.104 H_cm + 15.7: 60 in gives 72.42 in. Its spread of 3.27 in and the tape's 0.5 make 3.31; three are
  // 9.93.
  const with60 = (heartGirth: number, more: Partial<Order['horse']> = {}): string[] =>
    remarks(orderOf({ horse: { height: 60, heartGirth, ...more } }));

  it('are told once they lie more than three spreads apart, either way', () => {
    expect(with60(82.3)).toEqual([]);
    expect(with60(62.5)).toEqual([]);
    expect(with60(82.4)).toHaveLength(1);
    expect(with60(62.4)).toEqual([
      expect.stringMatching(/by height the girth would be about 72 1\/2 in, give or take 3 1\/4 in/),
    ]);
  });

  it('go by the condition, too, where it was given', () => {
    // At condition 9, 78.22 in; 9.93 above is 88.14.
    expect(with60(88.1, { condition: 9 })).toEqual([]);
    expect(with60(88.2, { condition: 9 })).toEqual([
      expect.stringMatching(/by height and condition the girth would be about 78 1\/4 in/),
    ]);
  });

  it('of kinds without a figure may lie further apart; a girth nobody taped has nothing to say', () => {
    expect(with60(87, { kind: 'mule' })).toEqual([]);
    expect(with60(87.3, { kind: 'mule' })).toHaveLength(1);
    expect(remarks(orderOf({ horse: { height: 60, heartGirth: undefined } }))).toEqual([]);
  });
});

describe('elbow room', () => {
  // Three times hypot(0.5, 0.25) = 0.559 is 1.68.
  const room = (elbowRoom: number): string[] => remarks(orderOf({ horse: { elbowRoom } }));

  it('is told when far more than usual, which would let a cinch too near; never when less', () => {
    expect(room(5.67)).toEqual([]);
    expect(room(5.68)).toEqual([
      expect.stringMatching(/far more than the 4 in usual for this girth\. Measure it again/),
    ]);
    expect(room(1)).toEqual([]);
    // A photo has remarks of its own.
    const seen = (saddle: Partial<Order['saddle']>) =>
      tapeRemarks({
        ...factsOf(orderOf({ horse: { elbowRoom: 8 }, saddle }), defaultModel),
        photo: {} as never,
      });
    expect(seen({ ringToRing: 60 })).toEqual([]);
    expect(seen({ ringToRing: 60, ringDrop: 10 })).toHaveLength(1);
  });
});

describe('ring to ring', () => {
  // 72 less twice 14 is 44. Spreads: girth 0.5 x 44/72, twice the drop's 1.5, tape 0.5: three times 3.06 is
  // 9.17.
  const rings = (ringToRing: number, ringDrop?: number): string[] =>
    remarks(orderOf({ saddle: { ringToRing, ringDrop } }));

  it('is held against the usual drop of the rigging', () => {
    expect(rings(53.1)).toEqual([]);
    expect(rings(34.9)).toEqual([]);
    expect(rings(53.2)).toHaveLength(1);
    expect(rings(34.8)).toEqual([
      expect.stringMatching(/usual ring drop, ring to ring would be 44 in, give or take 3 in/),
    ]);
  });

  it('is held closer against a drop that was measured', () => {
    // 72 less twice 10 is 52. Spreads 0.5, twice 0.5, 0.5: three times 1.22 is 3.67.
    expect(rings(48.4, 10)).toEqual([]);
    expect(rings(48.3, 10)).toHaveLength(1);
    expect(rings(55.7, 10)[0]).toContain('by girth and the ring drop');
  });
});

it('stands among the remarks of an advice, and what goes together has none', () => {
  expect(sizeOrder(orderOf({ horse: { elbowRoom: 7 } }), defaultShop).remarks).toHaveLength(1);
  expect(sizeOrder(orderOf({ horse: { elbowRoom: 4 } }), defaultShop).remarks).toEqual([]);
});

describe('a body that no horse has', () => {
  const of = (horse: Partial<Order['horse']>): string[] =>
    remarks(orderOf({ horse: { heartGirth: 73, ...horse } }));

  // An ellipse 73 in round is 73 / pi = 23.2 in deep if as wide; 22.1 if a tenth wider, 30.1 if half.
  it('is told of a depth that its girth does not go round', () => {
    for (const depth of [22.1, 23.2, 30.1]) expect(of({ barrel: { depth } })).toEqual([]);
    for (const depth of [15, 35]) {
      expect(of({ barrel: { depth } })).toEqual([expect.stringMatching(/Measure depth and girth again/)]);
    }
  });

  it('is told of a body far longer or shorter than the horse is tall', () => {
    for (const bodyLength of [54, 60, 66]) expect(of({ height: 60, bodyLength })).toEqual([]);
    for (const bodyLength of [40, 100]) {
      expect(of({ height: 60, bodyLength })).toEqual([
        expect.stringMatching(/a horse of 15\.0 hh is 48 in to 75 in long/),
      ]);
    }
  });

  it('is told of a pony as tall as a horse', () => {
    expect(of({ height: 58, heartGirth: 71, kind: 'pony' })).toEqual([]);
    expect(of({ height: 68, heartGirth: 80, kind: 'pony' })).toEqual([
      expect.stringMatching(/14\.2 hh at most, not 17\.0 hh/),
    ]);
    expect(of({ height: 68, heartGirth: 80, kind: 'stock' })).toEqual([]);
  });
});
