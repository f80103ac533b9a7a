/** One bench's own time: how much of it has gone by when so many working days of the shop have, and back again. */
import { Calendar } from './calendar.ts';
import type { Bench, ScheduleTask } from './types.ts';

/** Days are numbered by the working days of the shop, from 0; a bench may stand idle on some of them. */
export class BenchTime {
  readonly id: string;
  readonly minutesADay: number;
  private readonly shop: Calendar;
  /** Undefined when the bench works whenever the shop does. */
  private readonly own: Calendar | undefined;
  /** Own days among the first so many of the shop, as far as they were asked for. */
  private readonly counted: number[] = [0];

  /** @throws RangeError when the bench works on a weekday on which the shop does not, or on none */
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

  /** Minutes it can do in the first so many working days of the shop; Infinity for no end of them. */
  doneIn(days: number): number {
    if (this.own === undefined || days === Infinity) return days * this.minutesADay;
    for (let next = this.counted.length; next <= days; next++) {
      const here = this.own.works(this.shop.dayAt(next - 1)) ? 1 : 0;
      this.counted.push((this.counted[next - 1] ?? 0) + here);
    }
    return (this.counted[days] ?? 0) * this.minutesADay;
  }

  /** Day of the shop on which its own day with a number falls. */
  dayOf(ownDay: number): number {
    return this.own === undefined ? ownDay : this.shop.before(this.own.dayAt(ownDay));
  }

  /** Day of the shop on which it has done so many minutes, at least one. */
  lastDay(minutes: number): number {
    return this.dayOf(Math.ceil(minutes / this.minutesADay) - 1);
  }

  /** The moment at which it has done so many minutes, in days of the shop: to say which bench is done first. */
  moment(minutes: number): number {
    if (this.own === undefined) return minutes / this.minutesADay;
    const ownDay = Math.ceil(minutes / this.minutesADay) - 1;
    return this.dayOf(ownDay) + minutes / this.minutesADay - ownDay;
  }
}
