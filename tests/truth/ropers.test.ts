/** When a roper is tied, and which: saddles that slip, work that pulls [common practice, no source]. */
import { describe, expect, it } from 'vitest';
import type { Advice, RankedSpec } from '../../src/advice/advice.ts';
import { stepsOutside } from '../../src/horse/practice.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order, Style } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { cases as count, long } from '../support/cases.ts';
import { orderOf, rigging } from '../support/orders.ts';

type Position = Parameters<typeof rigging>[0];
type More = Partial<Omit<Order, 'horse' | 'saddle'>> & { readonly horse?: Partial<Order['horse']> };
const positions: readonly Position[] = ['full', '7/8', '3/4', '5/8', 'center-fire'];

interface Case {
  readonly position: Position;
  readonly name: string;
  readonly advice: Advice;
}

/** At the gate only horses of 72 in have both. */
const stylesOf = (heartGirth: number) =>
  long || heartGirth === 72 ? (['flat-plate', 'dropped'] as const) : (['flat-plate'] as const);

/** Every rigging and many sizes, with and without taped room. */
const casesOf = ({ horse, ...more }: More): Case[] =>
  positions.flatMap((position) =>
    (long ? [64, 68.5, 72, 77, 82] : [64, 72, 82]).flatMap((heartGirth) =>
      [undefined, 3.3, 4.1, 4.9].flatMap((elbowRoom) =>
        stylesOf(heartGirth).map((style): Case => {
          const saddle = { rigging: rigging(position), style };
          const order = orderOf({ ...more, horse: { heartGirth, elbowRoom, ...horse }, saddle });
          const name = `${position} ${String(heartGirth)} ${String(elbowRoom)} ${style}`;
          return { position, name, advice: sizeOrder(order, defaultShop) };
        }),
      ),
    ),
  );

const isPoor = (spec: RankedSpec): boolean =>
  spec.judgementOf('elbow-clearance') === 'poor' || spec.judgementOf('flare-position') === 'poor';
const isGood = (spec: RankedSpec): boolean => spec.judgementOf('elbow-clearance') === 'good' && !isPoor(spec);
/** Strands tied on this horse, by hand in rules-practice.test.ts. */
const isTiedHere = (
  { facts: { practice } }: Advice,
  { candidate: { style, strands } }: RankedSpec,
): boolean => stepsOutside(strands, style === 'straight' ? practice.straight : practice.roper) === 0;
const has = (advice: Advice, style: Style, fits: (spec: RankedSpec) => boolean): boolean =>
  advice.specs.some((spec) => spec.candidate.style === style && isTiedHere(advice, spec) && fits(spec));
/** So close a groove asks for a low flare. */
const isClose = ({ facts: { room, k } }: Advice): boolean => room.value < 3 * k;
const firstStyle = ({ first }: Advice): Style | undefined => first?.candidate.style;

// Two small reasons ask for as much hold as a saddle that rolls.
const slipping: readonly More[] = [
  { horse: { trouble: ['saddle-rolls'] } },
  { horse: { barrel: 'round', withers: 'low' } },
  { horse: { barrel: 'slab-sided', withers: 'low' } },
  { horse: { condition: 8, withers: 'low' } },
  { use: 'roping', horse: { trouble: ['slips-back'] } },
];

describe.each(slipping)('a saddle that slips, %j', (more) => {
  const cases = casesOf(more);

  it('is held by a high flare where that is good at the elbow, by a low flare elsewhere', () => {
    const seen = { 'high-flare': 0, 'low-flare': 0 };
    for (const { name, advice } of cases) {
      const style =
        has(advice, 'high-flare', isGood) && !isClose(advice)
          ? 'high-flare'
          : has(advice, 'low-flare', (spec) => !isPoor(spec))
            ? 'low-flare'
            : undefined;
      if (style === undefined) continue;
      expect([name, firstStyle(advice)]).toEqual([name, style]);
      seen[style] += 1;
    }
    expect(Math.min(...Object.values(seen)), 'both must come about').toBeGreaterThan(count(7, 20));
  });

  it('never has a high flare on a full rig', () => {
    for (const { name, position, advice } of cases)
      if (position === 'full') expect([name, firstStyle(advice)]).not.toEqual([name, 'high-flare']);
  });
});

describe('a saddle that creeps forward', () => {
  it('has a low flare, never a high one, however much room: the groove draws it to the elbow', () => {
    let low = 0;
    for (const { name, advice } of casesOf({ horse: { trouble: ['creeps-forward'] } })) {
      if (!has(advice, 'low-flare', (spec) => !isPoor(spec))) continue;
      expect([name, firstStyle(advice)]).toEqual([name, 'low-flare']);
      low += 1;
    }
    expect(low).toBeGreaterThan(count(40, 100));
  });
});

describe('a saddle that does not slip', () => {
  it.each([{}, { horse: { withers: 'low' } }, { use: 'ranch' }, { use: 'packing' }] as const)(
    'has no roper first while a straight of 13 or more is not poor: %j',
    (more) => {
      let straights = 0;
      for (const { name, advice } of casesOf(more)) {
        const plain = advice.specs.filter(({ candidate: c }) => c.style === 'straight' && c.strands >= 13);
        if (plain.every(isPoor)) continue;
        expect([name, firstStyle(advice)]).toEqual([name, 'straight']);
        straights += 1;
      }
      expect(straights).toBeGreaterThan(count(60, 150));
    },
  );
});

describe('roping', () => {
  const cases = casesOf({ use: 'roping' });
  const isEnough = (spec: RankedSpec): boolean => spec.candidate.strands >= 19;
  const isSmall = ({ facts: { girth } }: Advice): boolean => girth.value < 68;

  it('takes at least 19 strands on a grown horse, in a roper if need be, where they are not poor', () => {
    let ropers = 0;
    for (const { name, advice } of cases) {
      const can = (spec: RankedSpec): boolean => isEnough(spec) && !isPoor(spec);
      if (!styleIds.some((style) => has(advice, style, can))) continue;
      expect(advice.first?.candidate.strands, name).toBeGreaterThanOrEqual(isSmall(advice) ? 17 : 19);
      if (firstStyle(advice) !== 'straight') ropers += 1;
    }
    expect(ropers).toBeGreaterThan(count(7, 20));
  });

  it('has a good straight of 19 or more before any roper', () => {
    let straights = 0;
    for (const { name, advice } of cases) {
      const of = (spec: RankedSpec): boolean =>
        spec.candidate.style === 'straight' && isEnough(spec) && isGood(spec) && isTiedHere(advice, spec);
      const places = advice.specs.flatMap((spec, i) => (of(spec) ? [i] : []));
      if (places.length === 0) continue;
      const roper = advice.specs.findIndex(({ candidate }) => candidate.style !== 'straight');
      expect(roper < 0 || Math.max(...places) < roper, name).toBe(true);
      straights += 1;
    }
    expect(straights).toBeGreaterThan(count(7, 20));
  });
});

describe('ranch work', () => {
  it('takes at least 17 strands if such a straight is tied and not poor', () => {
    let fewer = 0;
    const plain = casesOf({});
    casesOf({ use: 'ranch' }).forEach(({ name, advice }, i) => {
      const can = (spec: RankedSpec): boolean => spec.candidate.strands >= 17 && !isPoor(spec);
      if (!has(advice, 'straight', can)) return;
      expect(advice.first?.candidate.strands, name).toBeGreaterThanOrEqual(17);
      // The same horse on trails may have fewer.
      if ((plain[i]?.advice.first?.candidate.strands ?? 0) < 17) fewer += 1;
    });
    expect(fewer, 'the work must decide somewhere').toBeGreaterThan(0);
  });
});
