/** What is said where nothing passes, of the shop, of the tape and of the length; and beside a cinch that was asked about. */
import { expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { lay } from '../../src/fit/lay.ts';
import { sideOf } from '../../src/fit/side.ts';
import { sizeOrder } from '../../src/index.ts';
import type { CinchAsked, Style } from '../../src/order/types.ts';
import { bestText, nothingPassesText } from '../../src/report/about-check.ts';
import { measureTexts, refusedTexts } from '../../src/report/about-rest.ts';
import { wayOutText } from '../../src/report/about-way-out.ts';
import { layersOf } from '../../src/stock/buckles.ts';
import { defaultShop as shop } from '../../src/stock/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';

/** The average horse, for which much passes. */
const usual = sizeOrder(orderOf(), shop);

test('a shop whose buckles take none of its strand counts is told so, and the horse is not blamed', () => {
  const advice = sizeOrder(orderOf(), { ...shop, strands: { min: 33, max: 45 } });
  const why = 'no buckle of the shop file takes 33 to 45 strands';
  expect(refusedTexts(advice, 'in')).toEqual(
    ['straight', 'high-flare roper', 'low-flare roper'].map((style) => `${style}: cannot be tied, ${why}`),
  );
  expect(wayOutText(advice, 'in')).toBe(`N${why.slice(1)}: the horse has no part in it.`);
  expect(usual.noBuckle).toBe(false);
});

test('buckles that hang too low ask for the tape from ring to ring again, and for the length where the shop ties none so long', () => {
  // Ring to ring 30 less two runs of 6 and 1 of give is 17 in: a low edge far below the least, whatever the cinch.
  const short = sizeOrder(orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 30 } }), shop);
  expect(new Set(short.refused.filter(({ strands }) => strands === 11).map(({ rule }) => rule))).toEqual(
    new Set(['buckle-height']),
  );
  expect(measureTexts(short, 'in')[0]).toMatch(
    /^Ring to ring again, since everything hangs on it: saddle and pad/,
  );
  expect(wayOutText(short, 'in')).toBe('No place of the ring makes anything pass either.');
  // Ring to ring 44: 44 - 12 - 1 is 31 in.
  const pony = { ...shop, lengths: { min: 21, max: 24, step: 1 } };
  const long = sizeOrder(orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 44 } }), pony);
  expect(wayOutText(long, 'in')).toBe(
    'This pair needs a cinch of about 31 in; the shop ties 21 in to 24 in.',
  );
  expect(measureTexts(usual, 'in').join()).not.toContain('Ring to ring again');
});

test('no cinch has a length below nothing', () => {
  // Girth 48 less twice 20 is 8 in from ring to ring; two runs of 4 and the give of 1 are 9.
  const advice = sizeOrder(orderOf({ horse: { heartGirth: 48 }, saddle: { ringDrop: 20 } }), shop);
  expect(wayOutText(advice, 'in')).toBe('Ring to ring leaves no room for a cinch and two latigos: tape it.');
});

test('who asks about one cinch is told that no other passes either', () => {
  const none = sizeOrder(orderOf({ horse: { elbowRoom: 1.5 } }), shop);
  const of = (advice: typeof none, strands: number) =>
    nothingPassesText(checkCinch({ style: 'straight', strands }, 'command line', advice), advice);
  expect(of(none, 17)).toBe('Nothing the shop can tie passes for this pair: size says what comes nearest.');
  expect(of(usual, 31)).toBeUndefined();
  expect(of(usual, 15)).toBeUndefined();
});

test('strands without a style are judged as a straight: a guess passes nothing', () => {
  // On 7/8 a low flare of 25 passes, a straight does not.
  const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8') } }), shop);
  const check = (asked: CinchAsked) => checkCinch(asked, 'current', advice);
  expect(check({ style: 'low-flare', strands: 25 }).passes).toBe(true);
  expect(check({ strands: 25 })).toMatchObject({
    passes: false,
    filled: [{ part: 'style', taken: 'straight' }, {}, {}],
  });
  // Without strands there is nothing to be too wide: the best there is.
  expect(check({ length: 32 }).judged?.candidate.style).toBe(advice.specs[0]!.candidate.style);
});

test.each(['full', '7/8', '3/4', 'center-fire'] as const)(
  'on %s no roper comes nearer the elbow than a straight of its strands on its buckle, so that a straight is the careful guess',
  (position) => {
    const side = sideOf(sizeOrder(orderOf({ saddle: { rigging: rigging(position) } }), shop).facts);
    for (const buckle of shop.buckles) {
      for (let strands = 11; strands <= 31; strands += 2) {
        for (const layers of layersOf(buckle, strands)) {
          const likely = (style: Style): number =>
            lay({ style, strands, layers, buckle, length: 32 }, side)!.clearance.likely;
          const straight = likely('straight');
          expect(likely('high-flare')).toBeGreaterThanOrEqual(straight - 1e-9);
          expect(likely('low-flare')).toBeGreaterThanOrEqual(straight - 1e-9);
        }
      }
    }
  },
);

test('the best is told beside a cinch of its style and strands when another length or buckle was named', () => {
  // 19 strands, which more than one buckle takes.
  const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8') } }), shop);
  const [first] = advice.specs;
  const { style, strands, length, buckle } = first!.candidate;
  const best = (more: { length?: number; buckle?: string }) =>
    bestText(checkCinch({ style, strands, ...more }, 'wants', advice), advice, 'in');
  expect(best({})).toBeUndefined();
  expect(best({ length, buckle: buckle.id })).toBeUndefined();
  expect(best({ length: length - 0.4 })).toBeUndefined();
  expect(best({ length: length - 1.5 })).toContain(`${String(length)} in long`);
  expect(best({ buckle: 'plain 3 1/2' })).toContain(`${buckle.id} buckle`);
});
