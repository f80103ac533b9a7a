/** A job placed on a bench, told in days of the calendar. */
import { pick } from '../units/pick.ts';
import type { Placed } from './run.ts';
import type { ScheduledJob } from './types.ts';
import { deadlineOn, type Shop } from './work.ts';

/** A placed job in days of the calendar. The bench is a place in `shop.benches`. */
export function scheduled(
  { calendar, benches }: Shop,
  { placed: { work, from, to }, bench: i }: { placed: Placed; bench: number },
): ScheduledJob {
  const bench = pick(benches, i);
  const { minutesADay } = bench;
  const first = Math.floor(from / minutesADay);
  const last = Math.ceil(to / minutesADay) - 1;
  const endDay = calendar.dayAt(bench.dayOf(last));
  const { due } = work.job;
  const onTime = to <= deadlineOn(bench, work);
  return {
    id: work.id,
    bench: bench.id,
    startDay: calendar.dayAt(bench.dayOf(first)),
    startMinute: from - first * minutesADay,
    endDay,
    endMinute: to - last * minutesADay,
    promise: onTime && due !== undefined ? due : endDay,
    lateBy: onTime || due === undefined ? 0 : calendar.between(due, endDay),
  };
}
