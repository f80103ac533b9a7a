/** Converts shop working days to one bench's minutes, and back. */
import { Calendar } from './calendar.ts';
import type { Bench, ScheduleTask } from './types.ts';

/** Days are shop working days from 0. */
export class BenchTime {
  readonly id: string;
  readonly minutesADay: number;
  private readonly shop: Calendar;
  /** Undefined when it works every shop day. */
  private readonly own: Calendar | undefined;
  /** Cache: bench days in the first n shop days. */
  private readonly counted: number[] = [0];

  /** @throws RangeError for a weekday the shop does not work, or for none */
  constructor({ id, minutesADay, weekdays }: Bench, { days, start }: ScheduleTask, shop: Calendar) {
    this.id = id;
    this.minutesADay = minutesADay;
    this.shop = shop;
    const strange = weekdays?.find((weekday) => !days.weekdays.includes(weekday));
    if (strange !== undefined)
      throw new RangeError(`bench ${id} works on weekday ${strange}, the shop does not`);
    const always = weekdays === undefined || days.weekdays.every((weekday) => weekdays.includes(weekday));
    this.own = always ? undefined : new Calendar({ weekdays, holidays: days.holidays }, start);
  }

  /** Minutes of work in the first `days` shop days. */
  doneIn(days: number): number {
    if (this.own === undefined || days === Infinity) return days * this.minutesADay;
    for (let next = this.counted.length; next <= days; next++) {
      const here = this.own.works(this.shop.dayAt(next - 1)) ? 1 : 0;
      this.counted.push((this.counted[next - 1] ?? 0) + here);
    }
    return (this.counted[days] ?? 0) * this.minutesADay;
  }

  /** Shop day of the bench's own day number. */
  dayOf(ownDay: number): number {
    return this.own === undefined ? ownDay : this.shop.before(this.own.dayAt(ownDay));
  }

  /** Shop day on which that many minutes, at least one, are done. */
  lastDay(minutes: number): number {
    return this.dayOf(Math.ceil(minutes / this.minutesADay) - 1);
  }

  /** The same in fractions, to compare benches. */
  moment(minutes: number): number {
    const ownDay = Math.ceil(minutes / this.minutesADay) - 1;
    return this.dayOf(ownDay) + minutes / this.minutesADay - ownDay;
  }
}
