/** Quotes: gaps, what we filled in, rush, dates, alternatives. */
import { describe, expect, test } from 'vitest';
import type { Judged } from '../../src/advice/judge.ts';
import type { Shop } from '../../src/order/types.ts';
import { promiseByHours } from '../../src/work/promise.ts';
import { tradeOffs } from '../../src/work/trade-offs.ts';
import { quoteOf } from '../../src/work/quote.ts';
import { takenSpec } from '../../src/work/taken.ts';
import { sizeOrder } from '../../src/index.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { phraseText } from '../../src/units/text.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { dayNumber, dayOf, daysAfter, weekdayOf } from '../../src/units/days.ts';
import { wholeRate } from '../../src/units/money.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { randomOrders } from '../support/random-cases.ts';
import { quoteFor } from '../support/papers.ts';

const order = orderOf({
  saddle: { rigging: rigging('3/4'), ringToRing: 44 },
  colors: { body: ['natural'], accent: ['rust'] },
});
const without = (change: Partial<Shop>): Shop => ({ ...defaultShop, ...change });
const said = (quote: ReturnType<typeof quoteFor>): string =>
  sheetsMarkdown([quoteSheet(quote, { units: 'in', itemized: true })]);

describe('days', () => {
  // Date.UTC (ECMA-262), which the program may not use.
  test('are counted and named as Date.UTC does', () => {
    for (let count = -26_000; count < 84_000; count += 13) {
      const day = new Date(count * 86_400_000).toISOString().slice(0, 10);
      expect([dayNumber(day), dayOf(count)]).toEqual([count, day]);
      // Sunday is 0 there, 7 in ISO 8601.
      expect(weekdayOf(count) % 7).toBe(new Date(`${day}T00:00:00Z`).getUTCDay());
    }
    expect(daysAfter('2028-02-28', 1)).toBe('2028-02-29');
    expect(daysAfter('2026-12-31', 1)).toBe('2027-01-01');
  });
});

describe('what the shop file does not say', () => {
  test.each([
    ['currency', without({ currency: undefined }), 'prices and their currency', 'currency'],
    ['labor', without({ labor: undefined }), 'how long tying takes', 'labor'],
    [
      'rate',
      without({ labor: { ...defaultShop.labor!, rate: undefined } }),
      'the hourly rate',
      'labor, as rate',
    ],
    [
      'buckle',
      without({ buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, price: undefined })) }),
      'a price for the',
      'buckles, as price',
    ],
    [
      'cord',
      without({ cords: defaultShop.cords.map((cord) => ({ ...cord, price: undefined })) }),
      'a price for 8-ply natural cord',
      'price-a-foot',
    ],
  ])('%s: named with its place, and nothing is added up', (...[, shop, what, where]) => {
    const { price } = quoteFor(order, shop);
    expect(price.missing[0]!.what).toContain(what);
    expect(price.missing[0]!.where).toContain(where);
    expect([price.total, price.subtotal, price.deposit]).toEqual([undefined, undefined, undefined]);
    expect(said(quoteFor(order, shop))).toMatch(/cannot be added up yet/);
  });
  test('a color it does not have, and an option it does not have, each with the nearest', () => {
    const asked = { ...order, colors: { body: ['naturel'], accent: ['rust'] }, options: ['centre dees'] };
    expect(quoteFor(asked).price.missing.map(({ what }) => what)).toEqual([
      '8-ply naturel cord, which is not in the shop file (did you mean natural?)',
      'the option centre dees, which is not in the shop file (did you mean center dees?)',
    ]);
  });
  test('no tax said is not the same as no tax', () => {
    expect(quoteFor(order, without({ taxes: undefined })).price.notes[0]).toBe('No tax included.');
    expect(quoteFor(order, without({ taxes: [] })).price.notes).toEqual([]);
  });
  test('no bench, no promise; no days, no last day', () => {
    const quote = quoteFor(order, without({ benches: [], quoteDays: undefined }));
    expect([quote.window, quote.validUntil]).toEqual([undefined, undefined]);
    expect(said(quote)).toContain('\nWe cannot promise a day yet.\n');
  });
});

test('colors nobody said are priced as the dearest, and the paper says so', () => {
  const quote = quoteFor({ ...order, colors: undefined });
  expect(quote.assumed.join(' ')).toMatch(
    /No color chosen for the body cord: .*costliest, charcoal\. No color chosen for the accent cord: /,
  );
  expect(quote.price.total!).toBeGreaterThan(quoteFor(order).price.total!);
});

describe('rush', () => {
  test.each([
    ['2026-12-04', 1],
    ['2026-12-05', 0],
    [undefined, 0],
  ])('due %s, written 2026-11-20, rush within 14 days: %i line', (due, lines) => {
    const rush = quoteFor({ ...order, due }).price.lines.filter(({ part }) => part === 'rush');
    expect(rush).toHaveLength(lines);
  });
  test('is counted from the day the order was taken, where that is said', () => {
    const rush = (taken: string | undefined): boolean =>
      quoteFor({ ...order, due: '2026-12-01', taken }).price.lines.some(({ part }) => part === 'rush');
    expect([undefined, '2026-11-17', '2026-11-16'].map(rush)).toEqual([true, true, false]);
  });
});

describe('an invoice', () => {
  const invoiced = (change: object, shop = defaultShop, paid?: number) => {
    const advice = sizeOrder({ ...order, ...change }, shop);
    return quoteOf(takenSpec(advice.specs[0]!), advice, {
      day: '2026-12-12',
      invoice: { number: '7', paid },
    });
  };
  const asks = (change: object, shop = defaultShop) =>
    invoiced(change, shop).price.missing.some(({ where }) => where === 'taken');
  test('asks for the day the order was taken where a rush charge depends on it', () => {
    expect(asks({ due: '2026-12-20' })).toBe(true);
    expect([asks({}), asks({ due: '2026-12-20', taken: '2026-11-20' })]).toEqual([false, false]);
    expect(asks({ due: '2026-12-20' }, without({ rush: undefined }))).toBe(false);
  });
  test('without a sum says neither what was paid nor what is due', () => {
    const open = invoiced({}, without({ labor: undefined }), 500).invoice;
    expect(open).toEqual({ number: '7', paid: undefined, due: undefined, isPaidSaid: true });
    const { price, invoice } = invoiced({}, without({ deposit: undefined }));
    expect(invoice).toEqual({ number: '7', paid: 0, due: price.total, isPaidSaid: false });
  });
});

test('options bring their dees, and every count is for the whole order', () => {
  const { price } = quoteFor({ ...order, quantity: 3, options: ['center dees'] });
  const line = (what: string) => price.lines.find((each) => each.what.startsWith(what))!;
  expect([line('dee 1 1/2').count, line('dee 1 1/2').amount]).toEqual([6, 1920]);
  expect([line('center dees').count, line('center dees').amount]).toEqual([3, 1800]);
  expect(price.lines.find(({ what }) => what.endsWith('buckles'))!.count).toBe(6);
});

describe('the window', () => {
  const bench = { name: 'b', hours: { over: 4, under: 1 }, days: ['mon', 'tue'] as const };
  const ready = (minutes: number, change: Partial<Shop> = {}): string | undefined =>
    promiseByHours(wholeRate(minutes), '2026-11-20', without({ benches: [bench], holidays: [], ...change }))
      ?.earliest;
  test('counts working days from the next day on', () => {
    expect([ready(240), ready(241), ready(480), ready(481)]).toEqual([
      '2026-11-23',
      '2026-11-24',
      '2026-11-24',
      '2026-11-30',
    ]);
  });
  test('leaves out holidays, and takes the quicker bench', () => {
    expect(ready(240, { holidays: ['2026-11-23'] })).toBe('2026-11-24');
    const saturday = { ...bench, name: 'c', days: ['sat'] as const };
    expect(ready(240, { benches: [bench, saturday] })).toBe('2026-11-21');
  });
  test('a planned window stands in its place', () => {
    const advice = sizeOrder(order, defaultShop);
    const promise = { earliest: '2026-12-07', latest: '2026-12-11', basis: 'as planned' };
    const quote = quoteOf(takenSpec(advice.specs[0]!), advice, { day: '2026-11-20', promise });
    expect(said(quote)).toContain('Ready between Dec 7, 2026 and Dec 11, 2026, as planned.');
  });
});

describe('alternatives', () => {
  const quote = quoteFor(order);
  test('are at most two, never the one quoted, and say what they cost more or less', () => {
    expect(quote.alternatives).toHaveLength(2);
    for (const { spec, dearerBy } of quote.alternatives) {
      expect(spec).not.toBe(quote.taken.spec);
      expect(quoteFor(order, defaultShop, spec.rank).price.total).toBe(quote.price.total! + dearerBy!);
    }
  });
  test('trade-offs are turned round when the two change places', () => {
    const { spec: other } = quote.alternatives.find(
      ({ spec }) => spec.candidate.style === quote.taken.spec.candidate.style,
    )!;
    const there = tradeOffs(other, quote.taken.spec).map((phrase) => phraseText(phrase, 'in'));
    const back = tradeOffs(quote.taken.spec, other).map((phrase) => phraseText(phrase, 'in'));
    expect(there.join()).toMatch(/narrower.*surer/);
    expect(back.join()).toMatch(/wider.*less sure/);
  });
});

test('what the customer asked for is answered, whether it passes or not', () => {
  const wants = (strands: number) => said(quoteFor({ ...order, wants: { style: 'straight', strands } }));
  expect(wants(17)).toMatch(/You asked for 17 strands\. That passes too; the chance at the elbow is /);
  expect(wants(31)).toMatch(/You asked for 31 strands\. Not on the horse: (?:too close|reaches)/);
  expect(said(quoteFor(order))).not.toMatch(/You asked/);
});

describe('what else is offered', () => {
  const orders = randomOrders(31, 120);
  const offered = () =>
    orders.flatMap((order) => {
      const advice = sizeOrder(order, defaultShop);
      const [first, second] = advice.specs;
      if (first === undefined || second === undefined) return [];
      return [{ first, second, mustHeal: advice.mustHeal, others: quoteFor(order).alternatives }];
    });
  const chanceOf = ({ candidate }: Judged): number => candidate.clearance.chance;
  const isNotSure = (spec: Judged): boolean => spec.judgementOf('elbow-clearance') === 'poor';

  test('is never a cinch that is not sure', () => {
    const offers = offered();
    expect(offers.filter(({ second }) => isNotSure(second)).length).toBeGreaterThan(1);
    for (const { others } of offers) for (const { spec } of others) expect(isNotSure(spec)).toBe(false);
  });
  test('to a sore horse is never less sure, to a sound one it may be', () => {
    const offers = offered();
    const lessSure = ({ others, first }: ReturnType<typeof offered>[number]): boolean =>
      others.some(({ spec }) => chanceOf(spec) < chanceOf(first));
    const sore = offers.filter(({ mustHeal }) => mustHeal);
    expect(sore.filter(({ first, second }) => chanceOf(second) < chanceOf(first)).length).toBeGreaterThan(3);
    expect(sore.filter(lessSure)).toEqual([]);
    expect(sore.some(({ others }) => others.length > 0)).toBe(true);
    expect(offers.filter(lessSure).length).toBeGreaterThan(3);
  });
  test('is two at most, the second of another style where one is near', () => {
    const offers = offered();
    for (const { others } of offers) expect(others.length).toBeLessThanOrEqual(2);
    expect(
      offers.some(({ others: [a, b] }) => a && b && a.spec.candidate.style !== b.spec.candidate.style),
    ).toBe(true);
  });
});

describe('ready', () => {
  const order = orderOf({
    saddle: { rigging: rigging('3/4'), ringToRing: 44 },
    colors: { body: ['natural'], accent: ['rust'] },
  });
  const none = { feetOnHand: 0, putUps: [{ lot: 'A', feet: 300, count: 0, opened: [] }] };
  const from = (change: Partial<Shop['cords'][number]>): string | undefined =>
    quoteFor(order, {
      ...defaultShop,
      cords: defaultShop.cords.map((cord) => (cord.color === 'natural' ? { ...cord, ...change } : cord)),
    }).window?.earliest;

  // Asked on a Friday; the back bench works on Saturdays.
  test('from the shelf by bench hours, else from the day the cord comes, and not where none can be had', () => {
    expect(from({})).toBe('2026-11-21');
    expect(from({ ...none, orderable: true, leadDays: 20 })).toBe('2026-12-10');
    expect(from({ ...none, orderable: true, leadDays: 0 })).toBe('2026-11-21');
    // Enough in feet, but in no one dye lot.
    const lots = ['A', 'B'].map((lot) => ({ lot, feet: 300, count: 0, opened: [40] }));
    expect(from({ orderable: false, feetOnHand: 80, putUps: lots })).toBeUndefined();
  });
});
