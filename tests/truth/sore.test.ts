/** A horse sore from its cinch: the next keeps off the sore, healing comes first [common practice, no source]. */
import { describe, expect, it, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import { judge, passes, type Judged } from '../../src/advice/judge.ts';
import { make } from '../../src/advice/make.ts';
import { welfareOf } from '../../src/advice/welfare.ts';
import { isGalled, rawSkinInNotes } from '../../src/horse/sore.ts';
import { sizeOrder } from '../../src/index.ts';
import type { CinchAsked, Order, Trouble } from '../../src/order/types.ts';
import { phraseText } from '../../src/units/text.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases, long } from '../support/cases.ts';
import { orderOf, rigging } from '../support/orders.ts';

const horses: readonly Partial<Order['horse']>[] = [
  {},
  { elbowRoom: 3.4 },
  { elbowRoom: 4.6 },
  ...(long ? ([{ barrel: 'round', heartGirth: 77 }, { heartGirth: 66 }] as const) : []),
];
const positions = ['full', '7/8', '3/4', 'center-fire'] as const;

/** On every rigging, sore from each cinch. */
const soreFrom = (trouble: Trouble, worn: readonly CinchAsked[]): { name: string; order: Order }[] =>
  positions.flatMap((position) =>
    horses.flatMap((horse) =>
      worn.map((current) => ({
        name: `${position} ${JSON.stringify(horse)} ${JSON.stringify(current)}`,
        order: orderOf({
          horse: { ...horse, trouble: [trouble] },
          saddle: { rigging: rigging(position) },
          current,
        }),
      })),
    ),
  );

const welfareText = (order: Order): string[] =>
  welfareOf(sizeOrder(order, defaultShop).facts).map((phrase) => phraseText(phrase, 'in'));

const isPoorAtElbow = (judged: Judged): boolean =>
  judged.judgementOf('elbow-clearance') === 'poor' || judged.judgementOf('flare-position') === 'poor';

/** No straight under 13 is tied on a grown horse: it is last. */
const isTooNarrow = ({ candidate: { style, strands } }: Judged): boolean =>
  style === 'straight' && strands < 13;

describe('a gall at the elbow, and the cinch that galls described', () => {
  const worn: readonly CinchAsked[] = [
    { style: 'straight', strands: 27, buckle: 'plain 4', length: 32 },
    { style: 'straight', strands: 21, buckle: 'plain 3', length: 32 },
    { style: 'straight', strands: 17, buckle: 'plain 3', length: 30 },
    { style: 'high-flare', strands: 27, buckle: 'wide 5', length: 32 },
    { style: 'low-flare', strands: 23, buckle: 'plain 4', length: 28 },
  ];

  it('the first is surer and no wider at the elbow than that cinch, if any that clears is', () => {
    let better = 0;
    for (const { name, order } of soreFrom('elbow-gall', worn)) {
      const advice = sizeOrder(order, defaultShop);
      const { judged } = checkCinch(order.current!, 'current', advice);
      if (judged === undefined || advice.first === undefined) continue;
      const now = judged.candidate;
      const betters = ({ candidate: { clearance, elbowWidth } }: Judged, by: number): boolean =>
        (clearance.likely >= now.clearance.likely + by && elbowWidth <= now.elbowWidth + 1e-9) ||
        (clearance.likely >= Math.min(0.95, now.clearance.likely) && elbowWidth <= now.elbowWidth - 0.4);
      expect(welfareText(order)[0], name).toMatch(/^GALLED AT THE ELBOW/);
      if (betters(advice.first, 0)) {
        better += 1;
        continue;
      }
      expect(advice.first.judgementOf('better-than-now'), name).toBe('poor');
      // Of those poor at the elbow the surest is first, whatever galls.
      const others = advice.specs.filter(
        (spec) => betters(spec, 0.051) && !isPoorAtElbow(spec) && !isTooNarrow(spec),
      );
      expect(
        others.map(({ candidate }) => `${candidate.style} ${candidate.strands}`),
        name,
      ).toEqual([]);
    }
    expect(better).toBeGreaterThan(cases(30, 50));
  });

  it('"tie nothing before it heals" comes first, even where nothing passes', () => {
    const order = orderOf({ horse: { elbowRoom: 1.5, trouble: ['girthy', 'elbow-gall'] } });
    expect(sizeOrder(order, defaultShop).first).toBeUndefined();
    const [first, second] = welfareText(order);
    expect(first).toMatch(/^GALLED AT THE ELBOW.*let it heal first.*do not ride on broken skin.*vet/i);
    expect(second).toMatch(/girthy.*vet/i);
  });
});

describe('a rub of the buckle, and the buckle described', () => {
  const worn: readonly CinchAsked[] = defaultShop.buckles.flatMap(({ id }) =>
    [29, 32].map((length) => ({ buckle: id, length })),
  );

  it('is not tied again under a wider frame, or the same at the same height, if another passes', () => {
    let helped = 0;
    for (const { name, order } of soreFrom('buckle-rub', worn)) {
      const { first, facts } = sizeOrder(order, defaultShop);
      const buckle = defaultShop.buckles.find(({ id }) => id === order.current!.buckle)!;
      // Half its length and give, less the frame.
      const low = (order.current!.length! + 1) / 2 - buckle.frameHeight;
      const rubs = ({ candidate }: Judged): boolean =>
        candidate.buckle.frameWidth > buckle.frameWidth ||
        (candidate.buckle.frameWidth === buckle.frameWidth && Math.abs(candidate.low - low) < 0.25);
      expect(welfareText(order)[0], name).toMatch(/^RUBBED BY THE BUCKLE/);
      if (first === undefined) continue;
      if (!rubs(first)) {
        helped += 1;
        continue;
      }
      const ways = make(facts).flatMap((tied) => tied.ways().map(({ candidate }) => judge(candidate, facts)));
      const others = ways.filter((way) => passes(way) && !isPoorAtElbow(way) && !rubs(way));
      expect(
        others.map(({ candidate: c }) => `${c.style} ${c.strands} ${c.buckle.id} ${c.length}`),
        name,
      ).toEqual([]);
    }
    expect(helped).toBeGreaterThan(cases(120, 200));
  });
});

describe('notes', () => {
  const said = (notes: string) => ({ ...orderOf(), notes });

  test.each([
    'raw behind the left elbow',
    'skin broken under the buckle',
    'bleeding',
    'Galled on both sides since the gather.',
    'open sore, girth groove',
    'wears a plain 3; rubbed bare at the ring, scabs since May',
    'no sores last year. Raw now',
  ])('"%s" is a sore', (notes) => {
    expect(rawSkinInNotes(said(notes))).toBeDefined();
    expect(isGalled(said(notes))).toBe(true);
    expect(welfareText(said(notes))[0]).toMatch(/^SORE, from the notes: "/);
  });

  test.each([
    'no sores',
    'never galled',
    'not raw, never bleeding',
    'rawhide trim, initials JG',
    'takes a gallon of water; call Gallatin first',
    // A color of horses.
    'a blood bay, pays cash',
    'no rubs or sores',
    'never had a gall',
    'isn’t galled',
  ])('"%s" is none', (notes) => {
    expect(rawSkinInNotes(said(notes))).toBeUndefined();
    expect(isGalled(said(notes))).toBe(false);
    expect(welfareText(said(notes))).toEqual([]);
  });

  test('of a buckle that rubs do not make a gall at the elbow of it', () => {
    const order = { ...orderOf({ horse: { trouble: ['buckle-rub'] } }), notes: 'raw under the buckle' };
    expect(isGalled(order)).toBe(false);
    expect(welfareText(order)).toEqual([expect.stringMatching(/^RUBBED BY THE BUCKLE/)]);
  });
});

test('a sound horse with room behind the elbow gets no warning', () => {
  for (const position of positions)
    for (const horse of [
      {},
      { elbowRoom: 3 },
      { elbowRoom: 4 },
      { heartGirth: 54 },
      { heartGirth: undefined, height: 66 },
    ])
      for (const use of ['trail', 'roping'] as const)
        expect(welfareText(orderOf({ horse, saddle: { rigging: rigging(position) }, use }))).toEqual([]);
});
