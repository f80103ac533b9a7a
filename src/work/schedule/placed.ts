/** Jobs of one bench in order, with calendar days. */
import { pick } from '../../units/pick.ts';
import type { BenchTime } from './bench-time.ts';
import { Timeline } from './timeline.ts';
import type { ScheduledJob } from './types.ts';
import type { Shop, Work } from './work.ts';

/** `i` is the index in `shop.benches`. */
export function inTurn({ calendar, benches }: Shop, i: number, { spans }: Timeline): ScheduledJob[] {
  const bench = pick(benches, i);
  const { minutesADay } = bench;
  return spans.map(({ work: { id, due, job }, from, to }) => {
    const first = Math.floor(from / minutesADay);
    const last = Math.ceil(to / minutesADay) - 1;
    const endDay = calendar.dayAt(bench.dayOf(last));
    const onTime = to <= bench.doneIn(due);
    return {
      ...{ id, bench: bench.id, startDay: calendar.dayAt(bench.dayOf(first)) },
      ...{ startMinute: from - first * minutesADay, endDay, endMinute: to - last * minutesADay },
      promise: onTime && job.due !== undefined ? job.due : endDay,
      lateBy: onTime || job.due === undefined ? 0 : calendar.between(job.due, endDay),
    };
  });
}

/** Whether every job is on time, added in this order. */
export function allOnTime(bench: BenchTime, works: readonly Work[]): boolean {
  const timeline = new Timeline(bench);
  return works.every((work) => timeline.add(work) <= bench.doneIn(work.due));
}
