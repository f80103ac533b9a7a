/** Days of the calendar as ISO 8601 writes them, "2026-11-20"; the clock is read elsewhere. */

export type DayRead = { ok: true; day: string } | { ok: false; why: string; suggestion?: string };

const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
const firstYear = 1900;
const lastYear = 2199;

/** Text -> the same text when it is a day that exists (years 1900 to 2199). Errors: another way of writing, no such day. */
export function parseDay(text: string): DayRead {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (parts === null) return otherWriting(text);
  const [year = 0, month = 0, day = 0] = parts.slice(1).map(Number);
  if (year < firstYear || year > lastYear)
    return { ok: false, why: `the year ${String(year)} cannot be meant` };
  if (month < 1 || month > 12) return { ok: false, why: `there is no month ${String(month)}` };
  if (day < 1 || day > daysIn(year, month)) {
    return { ok: false, why: `that month has no day ${String(day)}` };
  }
  return { ok: true, day: text };
}

/** Days of a month (1 to 12) in the Gregorian calendar. */
function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return month === 2 && leap ? 29 : (monthLengths[month - 1] ?? 0);
}

/** "12/18/2026" can only be the eighteenth; "12/11/2026" could be either, so nothing is suggested. */
function otherWriting(text: string): DayRead {
  const why = 'a day is written year-month-day, as in 2026-12-18';
  const parts = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})$/.exec(text);
  if (parts === null) return { ok: false, why };
  const [first = 0, second = 0, year = 0] = parts.slice(1).map(Number);
  if (first <= 12 === second <= 12 && first !== second) return { ok: false, why };
  const [month, day] = first > 12 ? [second, first] : [first, second];
  const suggestion = [String(year), pad(month), pad(day)].join('-');
  return parseDay(suggestion).ok ? { ok: false, why, suggestion } : { ok: false, why };
}

const pad = (count: number): string => String(count).padStart(2, '0');
