/** The first day on which one more job can honestly be promised, with every promise already given kept. */
import { byText } from '../../units/by-text.ts';
import { pick, upTo } from '../../units/pick.ts';
import { allOnTime, inTurn } from './placed.ts';
import { Timeline } from './timeline.ts';
import type { Job, Schedule, ScheduledJob, ScheduleTask } from './types.ts';
import { byDue, workOf, workOn, type Work } from './work.ts';

export interface NewPromise {
  /** The first day by the end of which the job can be done. */
  readonly day: string;
  readonly bench: string;
  /** Whether that is by its due day; true without one. */
  readonly meetsDue: boolean;
  /** All jobs of that bench as they would stand then, the new one among them; the other benches stay as they are. */
  readonly jobs: readonly ScheduledJob[];
}

/**
 * The first honest promise for a new job. Jobs keep their benches and are done by the day promised in the schedule at
 * the latest, so no job that was on time becomes late and none that is late becomes later; within that they may be
 * moved. For benches as they are filled this is the first day there is, where none has to wait.
 * @param task the task the schedule was made from
 * @throws RangeError when schedule and task do not belong together, or the job has no whole number of minutes
 */
export function promiseFor(task: ScheduleTask, schedule: Schedule, job: Job): NewPromise {
  const { shop, works } = workOf({ ...task, jobs: [...task.jobs, job] });
  const byId = new Map(works.map((work) => [work.id, work]));
  const known = (id: string): Work => {
    const work = byId.get(id);
    if (work === undefined) throw new RangeError(`the task has no job ${id}`);
    return work;
  };
  const own = known(job.id);
  const offers = upTo(shop.benches.length).map((i): Offer => {
    const bench = pick(shop.benches, i);
    const there = schedule.jobs
      .filter((entry) => entry.bench === bench.id)
      .sort((a, b) => byText(a.startDay, b.startDay) || a.startMinute - b.startMinute);
    const promised = there.map(({ id, promise }): Work => {
      const { job: before } = known(id);
      return workOn(shop.calendar, task.start, { ...before, due: promise });
    });
    // Behind all others first; then any earlier day for which they can make room.
    let best = [...there.map(({ id }) => known(id)), own];
    let last = bench.lastDay(
      new Timeline(
        bench,
        there.map(({ id }) => known(id)),
      ).endOf(own),
    );
    for (let low = bench.lastDay(new Timeline(bench).endOf(own)); low < last;) {
      const middle = (low + last) >> 1;
      // The day tried takes the place of the due day, so that the bench works toward it.
      const list = [...promised, { ...own, due: middle + 1 }].sort(byDue);
      if (allOnTime(bench, list)) [best, last] = [list.map(({ id }) => known(id)), middle];
      else low = middle + 1;
    }
    return { bench: i, last, works: best };
  });
  const best = offers.reduce((a, b) => (b.last < a.last ? b : a));
  return {
    day: shop.calendar.dayAt(best.last),
    bench: pick(shop.benches, best.bench).id,
    meetsDue: job.due === undefined || best.last + 1 <= own.due,
    jobs: inTurn(shop, best.bench, new Timeline(pick(shop.benches, best.bench), best.works)),
  };
}

interface Offer {
  readonly bench: number;
  /** Number of the working day on which the new job ends. */
  readonly last: number;
  readonly works: readonly Work[];
}
