/** Counts working days. */
import { dayNumber, dayOf, weekdayOf, type DayNumber } from '../../units/days.ts';
import { firstFrom, pick } from '../../units/pick.ts';
import type { ShopDays } from './types.ts';

/** Days without work after which a shop never works. */
const longestBreak = 3660;

export class Calendar {
  private readonly weekdays: ReadonlySet<number>;
  private readonly holidays: ReadonlySet<DayNumber>;
  /** Cache, from `first` on. */
  private readonly working: DayNumber[] = [];
  private readonly first: DayNumber;
  private next: DayNumber;

  /**
   * Number 0 is the first working day from `first` on.
   * @throws RangeError when a weekday is not 1 to 7, or none is worked
   */
  constructor({ weekdays, holidays }: ShopDays, first: string) {
    const wrong = weekdays.find((weekday) => !Number.isInteger(weekday) || weekday < 1 || weekday > 7);
    if (wrong !== undefined) throw new RangeError(`weekday ${wrong} is not one of 1 (Monday) to 7 (Sunday)`);
    if (weekdays.length === 0) throw new RangeError('a shop needs at least one working day a week');
    this.weekdays = new Set(weekdays);
    this.holidays = new Set(holidays.map(dayNumber));
    this.first = dayNumber(first);
    this.next = this.first;
  }

  works(day: string): boolean {
    return this.worksOn(dayNumber(day));
  }

  private worksOn(day: DayNumber): boolean {
    return this.weekdays.has(weekdayOf(day)) && !this.holidays.has(day);
  }

  private grow(enough: () => boolean): void {
    for (let idle = 0; !enough(); this.next++) {
      idle = this.worksOn(this.next) ? 0 : idle + 1;
      if (idle === 0) this.working.push(this.next);
      if (idle > longestBreak) throw new RangeError('the holidays leave no working day');
    }
  }

  dayAt(index: number): string {
    this.grow(() => this.working.length > index);
    return dayOf(this.working[index] ?? this.next);
  }

  /** Working days before a day; 0 before the first. */
  before(day: string): number {
    return this.countBelow(dayNumber(day));
  }

  /** Working days through a day. */
  through(day: string): number {
    return this.countBelow(dayNumber(day) + 1);
  }

  /** After one day through another; both may be before the first. */
  between(after: string, last: string): number {
    const first = this.first;
    const [from, to] = [dayNumber(after) + 1, dayNumber(last)];
    let count = 0;
    for (let day = from; day <= Math.min(to, first - 1); day++) if (this.worksOn(day)) count++;
    return to < first ? count : count + this.countBelow(to + 1) - this.countBelow(from);
  }

  private countBelow(day: DayNumber): number {
    this.grow(() => this.next >= day);
    return firstFrom(this.working.length, (i) => pick(this.working, i) >= day);
  }
}
