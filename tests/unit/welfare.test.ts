/** Cautions for a thin horse, a close groove and styles not chosen. */
import { describe, expect, it, test } from 'vitest';
import type { Advice } from '../../src/advice/advice.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { wayOutText } from '../../src/words/about-way-out.ts';
import { phraseText } from '../../src/units/text.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { randomOrders } from '../support/random-cases.ts';
import { run } from '../support/run-cli.ts';

const advised = (horse: Partial<Order['horse']>, saddle: Partial<Order['saddle']> = {}): Advice =>
  sizeOrder(orderOf({ horse, saddle }), defaultShop);
const welfareOf = ({ welfare }: Advice): string =>
  welfare.map((phrase) => phraseText(phrase, 'in')).join(' ');

// Henneke et al. 1983: 1 is poor, 2 very thin, 3 thin.
test.each([
  [1, true],
  [2, true],
  [3, false],
])('condition %i: a vet first, before anyone rides: %s', (condition, told) => {
  expect(/VERY THIN.*vet before anyone rides/.test(welfareOf(advised({ condition })))).toBe(told);
});

test.each(['ask', 'quote'])('the message of %s has it, too', async (command) => {
  const told = async (condition: number): Promise<string> => {
    const said = `15.2 hh, girth 70 in, 7/8, condition ${condition}`;
    return (await run([command, '--say', said, '--format', 'text'])).stdout.replaceAll('\n', ' ');
  };
  expect(await told(2)).toMatch(/Very thin: ask a vet before anyone rides\./);
  expect(await told(3)).not.toMatch(/thin/);
});

describe('a groove close behind the elbow', () => {
  // Under 3 in on the average horse: a choice. What helps, and whose call it is: common practice, no source.
  const close: readonly (readonly [string, Partial<Order['horse']>])[] = [
    ['2.9 in of room', { elbowRoom: 2.9 }],
    ['so little that nothing passes', { elbowRoom: 1.8 }],
    ['3.5 in on a horse of 90 in, which are 2.8 in of the average one', { elbowRoom: 3.5, heartGirth: 90 }],
    ['a saddle that creeps forward', { trouble: ['creeps-forward'] }],
    ['one that does, with room', { trouble: ['creeps-forward'], elbowRoom: 5 }],
  ];

  it.each(close)('%s: what helps is said, and whose call it is', (_, horse) => {
    for (const position of ['full', '7/8', '3/4'] as const) {
      const text = welfareOf(advised(horse, { rigging: rigging(position) }));
      for (const remedy of [
        /saddle fitter/,
        /move the rigging over the groove/,
        /low flare/,
        /crupper or breeching/,
      ])
        expect(text).toMatch(remedy);
      expect(text).toMatch(/ring farther back would drag the saddle onto the shoulder/);
    }
  });

  it('is named where there is less room, and where there is room it is the saddle that creeps', () => {
    const found = (horse: Partial<Order['horse']>) => welfareOf(advised(horse)).split(/[:.]/)[0];
    expect(found({ elbowRoom: 2.9 })).toBe('CLOSE GROOVE');
    expect(found({ elbowRoom: 3.5, heartGirth: 90 })).toBe('CLOSE GROOVE');
    for (const horse of [{}, { elbowRoom: 3 }, { elbowRoom: 2.9, heartGirth: 60 }])
      expect(found({ ...horse, trouble: ['creeps-forward'] })).toBe('THE SADDLE CREEPS FORWARD');
  });

  it.each(close)('%s: nowhere a ring further back is the way out', (_, horse) => {
    for (const setBack of [-2, 0, 1.5]) {
      const advice = advised(horse, { rigging: { kind: 'measured', setBack } });
      expect(advice.wayOut).toBeUndefined();
      const texts = [welfareOf(advice), wayOutText(advice, 'in') ?? ''];
      for (const sentence of texts.join(' ').split(/(?<=\.) /))
        if (/ring .*farther back/.test(sentence)) expect(sentence).toMatch(/would drag|does not help/);
    }
  });

  it.each([
    ['3 in of room', { elbowRoom: 3 }],
    ['3.75 in on a horse of 90 in', { elbowRoom: 3.75, heartGirth: 90 }],
    ['2.5 in on a pony of 54 in', { elbowRoom: 2.5, heartGirth: 54 }],
    ['room nobody measured', {}],
    ['a saddle that slips back', { trouble: ['slips-back'] }],
  ] as const)('is none with %s', (_, horse) => {
    expect(welfareOf(advised(horse))).toBe('');
  });
});

describe('a sore', () => {
  const sore = (trouble: Order['horse']['trouble'], notes?: string): Advice =>
    sizeOrder(orderOf({ horse: { trouble }, notes }), defaultShop);

  it.each([
    [['elbow-gall'], 'GALLED AT THE ELBOW'],
    [['buckle-rub'], 'RUBBED BY THE BUCKLE'],
    [['elbow-gall', 'buckle-rub'], 'GALLED AT THE ELBOW, RUBBED BY THE BUCKLE'],
  ] as const)(
    '%j comes first, once, and heals before any riding, whatever the notes add',
    (trouble, words) => {
      for (const advice of [sore(trouble), sore(trouble, 'raw behind the elbow')]) {
        expect(welfareOf(advice)).toMatch(new RegExp(`^${words}\\. Let it heal first\\. Do not ride`));
        expect(welfareOf(advice)).not.toContain('from the notes');
        expect(advice.mustHeal).toBe(true);
      }
    },
  );

  it('in the notes alone is told in their words', () => {
    const advice = sore([], 'raw behind the elbow');
    expect(welfareOf(advice)).toMatch(/^SORE, from the notes: "raw"\. Let it heal first/);
    expect(advice.mustHeal).toBe(true);
    expect(sore(['girthy']).mustHeal).toBe(false);
  });
});

describe('straight or roper', () => {
  const advices = [...randomOrders(5, 60), orderOf(), orderOf({ horse: { elbowRoom: 1.5 } })].map((order) =>
    sizeOrder(order, defaultShop),
  );

  it('has one entry for each style that is not first, with why', () => {
    let none = 0;
    for (const { first, otherStyles } of advices) {
      const others = styleIds.filter((style) => style !== first?.candidate.style);
      expect(otherStyles.map(({ style }) => style)).toEqual(others);
      expect(others).toHaveLength(first === undefined ? 3 : 2);
      for (const { why } of otherStyles) expect(phraseText(why, 'in')).toMatch(/\w/);
      if (first === undefined) none += 1;
    }
    expect(none).toBeGreaterThan(3);
  });

  it('tells the best of that style and why the first beats it, or why none passes', () => {
    const ruledOut = new Set<string>();
    for (const { first, otherStyles, specs, refused } of advices) {
      for (const { style, spec, why } of otherStyles) {
        const best = specs.find(({ candidate }) => candidate.style === style);
        expect(spec).toBe(best);
        if (best !== undefined) continue;
        const reasons = refused
          .filter((entry) => entry.style === style)
          .map(({ reason }) => phraseText(reason, 'in'));
        const told = phraseText(why, 'in');
        expect(reasons.length === 0 ? ['no room below the buckle'] : reasons).toContain(told);
        if (first !== undefined) ruledOut.add(style);
      }
    }
    expect(ruledOut.size).toBeGreaterThan(0);
  });

  test('no saddle that slips, and nobody who ropes: a roper only adds weaving', () => {
    const { otherStyles } = advised({}, { rigging: rigging('3/4') });
    for (const { why } of otherStyles) expect(phraseText(why, 'in')).toBe('nothing here slips');
  });

  test('on a full rig a high flare is told to crowd the armpit', () => {
    const [, high] = advised({ trouble: ['slips-back'] }).otherStyles;
    expect([high?.style, high && phraseText(high.why, 'in')]).toEqual([
      'high-flare',
      'a flare that starts high crowds the armpit on a full rig',
    ]);
  });
});
