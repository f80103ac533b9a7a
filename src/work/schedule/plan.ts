/** The schedule: each job's bench, first and last day, and the fewest late jobs that were found. */
import { byText } from '../../units/by-text.ts';
import { pick, upTo } from '../../units/pick.ts';
import { choose } from './choose.ts';
import { inTurn } from './placed.ts';
import { Timeline } from './timeline.ts';
import type { Schedule, ScheduleTask } from './types.ts';
import { workOf } from './work.ts';

/**
 * Schedules jobs on benches so that few are late. A job is done on one bench without another in between, over night
 * where it has to; one that ends in the morning lets the next begin the same day. Up to ten jobs with a due day on up
 * to three benches no schedule has fewer late jobs, nor on one bench where none has to wait; else `bound` says how many
 * fewer there could be at most. Jobs that are late anyway, then those without a due day, come after all others or into gaps.
 * @throws RangeError on work that is no whole number of minutes, ids used twice, no bench, or no working day
 */
export function planJobs(task: ScheduleTask): Schedule {
  const { shop, works } = workOf(task);
  const { onTime, late, bound } = choose(
    shop,
    works.filter(({ due }) => due < Infinity),
  );
  const timelines = shop.benches.map((bench, i) => new Timeline(bench, pick(onTime, i)));
  for (const work of [...late, ...works.filter(({ due }) => due === Infinity)]) {
    const done = shop.benches.map((bench, i) => bench.moment(pick(timelines, i).endOf(work)));
    pick(timelines, done.indexOf(Math.min(...done))).add(work);
  }
  const jobs = upTo(timelines.length).flatMap((i) => inTurn(shop, i, pick(timelines, i)));
  jobs.sort((a, b) => byText(a.id, b.id));
  const value = jobs.filter(({ lateBy }) => lateBy > 0).length;
  return { jobs, late: { value, bound }, proven: value === bound };
}
