/** Chooses which jobs to keep on time, and on which bench. */
import { pick, upTo } from '../../units/pick.ts';
import { mostInSets, mostOnTime } from './few-waiting.ts';
import type { Shop, Work } from './work.ts';

export interface Choice {
  /** Jobs on time per bench, in order. */
  readonly onTime: readonly (readonly Work[])[];
  readonly late: readonly Work[];
  /** No schedule has fewer late jobs. */
  readonly bound: number;
}

/** Kept after each job; fewer with many jobs. */
const mostStates = 500;
const mostStatesInAll = 200_000;

/** Up to this many jobs we try all choices; ten on three benches always finish. */
const mostTried = 40;
const mostLooks = 20_000_000;

/** After some jobs, by due day: minute each bench is done. */
interface State {
  readonly late: number;
  readonly ends: readonly number[];
  /** Sum of days until on-time jobs are done. */
  readonly days: number;
  /** Of the last job; -1 means late. */
  readonly bench: number;
  readonly before: State | undefined;
}

/**
 * Takes jobs by due day: if none waits, no other order does better; if some wait, small sets are tried in
 * every order.
 */
export function choose(shop: Shop, works: readonly Work[]): Choice {
  const { benches } = shop;
  const waits = works.some(({ from }) => from > 0);
  if (waits && works.length <= mostInSets) return chooseSets(shop, works);
  const limits = works.map(({ due }) => benches.map((bench) => bench.doneIn(due)));
  const releases = works.map(({ from }) => benches.map((bench) => bench.doneIn(from)));
  const task = { benches, works, limits, releases };
  const start = { late: 0, ends: benches.map(() => 0), days: 0, bench: -1, before: undefined };
  const quick = quickly(task, start);
  const bound = leastLate(task, start, 0);
  const tried =
    quick.late > bound && works.length <= mostTried && !waits
      ? tryAll(task, start, quick)
      : { best: quick, all: false };
  const path: number[] = [];
  for (let state = tried.best; state.before !== undefined; state = state.before) path.unshift(state.bench);
  const of = (bench: number): Work[] => works.filter((_, i) => path[i] === bench);
  return {
    onTime: upTo(benches.length).map(of),
    late: of(-1),
    bound: tried.all ? tried.best.late : bound,
  };
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
}

/** The next job on time on each bench, earliest finish first, or late. */
function following({ benches, works, limits, releases }: Task, before: State, i: number): State[] {
  const { minutes } = pick(works, i);
  const onTime = before.ends.flatMap((own, bench): State[] => {
    const end = Math.max(own, pick(pick(releases, i), bench)) + minutes;
    if (end > pick(pick(limits, i), bench)) return [];
    const days = before.days + pick(benches, bench).moment(end);
    return [{ late: before.late, ends: before.ends.with(bench, end), days, bench, before }];
  });
  onTime.sort((a, b) => a.days - b.days);
  return [...onTime, { ...before, late: before.late + 1, bench: -1, before }];
}

const total = ({ ends }: State): number => ends.reduce((sum, end) => sum + end, 0);

/** One pass that keeps the best states per count of late jobs. */
function quickly(task: Task, start: State): State {
  const width = Math.min(mostStates, Math.ceil(mostStatesInAll / Math.max(1, task.works.length)));
  let states = [start];
  task.works.forEach((_, i) => {
    const next = states.flatMap((state) => following(task, state, i));
    next.sort((a, b) => a.late - b.late || total(a) - total(b) || a.days - b.days);
    const counts = new Set(next.map(({ late }) => late)).size;
    states = [];
    for (let late = pick(next, 0).late, kept: State[] = [], k = 0; k < next.length; k++) {
      const state = pick(next, k);
      if (state.late > late) [late, kept] = [state.late, []];
      const worse = kept.some(({ ends }) => ends.every((end, bench) => end <= pick(state.ends, bench)));
      if (worse || kept.length * counts >= width) continue;
      kept.push(state);
      states.push(state);
    }
  });
  return pick(states, 0);
}

/**
 * Lower bound on late jobs from the `i`th on, with one bench doing all the work; exact for one bench (Moore
 * 1968, Management Science 15:102).
 */
function leastLate({ works, limits, releases }: Task, state: State, i: number): number {
  const taken: number[] = [];
  let end = total(state);
  let late = 0;
  for (let k = i; k < works.length; k++) {
    const { minutes } = pick(works, k);
    const own = pick(limits, k);
    if (own.every((limit, bench) => pick(pick(releases, k), bench) + minutes > limit)) {
      late++;
      continue;
    }
    taken.push(minutes);
    end += minutes;
    if (end <= own.reduce((sum, limit) => sum + limit, 0)) continue;
    const longest = Math.max(...taken);
    taken.splice(taken.indexOf(longest), 1);
    end -= longest;
    late++;
  }
  return late;
}

/** Tries every choice that could beat `found`. */
function tryAll(task: Task, start: State, found: State): { best: State; all: boolean } {
  let best = found;
  let looks = mostLooks;
  const from = (state: State, i: number): void => {
    looks -= task.works.length - i + 1;
    if (looks < 0 || state.late + leastLate(task, state, i) >= best.late) return;
    if (i === task.works.length) best = state;
    else for (const next of following(task, state, i)) from(next, i + 1);
  };
  from(start, 0);
  return { best, all: looks >= 0 };
}
