/** Days counted and named, without the machine's clock or calendar. */
import type { Weekday } from '../order/trade-types.ts';

/** Days since 1970-01-01 of an ISO 8601 day of the Gregorian calendar: years from March, so that a leap day is last. */
export function dayNumber(day: string): number {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number);
  const y = month <= 2 ? year - 1 : year;
  const m = (month + 9) % 12;
  const leaps = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  // (153 m + 2) / 5 counts the days of the months from March.
  return 365 * y + leaps + Math.floor((153 * m + 2) / 5) + date - 719_469;
}

/** The day so many days after 1970-01-01, found by narrowing down the year and month. */
export function dayOf(count: number): string {
  let year = 1970 + Math.floor(count / 365.2425);
  while (dayNumber(text(year + 1, 1, 1)) <= count) year++;
  while (dayNumber(text(year, 1, 1)) > count) year--;
  let month = 12;
  while (dayNumber(text(year, month, 1)) > count) month--;
  return text(year, month, count - dayNumber(text(year, month, 1)) + 1);
}

/** A day so many days later. */
export const daysAfter = (day: string, days: number): string => dayOf(dayNumber(day) + days);

const names: readonly Weekday[] = ['thu', 'fri', 'sat', 'sun', 'mon', 'tue', 'wed'];

/** Day of the week; 1970-01-01 was a Thursday. */
export const weekdayOf = (day: string): Weekday => names[((dayNumber(day) % 7) + 7) % 7] as Weekday;

const text = (year: number, month: number, date: number): string =>
  `${String(year).padStart(4, '0')}-${two(month)}-${two(date)}`;
const two = (count: number): string => String(count).padStart(2, '0');
