/** Jobs of a bench one after the other, told in days of the calendar. */
import { pick } from '../../units/pick.ts';
import type { BenchTime } from './bench-time.ts';
import type { ScheduledJob } from './types.ts';
import type { Shop, Work } from './work.ts';

/** Jobs of a bench (a place in `shop.benches`) in their turn, without a pause. */
export function inTurn({ calendar, benches }: Shop, i: number, works: readonly Work[]): ScheduledJob[] {
  const bench = pick(benches, i);
  const { minutesADay } = bench;
  let to = 0;
  return works.map(({ id, minutes, due, job }) => {
    const first = Math.floor(to / minutesADay);
    const startMinute = to - first * minutesADay;
    to += minutes;
    const last = Math.ceil(to / minutesADay) - 1;
    const endDay = calendar.dayAt(bench.dayOf(last));
    const onTime = to <= bench.doneIn(due);
    return {
      ...{ id, bench: bench.id, startDay: calendar.dayAt(bench.dayOf(first)), startMinute },
      ...{ endDay, endMinute: to - last * minutesADay },
      promise: onTime && job.due !== undefined ? job.due : endDay,
      lateBy: onTime || job.due === undefined ? 0 : calendar.between(job.due, endDay),
    };
  });
}

/** Whether a bench is on time with all jobs, one after the other by due day. */
export function allOnTime(bench: BenchTime, works: readonly Work[]): boolean {
  let end = 0;
  return works.every(({ minutes, due }) => (end += minutes) <= bench.doneIn(due));
}

/** All work of a list. */
export const minutesOf = (works: readonly Work[]): number =>
  works.reduce((sum, { minutes }) => sum + minutes, 0);
