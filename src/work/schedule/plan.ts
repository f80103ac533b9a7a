/** The schedule: bench and days of each job, with few jobs late. */
import { byText } from '../../units/by-text.ts';
import { pick, upTo } from '../../units/pick.ts';
import { choose } from './choose.ts';
import { inTurn } from './placed.ts';
import { Timeline } from './timeline.ts';
import type { Schedule, ScheduleTask } from './types.ts';
import { workOf } from './work.ts';

/**
 * A job stays on one bench, unbroken except overnight. Optimal for up to twelve jobs with a due day; otherwise
 * `bound` limits how many fewer could be late. Late jobs, then those without a due day, go last or into gaps.
 * @throws RangeError on minutes that are not whole, ids used twice, no bench, or no working day
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
