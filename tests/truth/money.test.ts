/** Money against a published bench price, decimal.js and another table of currencies. */
import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { currencyCodes, currencyOf } from '../../src/units/currency.ts';
import {
  amountOf,
  amountText,
  dividedBy,
  minorOf,
  percentRate,
  plus,
  rateOf,
  readAmount,
  rounded,
  sumOf,
  times,
  wholeRate,
} from '../../src/units/money.ts';
import { parseNumber } from '../../src/units/number.ts';

const usd = currencyOf('USD')!;
const rate = (text: string) => {
  const read = parseNumber(text);
  if (!read.ok) throw new Error(text);
  return rateOf(read.exact);
};

describe('the bench price of a trade association', () => {
  // Materials 2.55 + consumables 0.61 + 0.51 = 3.67, + 0.19 return = 3.86, 0.33 h x 40 = 13.20, total 17.06:
  // worked example of a saddlemakers' trade association (seen). Amounts only; we hold no percents.
  const money = (text: string) => minorOf(text, usd)!;
  const goods = sumOf([money('2.55'), money('0.61'), money('0.51')]);
  const priced = sumOf([goods, money('0.19')]);
  const labor = amountOf(money('40'), rate('0.33'));
  test('its sums', () => {
    expect(amountText(goods, usd)).toBe('3.67');
    expect(amountText(priced, usd)).toBe('3.86');
    expect(amountText(labor, usd)).toBe('13.20');
    expect(amountText(sumOf([priced, labor]), usd)).toBe('17.06');
  });
  test('two of its amounts are round percents of the materials', () => {
    expect(amountOf(money('2.55'), percentRate(rate('24')))).toBe(money('0.61'));
    expect(amountOf(money('2.55'), percentRate(rate('20')))).toBe(money('0.51'));
  });
});

const percents = fc
  .tuple(fc.nat(99), fc.nat(999))
  .map(([whole, part]) => `${whole}.${String(part).padStart(3, '0')}`);

describe('rounding against decimal.js, half away from zero', () => {
  test('an amount times a percent', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), percents, (amount, percent) => {
        const expected = new Decimal(amount)
          .times(percent)
          .div(100)
          .toDecimalPlaces(0, Decimal.ROUND_HALF_UP);
        // ROUND_HALF_UP of decimal.js rounds half away from zero (its documentation).
        expect(amountOf(amount, percentRate(rate(percent)))).toBe(expected.toNumber() + 0);
      }),
    );
  });
  test.each([
    [5, 10, 1],
    [4, 10, 0],
    [15, 10, 2],
    [25, 10, 3],
    [-5, 10, -1],
    [-25, 10, -3],
    [-4, 10, 0],
  ])('%i / %i is %i', (over, under, expected) => {
    expect(rounded({ over: BigInt(over), under: BigInt(under) })).toBe(expected);
  });
  test('sums, products and quotients stay exact', () => {
    const third = dividedBy(wholeRate(1), wholeRate(3));
    expect(rounded(times(plus(third, third, third), wholeRate(7)))).toBe(7);
    expect(rounded(dividedBy(wholeRate(9), wholeRate(-2)))).toBe(-5);
    expect(() => dividedBy(wholeRate(1), wholeRate(0))).toThrow(RangeError);
    expect(() => sumOf([Number.MAX_SAFE_INTEGER, 1])).toThrow(RangeError);
  });
});

describe('written amounts', () => {
  test('to minor units and back, against decimal.js', () => {
    fc.assert(
      fc.property(fc.nat(9_999_999), fc.constantFrom('USD', 'JPY', 'KWD'), (minor, code) => {
        const currency = currencyOf(code)!;
        const text = new Decimal(minor).div(10 ** currency.exponent).toFixed(currency.exponent);
        expect(amountText(minor, currency)).toBe(text);
        expect(minorOf(text, currency)).toBe(minor);
      }),
    );
  });
  test.each([
    '',
    '-1',
    '+1',
    '1,000.00',
    '1e3',
    '$5',
    '5 USD',
    '.5',
    '5.',
    '12345678',
    '1.00000',
    '0x10',
    '١',
  ])('%s is none', (text) => {
    expect(readAmount(text).ok).toBe(false);
  });
});

describe('currencies', () => {
  // ICU, behind Node's Intl, drops decimals that ISO 4217 gives where no such coin is about (AFN, HUF, IDR
  // ...): a difference on purpose. It never shows more.
  const shown = (code: string) =>
    new Intl.NumberFormat('en', { style: 'currency', currency: code }).resolvedOptions()
      .maximumFractionDigits!;
  const known = new Set(Intl.supportedValuesOf('currency'));
  test('every code is one that ICU knows, and has at least the decimals it shows', () => {
    const wrong = currencyCodes.filter(
      (code) => !known.has(code) || shown(code) > currencyOf(code)!.exponent,
    );
    expect(wrong).toEqual([]);
  });
  test('where the two differ, ICU shows none', () => {
    const differ = currencyCodes.filter((code) => shown(code) !== currencyOf(code)!.exponent);
    expect(differ.every((code) => shown(code) === 0)).toBe(true);
    expect(differ.length).toBeLessThan(25);
  });
});
