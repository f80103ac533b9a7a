/** When a cinch can be ready: by the hours of the benches alone, or as a schedule says. */
import type { Bench, Trade, Weekday } from '../order/trade-types.ts';
import { dayNumber, daysAfter, weekdayOf } from '../units/days.ts';
import { dividedBy, toDouble, wholeRate, type Rate } from '../units/money.ts';
import type { Share } from './shelf.ts';

export interface PromiseWindow {
  readonly earliest: string;
  /** Undefined when nobody has planned it. */
  readonly latest?: string | undefined;
  /** What it counts and what it does not, in plain words. */
  readonly basis: string;
}

/** Weekdays as ISO 8601 counts them. */
export const weekdayNumber: Readonly<Record<Weekday, number>> = {
  mon: 1,
  tue: 2,
  wed: 3,
  thu: 4,
  fri: 5,
  sat: 6,
  sun: 7,
};

/** A bench that works one hour a week would take this long for a dozen; past it nothing is promised. */
const mostDays = 730;

/** Earliest day by bench hours, from the day after; undefined when the shop states no bench or it would take years. */
export function promiseByHours(minutes: Rate, day: string, shop: Trade): PromiseWindow | undefined {
  const hours = toDouble(dividedBy(minutes, wholeRate(60)));
  const days = shop.benches
    .flatMap((bench) => readyOn(bench, hours, { day, holidays: shop.holidays }) ?? [])
    .sort();
  const [earliest] = days;
  if (earliest === undefined) return undefined;
  return { earliest, basis: 'not counting other work' };
}

/** What a window says of deliveries: "" when all is there. */
export function waitText(share: Share | undefined): string {
  if (share === undefined || share.lacks.length === 0) return '';
  return share.certain && share.from !== undefined
    ? `; what we must order for it is here by ${share.from}`
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
