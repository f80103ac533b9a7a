/** Calendar days in ISO 8601, such as 2026-11-20. */

export type DayRead = { ok: true; day: string } | { ok: false; why: string; suggestion?: string };

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const firstYear = 1900;
const lastYear = 2199;

/** Errors: another format, no such day. */
export function parseDay(text: string): DayRead {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (parts === null) return otherWriting(text);
  const [year = 0, month = 0, day = 0] = parts.slice(1).map(Number);
  if (year < firstYear || year > lastYear)
    return { ok: false, why: `the year must be ${String(firstYear)} to ${String(lastYear)}` };
  if (month < 1 || month > 12) return { ok: false, why: `there is no month ${String(month)}` };
  if (day < 1 || day > daysIn(year, month)) {
    return { ok: false, why: `that month has no day ${String(day)}` };
  }
  return { ok: true, day: text };
}

function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return month === 2 && leap ? 29 : (monthLengths[month - 1] ?? 0);
}

/** "12/18/2026" can only be December 18; "12/11/2026" could be either, so we suggest nothing. */
function otherWriting(text: string): DayRead {
  const why = 'write a day as year-month-day, such as 2026-12-18';
  const parts = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/.exec(text);
  if (parts === null) return { ok: false, why };
  const [first = 0, second = 0, year = 0] = parts.slice(1).map(Number);
  if (first <= 12 === second <= 12 && first !== second) return { ok: false, why };
  const [month, day] = first > 12 ? [second, first] : [first, second];
  const suggestion = [String(year), pad(month), pad(day)].join('-');
  return parseDay(suggestion).ok ? { ok: false, why, suggestion } : { ok: false, why };
}

const pad = (count: number): string => String(count).padStart(2, '0');

const monthNames = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** For customers: "Nov 20, 2026". */
export function dayText(day: string): string {
  const [year = '', month = '1', date = '1'] = day.split('-');
  return `${monthNames[Number(month) - 1] ?? month} ${String(Number(date))}, ${year}`;
}

/** Days since 1970-01-01. */
export type DayNumber = number;

/** Years start in March, so the leap day comes last; 400 years have 146 097 days. */
export function dayNumber(day: string): DayNumber {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number);
  const fromMarch = month > 2 ? year : year - 1;
  const cycle = Math.floor(fromMarch / 400);
  const ofCycle = fromMarch - cycle * 400;
  const monthFromMarch = (month + 9) % 12;
  const ofYear = Math.floor((153 * monthFromMarch + 2) / 5) + date - 1;
  const leaps = Math.floor(ofCycle / 4) - Math.floor(ofCycle / 100);
  return cycle * 146_097 + ofCycle * 365 + leaps + ofYear - 719_468;
}

/** The inverse of dayNumber. */
export function dayOf(number: DayNumber): string {
  const fromMarch = number + 719_468;
  const cycle = Math.floor(fromMarch / 146_097);
  const ofCycle = fromMarch - cycle * 146_097;
  // Without leap days, every year has 365 days.
  const leaps = Math.floor(ofCycle / 1460) - Math.floor(ofCycle / 36_524) + Math.floor(ofCycle / 146_096);
  const year = Math.floor((ofCycle - leaps) / 365);
  const ofYear = ofCycle - (365 * year + Math.floor(year / 4) - Math.floor(year / 100));
  const monthFromMarch = Math.floor((5 * ofYear + 2) / 153);
  const date = ofYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const calendarYear = year + cycle * 400 + (month <= 2 ? 1 : 0);
  return [String(calendarYear).padStart(4, '0'), pad(month), pad(date)].join('-');
}

/** 1 Monday to 7 Sunday (ISO 8601). */
export function weekdayOf(number: DayNumber): number {
  return ((((number + 3) % 7) + 7) % 7) + 1; // 1970-01-01 was a Thursday
}

/** A day so many days later. */
export const daysAfter = (day: string, days: number): string => dayOf(dayNumber(day) + days);
