/** What a price is made of, line by line to the cent, by hand; what stays open of it; and the cinch it is of. */
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import type { Judged } from '../../src/advice/judge.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { phraseText } from '../../src/units/text.ts';
import { say } from '../../src/units/phrase.ts';
import { wholeRate } from '../../src/units/money.ts';
import type { Bill } from '../../src/work/bill.ts';
import { priceOf } from '../../src/work/price.ts';
import { promiseByHours } from '../../src/work/promise.ts';
import { same, takenOf } from '../../src/work/taken.ts';
import { tradeOffs } from '../../src/work/trade-offs.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { quoteFor } from '../support/papers.ts';

const order = orderOf({
  saddle: { rigging: rigging('3/4'), ringToRing: 44 },
  colors: { body: ['natural'], accent: ['rust'] },
});
const without = (change: Partial<Shop>): Shop => ({ ...defaultShop, ...change });
const percent = (over: number) => ({ over, under: 1 });

/** Cord for 100.00 and 50.05 of labor, an option for 10.00. */
const bill: Bill = {
  lines: [
    { part: 'options', what: 'initials', amount: 1000 },
    { part: 'labor', what: 'Tying', amount: 5005 },
    { part: 'materials', what: 'cord', amount: 10_000 },
  ],
  missing: [],
  taken: [],
  minutes: undefined,
};
/** A shop that asks for nothing beside. */
const bare = without({
  consumables: undefined,
  returns: undefined,
  rush: undefined,
  taxes: [],
  deposit: undefined,
});
const priced = (shop: Shop, change: Partial<Order> = {}, ready?: string) => {
  const price = priceOf(bill, { ...order, ...change }, { shop, day: '2026-11-20', ready });
  return { ...price, rows: [...price.lines, ...price.taxes].map(({ what, amount }) => [what, amount]) };
};

describe('a price', () => {
  const plain = [
    ['cord', 10_000],
    ['Tying', 5005],
    ['initials', 1000],
  ];
  test('is what the bill says, materials first, where the shop asks for nothing beside', () => {
    const { rows, ...price } = priced(bare, { due: '2026-11-21' });
    expect(rows).toEqual(plain);
    expect(price).toMatchObject({ subtotal: 16_005, total: 16_005, missing: [], notes: [] });
    expect([price.deposit, price.depositPercent, price.balance]).toEqual([undefined, undefined, undefined]);
  });

  // 4 % and 5 % of what stands above: 400, then 520 of 10 400; 20 % of 16 925 is 3385; 10 % of 10 920 and of it all.
  test('has percents of what stands above, each rounded once, and a deposit with its balance', () => {
    const shop = without({
      consumables: [{ name: 'wax', percent: percent(4) }],
      returns: percent(5),
      rush: { percent: percent(20), withinDays: 14 },
      taxes: [
        { name: 'sales', percent: percent(10), on: ['materials'] },
        { name: 'county', percent: { over: 1, under: 2 }, on: ['materials', 'labor', 'options', 'rush'] },
      ],
      deposit: { over: 25, under: 2 },
    });
    const { rows, ...price } = priced(shop, { due: '2026-12-04' });
    expect(rows).toEqual([
      ['cord', 10_000],
      ['wax', 400],
      ['Materials markup', 520],
      ['Tying', 5005],
      ['initials', 1000],
      ['Rush, due within 14 days', 3385],
      ['sales, on materials', 1092],
      ['county', 102],
    ]);
    expect(price).toMatchObject({ subtotal: 20_310, total: 21_504, deposit: 2688, balance: 18_816 });
    expect(price.depositPercent).toBe(12.5);
  });

  const rushed = { ...bare, rush: { percent: percent(20), withinDays: 14 } };
  test.each([
    ['a day before it is late', '2026-12-04', undefined, true, []],
    ['a day later there is no rush', '2026-12-05', undefined, false, []],
    ['due today is not past', '2026-11-20', undefined, true, []],
    ['ready on the very day is in time', '2026-11-27', '2026-11-27', true, []],
    [
      'ready a day after is not',
      '2026-11-27',
      '2026-11-28',
      false,
      ["No rush charge: we can't make that day."],
    ],
    [
      'due yesterday is past',
      '2026-11-19',
      undefined,
      false,
      ['It was due Nov 19, 2026; that day is past.', "No rush charge: we can't make that day."],
    ],
    ['no day, no rush', undefined, '2026-11-28', false, []],
  ] as const)('for a rush: %s', (...[, due, ready, charged, notes]) => {
    const price = priced(rushed, { due }, ready);
    expect(price.lines.some(({ part }) => part === 'rush')).toBe(charged);
    expect(price.notes).toEqual(notes);
  });

  test('of what lacks one stays open: its lines stand without it, and nothing else is told', () => {
    const open = (shop: Shop, change: Partial<Order> = {}) => quoteFor({ ...order, ...change }, shop).price;
    const unpaid = open(without({ labor: undefined }));
    expect(unpaid).toMatchObject({ taxes: [], balance: undefined, depositPercent: 50 });
    expect(unpaid.lines.find(({ part }) => part === 'labor')).toEqual({
      part: 'labor',
      what: 'Tying',
      amount: undefined,
    });
    const hours = open(without({ labor: { ...defaultShop.labor!, rate: undefined } }));
    const { count } = quoteFor(order).price.lines.find(({ part }) => part === 'labor')!;
    expect(hours.lines.find(({ part }) => part === 'labor')).toMatchObject({ count, amount: undefined });
    expect(count).toBeGreaterThan(1);
    expect(open(without({ labor: undefined, deposit: undefined })).depositPercent).toBeUndefined();
    const bareOf = <T extends object>(list: readonly T[]) =>
      list.map((each) => ({ ...each, price: undefined }));
    const plain = open(without({ buckles: bareOf(defaultShop.buckles), cords: bareOf(defaultShop.cords) }));
    // Cord of two plies and buckles: counted as ever.
    const counts = ({ lines }: typeof plain) =>
      lines.filter(({ part }) => part === 'materials').map((line) => line.count);
    expect(counts(plain)).toEqual(counts(quoteFor(order).price).slice(0, 3));
    expect(plain.lines.slice(0, 3).map(({ amount }) => amount)).toEqual([undefined, undefined, undefined]);
    const nobody = open(without({ cords: bareOf(defaultShop.cords) }), { colors: undefined });
    expect(nobody.missing.map(({ what }) => what)).toEqual([
      'a price for 8-ply cord',
      'a price for 2-ply cord',
    ]);
  });

  test('of a color of another ply is not taken for it, nor hinted at', () => {
    const asked = quoteFor({ ...order, colors: { body: ['turquois'], accent: ['chestnuts'] } }).price;
    expect(asked.missing.map(({ what }) => what)).toEqual([
      '8-ply turquois cord, which is not in the shop file',
      '2-ply chestnuts cord, which is not in the shop file',
    ]);
  });

  test('of options: each unknown one is a line, a hint only where a name is near, and dees are their own', () => {
    const asked = (options: readonly string[], change: Partial<Shop> = {}) =>
      quoteFor({ ...order, options: [...options] }, without(change)).price;
    const unknown = asked(['zzz']);
    expect(unknown.lines.filter(({ part }) => part === 'options')).toEqual([
      { part: 'options', what: 'zzz', amount: undefined },
    ]);
    expect(unknown.missing).toEqual([
      { what: 'the option zzz, which is not in the shop file', where: 'options' },
    ]);
    // Two dees of 3.20, and one of 2.60.
    const dees = asked(['CENTER dees', 'tie-down dee']).lines.filter(({ what }) => what.startsWith('dee '));
    expect(dees.map(({ part, count, amount }) => [part, count, amount])).toEqual([
      ['materials', 2, 640],
      ['materials', 1, 260],
    ]);
    const bareOf = (list: Shop['options']) => list.map((each) => ({ ...each, price: undefined }));
    expect(asked(['initials'], { options: bareOf(defaultShop.options) }).missing).toEqual([
      { what: 'a price for the option initials', where: 'options, as price' },
    ]);
    for (const list of [[], defaultShop.dees.map((dee) => ({ ...dee, price: undefined }))])
      expect(asked(['tie-down dee'], { dees: list }).missing).toEqual([
        { what: 'a price for the dee dee 1', where: 'dees, as price' },
      ]);
  });
});

test('cord sold by the pound says how many feet that is, in parts too', () => {
  const feetAPound = { over: 375, under: 2 };
  const cords = defaultShop.cords.map((cord) => ({
    ...cord,
    price: { by: 'pound', amount: 4200, feetAPound } as const,
  }));
  const [line] = quoteFor(order, without({ cords })).price.lines;
  expect(line!.unit).toEqual({ per: 'pound', amount: 4200, feetAPound: 187.5 });
});

test('no costliest cord is named where none has a price', () => {
  const cords = defaultShop.cords.map((cord) => ({ ...cord, price: undefined }));
  expect(quoteFor({ ...order, colors: undefined }, without({ cords })).assumed).toEqual([]);
});

test('two years ahead is the last day a bench is asked for', () => {
  const bench = { name: 'b', hours: { over: 1, under: 1 }, days: ['wed'] as const };
  const ready = (hours: number) =>
    promiseByHours(wholeRate(60 * hours), '2026-11-30', without({ benches: [bench], holidays: [] }))
      ?.earliest;
  // The 105th Wednesday is 730 days on.
  expect([ready(1), ready(105), ready(106)]).toEqual(['2026-12-02', '2028-11-29', undefined]);
});

test('a bench of seven and a half hours a day is done with them on the first, and never with no day', () => {
  const ready = (minutes: number, days: readonly ['mon'] | readonly []) => {
    const bench = { name: 'b', hours: { over: 15, under: 2 }, days };
    return promiseByHours(wholeRate(minutes), '2026-11-20', without({ benches: [bench], holidays: [] }))
      ?.earliest;
  };
  expect([ready(450, ['mon']), ready(451, ['mon']), ready(450, [])]).toEqual([
    '2026-11-23',
    '2026-11-30',
    undefined,
  ]);
});

describe('what is taken', () => {
  const roomy = { horse: { elbowRoom: 4 }, saddle: { rigging: rigging('3/4') } } as const;
  const wish = (strands: number, change: object = {}) =>
    takenOf(sizeOrder(orderOf({ ...roomy, wants: { style: 'straight', strands, ...change } }), defaultShop))!;

  test('is no wish that passes but is poor at the elbow', () => {
    const { spec, takes } = wish(25);
    expect([takes, spec.candidate.strands === 25]).toEqual(['first', false]);
    expect(spec.judgementOf('elbow-clearance')).not.toBe('poor');
  });

  test('is the ranked one where the wish is tied as that is, and none of them where it is not', () => {
    const alike = wish(17);
    expect(alike.takes).toBe('wish');
    expect(alike.ranked?.candidate).toMatchObject({ style: 'straight', strands: 17 });
    const { length } = alike.spec.candidate;
    const other = wish(17, { length: length - 2 });
    expect([other.takes, other.spec.candidate.length, other.ranked]).toEqual(['wish', length - 2, undefined]);
  });

  test('is tied alike only with the same style, strands, length and buckle', () => {
    const tied = (...[style, strands, length, id]: [string, number, number, string]) =>
      ({ candidate: { style, strands, length, buckle: { id } } }) as unknown as Judged;
    const own = tied('straight', 19, 30, 'a');
    expect(same(own, tied('straight', 19, 30, 'a'))).toBe(true);
    for (const each of [
      tied('low-flare', 19, 30, 'a'),
      tied('straight', 21, 30, 'a'),
      tied('straight', 19, 32, 'a'),
      tied('straight', 19, 30, 'b'),
    ])
      expect(same(own, each)).toBe(false);
  });
});

describe('trade-offs', () => {
  const judged = (
    elbowWidth: number,
    chance: number,
    {
      rule = 'good',
      id = 'a',
      ...cinch
    }: { rule?: string; id?: string; style?: string; strands?: number } = {},
  ) =>
    ({
      candidate: {
        style: 'straight',
        strands: 19,
        ...cinch,
        elbowWidth,
        clearance: { chance },
        buckle: { id },
      },
      findings: [{ rule: 'stock', judgement: rule, reason: say`${rule} on the shelf` }],
      judgementOf: () => rule,
    }) as unknown as Judged;
  const own = judged(4.25, 0.8);
  const told = (other: Judged, quoted = own) =>
    tradeOffs(other, quoted).map((phrase) => phraseText(phrase, 'in'));

  test('are none where a rider sees none: less than an eighth of an inch, or less than a percent', () => {
    expect(told(judged(4.37, 0.804))).toEqual([]);
    expect(told(judged(4.375, 0.8))).toHaveLength(1);
    expect(told(judged(4.25, 0.81))).toEqual(['surer to stay clear of the elbow: 81% against 80%']);
    expect(told(judged(4.25, 0.79))).toEqual(['less sure to stay clear of the elbow: 79% against 80%']);
  });

  test('name strands, buckles and style that differ, and what is poor or unknown of this one alone', () => {
    const other = judged(4.25, 0.8, { style: 'low-flare', strands: 21, id: 'b', rule: 'poor' });
    expect(told(other).slice(1)).toEqual([
      '21 strands instead of 19',
      'b buckles instead of a',
      'but poor on the shelf',
    ]);
    expect(told(judged(4.25, 0.8, { rule: 'cannot-tell' }))).toEqual(['but cannot-tell on the shelf']);
    expect(told(judged(4.25, 0.8, { rule: 'acceptable' }))).toEqual([]);
    expect(told(judged(4.25, 0.8, { rule: 'poor' }), judged(4.25, 0.8, { rule: 'poor' }))).toEqual([]);
  });
});
