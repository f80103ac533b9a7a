/** Prices, stock and benches of a shop file. */
import { describe, expect, test } from 'vitest';
import { problemLine, shopIn as shop, shopProblems } from '../support/door.ts';

const head = `shop: Test
strands: { min: 11, max: 31 }
lengths: { min: 20 in, max: 38 in, step: 1 in }
buckles:
  - { id: a, bar: 3 in, frame-width: 4 in, frame-height: 2 in, single: { min: 11, max: 17 }, on-hand: 3, orderable: true }
`;
const cord = `cord:
  - color: natural
    ply: 8
    put-ups: [{ lot: N1, feet: 300, count: 2, opened: [40, 40] }, { lot: N2, feet: 100.5, count: 1 }]
    orderable: true
`;
const bare = head + cord;

const told = (text: string): string[] => shopProblems(text).map(problemLine);

describe('what is taken', () => {
  test('feet on hand are the sum of put-ups and remnants; equal remnants both count', () => {
    expect(shop(bare).cords[0]!.feetOnHand).toBe(300 * 2 + 40 + 40 + 100.5);
  });
  test('what a shop leaves out of its trade is unknown, not zero', () => {
    const { currency, labor, taxes, rush, quoteDays, deposit, benches, options } = shop(bare);
    expect([currency, labor, taxes, rush, quoteDays, deposit]).toEqual(Array(6).fill(undefined));
    expect([benches, options]).toEqual([[], []]);
  });
  test('amounts become whole minor units of the currency, by its own exponent', () => {
    const priced = (code: string, price: string) =>
      shop(`${bare}currency: ${code}\noptions: [{ name: o, price: ${price} }]\n`).options[0]!.price;
    expect(priced('USD', '12.50')).toBe(1250);
    expect(priced('USD', '12.5')).toBe(1250);
    expect(priced('USD', '12')).toBe(1200);
    expect(priced('JPY', '1200')).toBe(1200);
    expect(priced('KWD', '1.255')).toBe(1255);
    // As doubles 4.35 * 100 is 434.99999999999994.
    expect(priced('EUR', '4.35')).toBe(435);
  });
  test('a tax on everything is on each part; full names of days hint at the short ones', () => {
    const { taxes } = shop(`${bare}taxes: [{ name: vat, percent: 19, on: everything }]\n`);
    expect(taxes![0]!.on).toEqual(['materials', 'labor', 'options', 'rush']);
  });
});

const benches = 'benches: [{ name: b, hours: 6, days: [mon] }]\n';

describe('how a fault is told', () => {
  test.each([
    [
      bare.replace(/put-ups: .*/, 'feet-on-hand: 680'),
      '9:5 cord[0].feet-on-hand | feet-on-hand | a key of cord',
      'write put-ups: [{ feet: 300, count: 2 }]',
    ],
    [
      bare.replace(/\n {4}orderable: true\n$/, '\n    orderable: true\n    price: 1\n'),
      '11:5 cord[0].price | price',
      'price-a-foot',
    ],
    [
      bare.replace('[40, 40]', '[40, 400]'),
      '9:60 cord[0].put-ups[0].opened[1] | 400 | at most the feet of the put-up (300)',
      '-',
    ],
    [
      bare.replace('lot: N2, feet: 100.5', 'lot: N1, feet: 300'),
      '9:74 cord[0].put-ups[1].lot | N1 | each lot once',
      '-',
    ],
    [bare.replace('count: 2', 'count: 2.5'), '9:44 cord[0].put-ups[0].count | 2.5 | how many unopened', '-'],
    [`${bare}options: [{ name: o, price: 5 }]\n`, '11:29 currency | - | a currency', '-'],
    [
      `${bare}currency: usd\n`,
      '11:11 currency | usd | currency of all prices, an ISO 4217 code',
      'did you mean "USD"?',
    ],
    [`${bare}currency: $\n`, '11:11 currency | $', 'did you mean "USD"?'],
    [
      `${bare}currency: USD\noptions: [{ name: o, price: 5.005 }]\n`,
      '12:29 options[0].price | 5.005 | an amount with at most 2 decimals: USD',
      '-',
    ],
    [
      `${bare}currency: JPY\nlabor: { rate: 1.5, set-up-minutes: 1, minutes-a-strand: 1, minutes-an-inch-of-bar: 1 }\n`,
      '12:16 labor.rate | 1.5 | an amount with no decimals: JPY',
      '-',
    ],
    [
      `${bare}currency: USD\noptions: [{ name: o, price: $5 }]\n`,
      '12:29 options[0].price | $5',
      'did you mean "5"?',
    ],
    [
      `${bare}currency: USD\noptions:\n  - name: o\n    price: 5,50\n`,
      '14:12 options[0].price | 5,50',
      'did you mean "5.50"?',
    ],
    [
      `${bare}currency: USD\noptions: [{ name: o, price: -5 }]\n`,
      '12:29 options[0].price | -5',
      'plain digits',
    ],
    [
      `${bare}    price-a-pound: 38\ncurrency: USD\n`,
      '11:5 cord[0].price-a-pound | - | feet-a-pound with it',
      '-',
    ],
    [
      `${bare}    price-a-pound: 38\n    feet-a-pound: 190\n    price-a-foot: 1\ncurrency: USD\n`,
      '11:5 cord[0].price-a-pound | - | one price: by the foot or by the pound',
      '-',
    ],
    [
      `${bare}currency: USD\n    `.replace('currency', '    price-a-foot: 0.085\ncurrency'),
      '11:19 cord[0].price-a-foot | 0.085',
      'by the pound',
    ],
    [`${bare}options: [{ name: o, dee: d, dees: 2 }]\n`, '11:27 options[0].dee | d | the id of a dee', '-'],
    [
      `${bare}dees: [{ id: dee 1, width: 1 in, on-hand: 1, orderable: true }]\noptions: [{ name: o, dee: dee1, dees: 2 }]\n`,
      '12:27 options[0].dee | dee1',
      'did you mean "dee 1"?',
    ],
    [`${bare}options: [{ name: o }, { name: o }]\n`, '11:32 options[1].name | o | each name once', '-'],
    [
      `${bare}taxes: [{ name: t, percent: 5 %, on: labor }]\n`,
      '11:29 taxes[0].percent | 5 %',
      'did you mean "5"?',
    ],
    [
      `${bare}taxes: [{ name: t, percent: 5, on: labour }]\n`,
      '11:36 taxes[0].on | labour',
      'did you mean "labor"?',
    ],
    [`${bare}taxes: [{ name: t, percent: 5, on: [] }]\n`, '11:36 taxes[0].on | an empty list', '-'],
    [bare + benches.replace('mon', 'Monday'), '11:39 benches[0].days[0] | Monday', 'did you mean "mon"?'],
    [bare + benches.replace('[mon]', '[]'), '11:38 benches[0].days | an empty list', '-'],
    [
      bare + benches.replace('hours: 6', 'hours: 25'),
      '11:29 benches[0].hours | 25 | hours of work per day',
      '-',
    ],
    [`${bare}holidays: [12/25/2026]\n`, '11:12 holidays[0] | 12/25/2026', 'did you mean "2026-12-25"?'],
    [`${bare}deposit: 110\n`, '11:10 deposit | 110 | deposit on the total in percent', '-'],
    [`${bare}labour: {}\n`, '11:1 labour | labour', 'did you mean "labor"?'],
    [`${bare}labor: { rate: 40 }\ncurrency: USD\n`, '11:1 labor.set-up-minutes | - | minutes to set up', '-'],
  ])('%#', (text, start, hint) => {
    const lines = told(text);
    const line = lines.find((each) => each.startsWith(start)) ?? lines[0] ?? 'nothing';
    expect(line.slice(0, start.length)).toBe(start);
    const said = line.slice(line.lastIndexOf(' | ') + 3);
    if (hint === '-') expect(said).toBe('-');
    else expect(said).toContain(hint);
  });
});
