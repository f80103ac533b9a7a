/** What is said where no cinch passes. */
import { expect, test } from 'vitest';
import type { Advice } from '../../src/advice/advice.ts';
import { checkCinch } from '../../src/advice/check.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { sizeOrder } from '../../src/index.ts';
import type { CinchAsked, Style } from '../../src/order/types.ts';
import { refusedTexts } from '../../src/words/about-rest.ts';
import { wayOutText } from '../../src/words/about-way-out.ts';
import { layersOf } from '../../src/cinch/buckles.ts';
import { defaultShop as shop } from '../../src/cinch/default-shop.ts';
import { checkScreen, sizeScreen } from '../support/screens.ts';
import { checked } from './report-cases.ts';
import { orderOf, rigging } from '../support/orders.ts';

const told = (advice: Advice): string =>
  sizeScreen([{ ok: true, file: 'a.yaml', advice, wants: undefined }], { units: 'in' });

const usual = sizeOrder(orderOf(), shop);

test('a shop whose buckles take none of its strand counts is told so, and the horse is not blamed', () => {
  const advice = sizeOrder(orderOf(), { ...shop, strands: { min: 33, max: 45 } });
  const why = 'no buckle of the shop file takes 33 to 45 strands';
  expect(refusedTexts(advice, 'in')).toEqual(
    ['straight', 'high-flare roper', 'low-flare roper'].map((style) => `${style}: cannot be tied, ${why}`),
  );
  expect(wayOutText(advice, 'in')).toBe(`N${why.slice(1)}: the horse is not the problem.`);
  expect(usual.noBuckle).toBe(false);
  const [some, noRoom] = [{ ...shop, strands: { min: 11, max: 45 } }, orderOf({ horse: { elbowRoom: 1 } })];
  expect(sizeOrder(noRoom, some)).toMatchObject({ first: undefined, noBuckle: false });
});

const room1 = (ringToRing: number) =>
  sizeOrder(orderOf({ horse: { elbowRoom: 1 }, saddle: { ringToRing } }), shop);

test('where nothing passes the length nobody named is one that the shop ties', () => {
  // 30 - 12 - 1 = 17 in and 70 - 12 - 1 = 57 in: neither is tied.
  const { min, max } = shop.lengths;
  for (const [rings, tied] of [
    [30, min],
    [70, max],
  ] as const) {
    const { filled } = checkCinch({ style: 'straight', strands: 17 }, 'wants', room1(rings));
    expect(filled.find(({ part }) => part === 'length')?.taken).toBe(tied);
  }
});

test('a buckle nobody has: nothing is filled in, and the rest of the wish is kept', () => {
  const ask = (buckle: string) => checkCinch({ style: 'low-flare', strands: 21, buckle }, 'wants', usual);
  expect(ask('gold')).toMatchObject({ passes: false, filled: [] });
  expect(ask('gold').nearest?.candidate).toMatchObject({ style: 'low-flare', strands: 21 });
  const words = (buckle: string) => ask(buckle).cannot?.words.join('|');
  expect(words('plain 33')).toContain('did you mean');
  expect(words('gold')).not.toContain('did you mean');
});

test('a wish for a length alone is filled in from the first pick, whatever its style', () => {
  const slips = orderOf({ horse: { trouble: ['saddle-rolls'] }, saddle: { rigging: rigging('3/4') } });
  const advice = sizeOrder(slips, shop);
  const { style, strands } = advice.first!.candidate;
  expect(style).not.toBe('straight');
  expect(checkCinch({ length: 30 }, 'wants', advice).judged?.candidate).toMatchObject({
    style,
    strands,
    length: 30,
  });
});

test('buckles that hang too low ask for the tape from ring to ring again, and for the length where the shop ties none so long', () => {
  // 30 - 12 - 1 = 17 in: every buckle is too low.
  const short = sizeOrder(orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 30 } }), shop);
  expect(new Set(short.refused.filter(({ strands }) => strands === 11).map(({ rule }) => rule))).toEqual(
    new Set(['buckle-height']),
  );
  expect(told(short)).toContain('Tape ring to ring again first');
  expect(wayOutText(short, 'in')).toBe('No ring position makes a cinch pass, either.');
  // 44 - 12 - 1 = 31 in.
  const pony = { ...shop, lengths: { min: 21, max: 24, step: 1 } };
  const long = sizeOrder(orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 44 } }), pony);
  expect(wayOutText(long, 'in')).toBe(
    'This horse and saddle need a cinch of about 31 in; we tie 21 in to 24 in.',
  );
});

test('no cinch has a length below nothing', () => {
  // 48 - 2 x 20 is 8 in between rings; two runs of 4 and the give take 9.
  const advice = sizeOrder(orderOf({ horse: { heartGirth: 48 }, saddle: { ringDrop: 20 } }), shop);
  expect(wayOutText(advice, 'in')).toBe(
    'Ring to ring leaves no room for a cinch and two latigos: tape it again.',
  );
});

test('asking about one cinch also tells that none passes', () => {
  const of = (elbowRoom: number | undefined, strands: number): string => {
    const result = checked(orderOf({ horse: { elbowRoom }, wants: { style: 'straight', strands } }));
    return checkScreen([result], { units: 'in' });
  };
  const none = 'No cinch we tie passes here';
  expect(of(1.5, 17)).toContain(none);
  expect(of(undefined, 31)).not.toContain(none);
  expect(of(undefined, 15)).not.toContain(none);
});

test('strands without a style are judged as a straight: a guess passes nothing', () => {
  // On 7/8 a low flare of 25 passes, no straight.
  const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8') } }), shop);
  const check = (asked: CinchAsked) => checkCinch(asked, 'current', advice);
  expect(check({ style: 'low-flare', strands: 25 }).passes).toBe(true);
  expect(check({ strands: 25 })).toMatchObject({
    passes: false,
    filled: [{ part: 'style', taken: 'straight' }, {}, {}],
  });
  // No strands given, none too wide.
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
          // A chance over several spots is right to a point.
          expect(likely('high-flare')).toBeGreaterThan(straight - 0.01);
          expect(likely('low-flare')).toBeGreaterThan(straight - 0.01);
        }
      }
    }
  },
);

test('our pick is told beside a cinch like it that has another length or buckle', () => {
  // Several buckles take 19 strands.
  const about = { saddle: { rigging: rigging('7/8') } };
  const { style, strands, length, buckle } = sizeOrder(orderOf(about), shop).first!.candidate;
  const picked = (more: { length?: number; buckle?: string }): boolean =>
    checkScreen([checked(orderOf({ ...about, wants: { style, strands, ...more } }))], {
      units: 'in',
    }).includes('Our pick (');
  expect(picked({})).toBe(false);
  expect(picked({ length, buckle: buckle.id })).toBe(false);
  expect(picked({ length: length - 0.4 })).toBe(false);
  expect(picked({ length: length - 1.5 })).toBe(true);
  expect(picked({ buckle: 'plain 3 1/2' })).toBe(true);
});
