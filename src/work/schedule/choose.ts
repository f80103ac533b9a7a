/** Chooses which jobs to keep on time, and on which bench. */
import { firstFrom, pick, upTo } from '../../units/pick.ts';
import { few, mostOnTime } from './few-jobs.ts';
import type { Shop, Work } from './work.ts';

export interface Choice {
  /** Jobs on time per bench, in order. */
  readonly onTime: readonly (readonly Work[])[];
  readonly late: readonly Work[];
  /** No schedule has fewer late jobs. */
  readonly bound: number;
}

/** Jobs looked at: under a second. */
const mostLooks = 1_500_000;

/** After the first jobs by due day: minute each bench is done. */
interface State {
  readonly jobs: number;
  readonly late: number;
  readonly ends: readonly number[];
  /** Of the last job; -1 means late. */
  readonly bench: number;
  readonly before: State | undefined;
}

/** Many jobs are taken by due day: if none waits, no other order does better. */
export function choose(shop: Shop, works: readonly Work[]): Choice {
  const { benches } = shop;
  if (works.length <= few) return chooseSets(shop, works);
  const limits = works.map(({ due }) => benches.map((bench) => bench.doneIn(due)));
  const releases = works.map(({ from }) => benches.map((bench) => bench.doneIn(from)));
  const task: Task = {
    ...{ benches, works, limits, releases },
    room: limits.map((own) => own.reduce((sum, limit) => sum + limit, 0)),
    fits: works.map(({ minutes }, job) =>
      pick(limits, job).some((limit, bench) => pick(pick(releases, job), bench) + minutes <= limit),
    ),
  };
  const start = { jobs: 0, late: 0, ends: benches.map(() => 0), bench: -1, before: undefined };
  const kept = keptByOne(task, start);
  const { best, all } = search(task, start, new Set(kept));
  const path: number[] = [];
  for (let state = best; state.before !== undefined; state = state.before) path.unshift(state.bench);
  const of = (bench: number): Work[] => works.filter((_, i) => path[i] === bench);
  const waits = works.some(({ from }) => from > 0);
  const bound = all && !waits ? best.late : works.length - kept.length;
  return { onTime: upTo(benches.length).map(of), late: of(-1), bound };
}

function chooseSets(shop: Shop, works: readonly Work[]): Choice {
  const onTime = mostOnTime(shop, works);
  const done = new Set(onTime.flat());
  const late = works.filter((work) => !done.has(work));
  return { onTime, late, bound: late.length };
}

interface Task {
  readonly benches: Shop['benches'];
  readonly works: readonly Work[];
  /** Per job and bench: minutes of work by its due day. */
  readonly limits: readonly (readonly number[])[];
  /** The same for its first day. */
  readonly releases: readonly (readonly number[])[];
  /** Per job: minutes of all benches by its due day. */
  readonly room: readonly number[];
  /** Per job: whether any bench alone could do it on time. */
  readonly fits: readonly boolean[];
}

/** First the jobs of `kept` on time, each where it is done first; then every choice with fewer late. */
function search(task: Task, start: State, kept: ReadonlySet<number>): { best: State; all: boolean } {
  const open: State[] = [start];
  let best: State | undefined;
  let looks = mostLooks;
  for (let state = open.pop(); state !== undefined && looks > 0; state = open.pop()) {
    const left = task.works.length - state.jobs;
    if (best !== undefined) {
      looks -= left + 1;
      if (state.late + left - keptByOne(task, state).length >= best.late) continue;
    }
    if (left === 0) best = state;
    else {
      const late = { ...state, jobs: state.jobs + 1, late: state.late + 1, bench: -1, before: state };
      const onTime = placed(task, state);
      open.push(...(kept.has(state.jobs) ? [late, ...onTime] : [...onTime, late]));
    }
  }
  return { best: best ?? start, all: looks > 0 };
}

/** The next job on time on each bench, earliest finish last. */
function placed({ benches, works, limits, releases }: Task, before: State): State[] {
  const { jobs, late, ends } = before;
  const { minutes } = pick(works, jobs);
  const states = ends.flatMap((own, bench) => {
    const end = Math.max(own, pick(pick(releases, jobs), bench)) + minutes;
    if (end > pick(pick(limits, jobs), bench)) return [];
    const state = { jobs: jobs + 1, late, ends: ends.with(bench, end), bench, before };
    return [{ state, day: pick(benches, bench).moment(end) }];
  });
  return states.sort((a, b) => b.day - a.day).map(({ state }) => state);
}

/**
 * Jobs to come that one bench doing all the work keeps on time, shortest first: no benches keep more. Of one
 * bench exact (Moore 1968, Management Science 15:102).
 */
function keptByOne({ works, room, fits }: Task, { jobs, ends }: State): number[] {
  const kept: number[] = [];
  const minutesOf = (job: number): number => pick(works, job).minutes;
  let end = ends.reduce((sum, each) => sum + each, 0);
  for (let job = jobs; job < works.length; job++) {
    if (!pick(fits, job)) continue;
    const minutes = minutesOf(job);
    kept.splice(
      firstFrom(kept.length, (i) => minutesOf(pick(kept, i)) > minutes),
      0,
      job,
    );
    end += minutes;
    if (end > pick(room, job)) end -= minutesOf(kept.pop() ?? job);
  }
  return kept;
}
