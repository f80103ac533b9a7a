/** When a cinch can be ready, by bench hours or by a schedule. */
import type { Bench, Trade, Weekday } from '../order/trade-types.ts';
import { dayNumber, daysAfter, weekdayOf, dayText } from '../units/days.ts';
import { dividedBy, toDouble, wholeRate, type Rate } from '../units/money.ts';
import type { Share } from './shelf.ts';

export interface PromiseWindow {
  readonly earliest: string;
  /** Undefined without a schedule. */
  readonly latest?: string | undefined;
  /** What it counts, in words. */
  readonly basis: string;
}

/** ISO 8601 numbers. */
export const weekdayNumber: Readonly<Record<Weekday, number>> = {
  mon: 1,
  tue: 2,
  wed: 3,
  thu: 4,
  fri: 5,
  sat: 6,
  sun: 7,
};

/** Days in which one hour a week ties a dozen. */
const mostDays = 730;

/** From the day after; undefined without benches or past `mostDays`. */
export function promiseByHours(minutes: Rate, day: string, shop: Trade): PromiseWindow | undefined {
  const hours = toDouble(dividedBy(minutes, wholeRate(60)));
  const days = shop.benches
    .flatMap((bench) => readyOn(bench, hours, { day, holidays: shop.holidays }) ?? [])
    .sort();
  const [earliest] = days;
  if (earliest === undefined) return undefined;
  return { earliest, basis: 'not counting other work' };
}

/** "" when nothing is lacking. */
export function waitText({ lacks, certain, from }: Share): string {
  if (lacks.length === 0) return '';
  return certain && from !== undefined
    ? `; what we must order for it is here by ${dayText(from)}`
    : '; not counting the wait for what we must order';
}

interface Start {
  readonly day: string;
  readonly holidays: readonly string[];
}

function readyOn({ hours, days }: Bench, needed: number, { day, holidays }: Start): string | undefined {
  let left = needed;
  for (let after = 1; after <= mostDays; after++) {
    const here = daysAfter(day, after);
    if (!days.some((name) => weekdayNumber[name] === weekdayOf(dayNumber(here))) || holidays.includes(here))
      continue;
    left -= hours.over / hours.under;
    if (left <= 1e-9) return here;
  }
  return undefined;
}
