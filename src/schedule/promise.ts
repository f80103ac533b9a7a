/** The first day on which one more job can honestly be promised, with every promise already given kept. */
import { pick, upTo } from '../units/pick.ts';
import { firstGap } from './gaps.ts';
import { scheduled } from './placed.ts';
import { allOnTime, run, withJob, type Placed } from './run.ts';
import type { Job, Schedule, ScheduledJob, ScheduleTask } from './types.ts';
import { byDue, releaseOn, workOf, workOn, type Shop, type Work } from './work.ts';

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
 * moved. For benches as they are filled this is the first day there is, if all jobs may begin at once; else one that
 * holds, though an earlier one might.
 * @param task the task the schedule was made from
 * @throws RangeError when schedule and task do not belong together, or the job has no whole number of minutes
 */
export function promiseFor(task: ScheduleTask, schedule: Schedule, job: Job): NewPromise {
  const { shop, works } = workOf({ ...task, jobs: [...task.jobs, job] });
  const own = works.find(({ id }) => id === job.id);
  if (own === undefined) throw new RangeError(`no job ${job.id}`);
  const byId = new Map(works.map((work) => [work.id, work]));
  const offers = upTo(shop.benches.length).map((bench): Offer => {
    const there = schedule.jobs.filter((entry) => entry.bench === pick(shop.benches, bench).id);
    const placed = there.map((entry) => placedAgain(shop, bench, { entry, work: byId.get(entry.id) }));
    placed.sort((a, b) => a.from - b.from);
    return offerOf(shop, bench, { task, placed, promises: there, own });
  });
  const best = offers.reduce((a, b) => (b.last < a.last ? b : a));
  const day = shop.calendar.dayAt(best.last);
  return {
    day,
    bench: pick(shop.benches, best.bench).id,
    meetsDue: job.due === undefined || best.last + 1 <= own.due,
    jobs: best.placed.map((placed) => scheduled(shop, { placed, bench: best.bench })),
  };
}

interface Offer {
  readonly bench: number;
  /** Number of the working day on which the new job ends. */
  readonly last: number;
  readonly placed: readonly Placed[];
}

interface BenchNow {
  readonly task: ScheduleTask;
  readonly placed: readonly Placed[];
  readonly promises: readonly ScheduledJob[];
  readonly own: Work;
}

/** The first gap without moving anything; then any earlier day for which the other jobs can make room. */
function offerOf(shop: Shop, i: number, now: BenchNow): Offer {
  const bench = pick(shop.benches, i);
  const { placed, own } = now;
  const gap = firstGap(bench, placed, own);
  const inGap = { work: own, from: gap.from, to: gap.from + own.minutes };
  let best: Offer = {
    bench: i,
    last: bench.lastDay(inGap.to),
    placed: placed.toSpliced(gap.place, 0, inGap),
  };
  const promised = promisedWorks(shop, now);
  let low = bench.lastDay(releaseOn(bench, own) + own.minutes);
  while (low < best.last) {
    const middle = (low + best.last) >> 1;
    // The day tried takes the place of the due day, so that the bench works toward it.
    const works = withJob(promised, { ...own, due: middle + 1 });
    if (allOnTime(bench, works)) best = { bench: i, last: middle, placed: restored(run(bench, works), now) };
    else low = middle + 1;
  }
  return best;
}

/** The jobs of a bench with the day promised for due day, by that day. */
function promisedWorks({ calendar }: Shop, { task, placed, promises }: BenchNow): Work[] {
  const dayOf = new Map(promises.map(({ id, promise }) => [id, promise]));
  return placed
    .map(({ work }) => {
      const due = dayOf.get(work.id) ?? task.start;
      return { ...work, due: workOn(calendar, task.start, { ...work.job, due }).due };
    })
    .sort(byDue);
}

/** With the due days the jobs came with. */
function restored(placed: readonly Placed[], { placed: before, own }: BenchNow): Placed[] {
  const works = new Map([...before.map(({ work }) => work), own].map((work) => [work.id, work]));
  return placed.map((entry) => ({ ...entry, work: works.get(entry.work.id) ?? entry.work }));
}

/** A scheduled job in work of its bench again. */
function placedAgain(
  { calendar, benches }: Shop,
  bench: number,
  { entry, work }: { entry: ScheduledJob; work: Work | undefined },
): Placed {
  if (work === undefined) throw new RangeError(`the task has no job ${entry.id}`);
  const from = pick(benches, bench).doneIn(calendar.before(entry.startDay)) + entry.startMinute;
  return { work, from, to: from + work.minutes };
}
