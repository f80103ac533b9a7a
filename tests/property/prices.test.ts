/** Prices on random shops: nothing is rounded twice, no cent is lost. */
import { Decimal as Plain } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import type { Shop } from '../../src/order/types.ts';
import type { Taxed } from '../../src/order/trade-types.ts';
import { flatOf } from '../../src/cinch/flat.ts';
import { billOf } from '../../src/work/bill.ts';
import { priceOf } from '../../src/work/price.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';

/** Enough digits that dividing by 60 decides no rounding. */
const Decimal = Plain.clone({ precision: 60 });
type Decimal = Plain;

const exact = (most: number) =>
  fc
    .tuple(fc.nat(most * 1000), fc.constantFrom(1, 10, 100, 1000))
    .map(([over, under]) => ({ over: Math.min(over, most * under), under }));
const amount = fc.nat(99_999);
const parts: readonly Taxed[] = ['materials', 'labor', 'options', 'rush'];

const trade = fc.record({
  cord: amount,
  feetAPound: fc.integer({ min: 1, max: 400 }),
  buckle: amount,
  rate: amount,
  minutes: exact(60),
  factor: exact(3),
  consumables: fc.array(exact(50), { maxLength: 3 }),
  returns: exact(40),
  option: amount,
  deposit: exact(100),
  rush: exact(60),
  taxes: fc.array(fc.record({ percent: exact(30), on: fc.subarray([...parts], { minLength: 1 }) }), {
    maxLength: 3,
  }),
  quantity: fc.integer({ min: 1, max: 20 }),
});
type Trade = typeof trade extends fc.Arbitrary<infer T> ? T : never;

const named = (percents: readonly { over: number; under: number }[]) =>
  percents.map((percent, i) => ({ name: String(i), percent }));

function shopOf(t: Trade): Shop {
  return {
    ...defaultShop,
    buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, price: t.buckle })),
    cords: defaultShop.cords.map((cord) => ({
      ...cord,
      price: { by: 'pound', amount: t.cord, feetAPound: { over: t.feetAPound, under: 1 } },
    })),
    labor: {
      rate: t.rate,
      setUpMinutes: t.minutes,
      minutesAStrand: t.minutes,
      minutesAnInchOfBar: t.minutes,
      byStyle: { straight: t.factor, 'high-flare': t.factor, 'low-flare': t.factor },
      byLayers: { single: t.factor, double: t.factor },
    },
    consumables: named(t.consumables),
    returns: t.returns,
    options: [{ name: 'initials', price: t.option }],
    deposit: t.deposit,
    rush: { percent: t.rush, withinDays: 30 },
    taxes: t.taxes.map(({ percent, on }, i) => ({ name: String(i), percent, on })),
  };
}

const day = '2026-11-20';
const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('3/4'), ringToRing: 44 } }), defaultShop);
const candidates = advice.specs.slice(0, 12).map(({ candidate }) => candidate);
const cents = (value: Decimal): number => value.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber();
const decimal = ({ over, under }: { over: number; under: number }): Decimal => new Decimal(over).div(under);

describe('a price', () => {
  test('is the exact sum of its printed lines; deposit and rest are the total', () => {
    fc.assert(
      fc.property(trade, fc.nat(candidates.length - 1), (t, i) => {
        const shop = shopOf(t);
        const order = {
          ...advice.facts.order,
          quantity: t.quantity,
          due: '2026-12-01',
          options: ['initials'],
        };
        const price = priceOf(billOf(candidates[i]!, order, shop), order, { shop, day });
        const lines = price.lines.map((line) => BigInt(line.amount!));
        const taxes = price.taxes.map((line) => BigInt(line.amount!));
        const sum = (all: readonly bigint[]): bigint => all.reduce((a, b) => a + b, 0n);
        expect(BigInt(price.subtotal!)).toBe(sum(lines));
        expect(BigInt(price.total!)).toBe(sum([...lines, ...taxes]));
        expect(price.deposit! + price.balance!).toBe(price.total);
      }),
    );
  });

  test('every line is what decimal.js makes of it, rounded once, half away from zero', () => {
    fc.assert(
      fc.property(trade, fc.nat(candidates.length - 1), (t, i) => {
        const shop = shopOf(t);
        const order = {
          ...advice.facts.order,
          quantity: t.quantity,
          due: '2026-12-01',
          options: ['initials'],
        };
        const { lines, taxes, total, deposit } = priceOf(billOf(candidates[i]!, order, shop), order, {
          shop,
          day,
        });
        const of = (part: string) => lines.filter((line) => line.part === part);
        const cords = lines.filter(({ unit }) => unit?.per === 'pound');
        expect(cords.map((line) => line.amount)).toEqual(
          cords.map(({ count }) => cents(new Decimal(t.cord).times(count!).div(t.feetAPound))),
        );
        const { strands } = candidates[i]!;
        const inches = new Decimal(flatOf(candidates[i]!).barInches);
        const each = inches.plus(strands).times(t.quantity);
        const minutes = decimal(t.minutes).times(each.plus(1));
        const hours = minutes.times(decimal(t.factor).pow(2)).div(60);
        expect(of('labor').map((line) => line.amount)).toEqual([
          cents(hours.toDecimalPlaces(2, Decimal.ROUND_HALF_UP).times(t.rate)),
        ]);
        const all = [...of('materials'), ...of('labor'), ...of('options')];
        const base = all.reduce((sum, line) => sum + line.amount!, 0);
        expect(of('rush')[0]!.amount).toBe(cents(decimal(t.rush).times(base).div(100)));
        t.taxes.forEach(({ percent, on }, k) => {
          const taxed = lines.filter(({ part }) => on.includes(part as Taxed));
          const sum = taxed.reduce((total, line) => total + line.amount!, 0);
          expect(taxes[k]!.amount).toBe(cents(decimal(percent).times(sum).div(100)));
        });
        expect(deposit).toBe(cents(decimal(t.deposit).times(total!).div(100)));
      }),
    );
  });
});
