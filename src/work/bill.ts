/** Materials, time and prices of one order, before adding up. */
import type { Candidate } from '../cinch/candidate.ts';
import type { Order, Shop } from '../order/types.ts';
import type { Labor, ShopOption } from '../order/trade-types.ts';
import {
  amountOf,
  dividedBy,
  plus,
  rateOf,
  rounded,
  times,
  toDouble,
  wholeRate,
  type Rate,
} from '../units/money.ts';
import { nearestWord } from '../units/nearest.ts';
import { cordBill } from './cord-bill.ts';
import { flatOf } from '../cinch/flat.ts';
import { joined, piecesBill, type Line, type Missing, type PartBill, type Unit } from './line.ts';

export interface Bill {
  readonly lines: readonly Line[];
  readonly missing: readonly Missing[];
  /** What we assumed. */
  readonly taken: readonly string[];
  /** Whole order; undefined without labor. */
  readonly minutes: Rate | undefined;
}

/** For all cinches of the order. */
export function billOf(candidate: Candidate, order: Order, shop: Shop): Bill {
  const parts = [
    cordBill(candidate, order, shop),
    hardwareBill(candidate, order),
    laborBill(candidate, order, shop),
    ...optionsOf(order, shop).map(({ name, option }) => optionBill(name, option, { order, shop })),
  ];
  return {
    ...joined(parts),
    minutes: minutesOf(candidate, order, shop.labor),
  };
}

function hardwareBill({ buckle }: Candidate, { quantity }: Order): PartBill {
  return piecesBill({ part: 'materials', what: `${buckle.id} buckles` }, 2 * quantity, {
    price: buckle.price,
    missing: { what: `a price for the ${buckle.id} buckle`, where: 'buckles, as price' },
  });
}

/** Of an hour, in minutes. */
const HUNDREDTH: Rate = { over: 3n, under: 5n };

/**
 * Set-up once, then strands and bars of each cinch, times style and layers. To the hundredth of an hour, so
 * that bills multiply out.
 */
export function minutesOf(
  candidate: Candidate,
  { quantity }: Order,
  labor: Labor | undefined,
): Rate | undefined {
  if (labor === undefined) return undefined;
  const { style, strands, layers } = candidate;
  const bar: Rate = { over: BigInt(Math.round(4 * flatOf(candidate).barInches)), under: 4n };
  const each = plus(
    times(wholeRate(strands), rateOf(labor.minutesAStrand)),
    times(bar, rateOf(labor.minutesAnInchOfBar)),
  );
  const plain = plus(rateOf(labor.setUpMinutes), times(each, wholeRate(quantity)));
  const byLayers = layers === 2 ? labor.byLayers.double : labor.byLayers.single;
  const exact = times(plain, rateOf(labor.byStyle[style]), rateOf(byLayers));
  return times(HUNDREDTH, wholeRate(rounded(dividedBy(exact, HUNDREDTH))));
}

function laborBill(candidate: Candidate, order: Order, { labor }: Shop): PartBill {
  const minutes = minutesOf(candidate, order, labor);
  const line = { part: 'labor', what: 'Tying' } as const;
  if (minutes === undefined || labor === undefined)
    return {
      lines: [{ ...line, amount: undefined }],
      missing: [{ what: 'how long tying takes, and the hourly rate', where: 'labor' }],
    };
  const hours = dividedBy(minutes, wholeRate(60));
  const count = toDouble(hours);
  if (labor.rate === undefined)
    return {
      lines: [{ ...line, count, amount: undefined }],
      missing: [{ what: 'the hourly rate', where: 'labor, as rate' }],
    };
  const unit: Unit = { per: 'hour', amount: labor.rate };
  return { lines: [{ ...line, count, unit, amount: amountOf(labor.rate, hours) }] };
}

/** Options of the order, with the shop's entries. */
export const optionsOf = (
  { options = [] }: Order,
  shop: Shop,
): { name: string; option: ShopOption | undefined }[] =>
  options.map((name) => ({
    name,
    option: shop.options.find((option) => option.name.toLowerCase() === name.toLowerCase()),
  }));

function optionBill(
  name: string,
  option: ShopOption | undefined,
  { order, shop }: { order: Order; shop: Shop },
): PartBill {
  if (option === undefined) {
    const near = nearestWord(
      name,
      shop.options.map((each) => each.name),
    );
    const hint = near === undefined ? '' : ` (did you mean ${near}?)`;
    const what = `the option ${name}, which is not in the shop file${hint}`;
    return {
      lines: [{ part: 'options', what: name, amount: undefined }],
      missing: [{ what, where: 'options' }],
    };
  }
  const { quantity } = order;
  const own = piecesBill({ part: 'options', what: option.name }, quantity, {
    price: option.price,
    missing: { what: `a price for the option ${option.name}`, where: 'options, as price' },
  });
  const { dees } = option;
  if (dees === undefined) return own;
  const price = shop.dees.find(({ id }) => id === dees.id)?.price;
  const missing = { what: `a price for the dee ${dees.id}`, where: 'dees, as price' };
  const what = { part: 'materials', what: `${dees.id}, for ${option.name}` } as const;
  return joined([piecesBill(what, dees.count * quantity, { price, missing }), own]);
}
