/** Days and working days against luxon, an independent calendar library. */
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { Calendar } from '../../src/work/schedule/calendar.ts';
import { dayNumber, dayOf, weekdayOf } from '../../src/units/days.ts';

const utc = (iso: string): DateTime => DateTime.fromISO(iso, { zone: 'utc' });
const isoOf = (day: DateTime): string => day.toISODate()!;
const epoch = utc('1970-01-01');
const anyDay = fc.integer({ min: dayNumber('1900-01-01'), max: dayNumber('2199-12-31') });

describe('days', () => {
  it('every day of 1896 to 1904 and of 1999 to 2004 has its number and weekday', () => {
    for (const [from, to] of [
      ['1896-01-01', '1904-12-31'],
      ['1999-01-01', '2004-12-31'],
    ] as const) {
      for (let day = utc(from); day <= utc(to); day = day.plus({ days: 1 })) {
        const number = dayNumber(isoOf(day));
        expect(number).toBe(day.diff(epoch, 'days').days);
        expect(dayOf(number)).toBe(isoOf(day));
        expect(weekdayOf(number)).toBe(day.weekday);
      }
    }
  });

  it('random days of three centuries agree, there and back', () => {
    fc.assert(
      fc.property(anyDay, (number) => {
        const day = epoch.plus({ days: number });
        expect(dayOf(number)).toBe(isoOf(day));
        expect(dayNumber(isoOf(day))).toBe(number);
        expect(weekdayOf(number)).toBe(day.weekday);
      }),
      { seed: 3, numRuns: 2000 },
    );
  });

  // The Gregorian rule: 1900 and 2100 are no leap years, 2000 is one.
  it.each([
    ['1900-02-28', '1900-03-01'],
    ['2000-02-28', '2000-02-29'],
    ['2100-02-28', '2100-03-01'],
    ['2024-02-29', '2024-03-01'],
    ['2025-12-31', '2026-01-01'],
  ])('the day after %s is %s', (day, after) => {
    expect(dayOf(dayNumber(day) + 1)).toBe(after);
  });
});

describe('working days', () => {
  const shops = fc.record({
    weekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 7 }),
    first: anyDay,
    // Holidays fall on weekends too.
    off: fc.array(fc.integer({ min: 0, max: 60 }), { maxLength: 15 }),
    length: fc.integer({ min: 0, max: 60 }),
  });

  it('are those that luxon walks through day by day', () => {
    fc.assert(
      fc.property(shops, ({ weekdays, first, off, length }) => {
        const start = epoch.plus({ days: first });
        const holidays = off.map((days) => isoOf(start.plus({ days })));
        const calendar = new Calendar({ weekdays, holidays }, isoOf(start));
        const works = (day: DateTime): boolean =>
          weekdays.includes(day.weekday) && !holidays.includes(isoOf(day));
        const walked = Array.from({ length: length + 1 }, (_, days) => start.plus({ days }));
        const working = walked.filter(works).map(isoOf);
        const last = walked.at(-1)!;
        expect(calendar.through(isoOf(last))).toBe(working.length);
        expect(calendar.before(isoOf(last))).toBe(working.length - (works(last) ? 1 : 0));
        expect(working.map((_, i) => calendar.dayAt(i))).toEqual(working);
        expect(calendar.works(isoOf(last))).toBe(works(last));
        const before = start.minus({ days: 10 });
        const since = Array.from({ length: length + 10 }, (_, i) => before.plus({ days: i + 1 })).filter(
          works,
        );
        expect(calendar.between(isoOf(before), isoOf(last))).toBe(since.length);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it.each([
    [{ weekdays: [], holidays: [] }, /at least one working day/],
    [{ weekdays: [0], holidays: [] }, /weekday 0 is not one of 1 \(Monday\) to 7/],
  ])('%o is refused', (days, message) => {
    expect(() => new Calendar(days, '2026-01-01')).toThrow(message);
  });
});
