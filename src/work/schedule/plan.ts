/** The schedule: each job's bench, first and last day, and the fewest late jobs that were found. */
import { byText } from '../../units/by-text.ts';
import { pick, upTo } from '../../units/pick.ts';
import { choose } from './choose.ts';
import { inTurn, minutesOf } from './placed.ts';
import type { Schedule, ScheduleTask } from './types.ts';
import { workOf } from './work.ts';

/**
 * Schedules jobs on benches so that few are late. A job is done on one bench without another in between, over night
 * where it has to; one that ends in the morning lets the next begin the same day. On one bench no schedule has fewer
 * late jobs, nor with up to ten jobs on three; else `bound` says how many fewer there could be at most.
 * Jobs that are late anyway, then those without a due day, come after all others.
 * @throws RangeError on work that is no whole number of minutes, ids used twice, no bench, or no working day
 */
export function planJobs(task: ScheduleTask): Schedule {
  const { shop, works } = workOf(task);
  const { onTime, late, bound } = choose(
    shop,
    works.filter(({ due }) => due < Infinity),
  );
  const lists = onTime.map((list) => [...list]);
  for (const work of [...late, ...works.filter(({ due }) => due === Infinity)]) {
    const done = shop.benches.map((bench, i) => bench.moment(minutesOf(pick(lists, i)) + work.minutes));
    pick(lists, done.indexOf(Math.min(...done))).push(work);
  }
  const jobs = upTo(lists.length).flatMap((i) => inTurn(shop, i, pick(lists, i)));
  jobs.sort((a, b) => byText(a.id, b.id));
  const value = jobs.filter(({ lateBy }) => lateBy > 0).length;
  return { jobs, late: { value, bound }, proven: value === bound };
}
