/** The first day we can promise one more job while keeping every promise. */
import { byText } from '../../units/by-text.ts';
import { pick, upTo } from '../../units/pick.ts';
import { allOnTime, inTurn } from './placed.ts';
import { Timeline } from './timeline.ts';
import type { Job, Schedule, ScheduledJob, ScheduleTask } from './types.ts';
import { byDue, workOf, workOn, type Work } from './work.ts';

export interface NewPromise {
  /** First day it can be done. */
  readonly day: string;
  readonly bench: string;
  /** True without a due day. */
  readonly meetsDue: boolean;
  /** All jobs of its bench. */
  readonly jobs: readonly ScheduledJob[];
}

/**
 * Jobs keep their bench and promised day, but may move before it. The earliest day on these benches, if no
 * job waits.
 * @throws RangeError when the schedule is not of this task, or minutes are not whole
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
    // Last in line, or any earlier day the others allow.
    let best = [...there.map(({ id }) => known(id)), own];
    let last = bench.lastDay(
      new Timeline(
        bench,
        there.map(({ id }) => known(id)),
      ).endOf(own),
    );
    for (let low = bench.lastDay(new Timeline(bench).endOf(own)); low < last;) {
      const middle = (low + last) >> 1;
      // The day tried acts as the due day.
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
  /** Working day on which the new job ends. */
  readonly last: number;
  readonly works: readonly Work[];
}
