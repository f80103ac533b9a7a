/** Which jobs shall be on time, and on which bench, so that few are late. */
import { pick, upTo } from '../../units/pick.ts';
import { mostInSets, mostOnTime } from './few-waiting.ts';
import type { Shop, Work } from './work.ts';

export interface Choice {
  /** For each bench the jobs that are on time there, in their turn. */
  readonly onTime: readonly (readonly Work[])[];
  readonly late: readonly Work[];
  /** No schedule has fewer late jobs. */
  readonly bound: number;
}

/** States kept of each job's turn; fewer where there are many jobs. */
const mostStates = 500;
const mostStatesInAll = 200_000;

/** All choices are tried for no more jobs than this, and as long as so many were looked at: ten jobs on three benches end before. */
const mostTried = 40;
const mostLooks = 20_000_000;

/** After so many jobs, by due day: what each bench has to do until it is through with those that are on time. */
interface State {
  readonly late: number;
  readonly ends: readonly number[];
  /** Days until those on time are done, added up: of two benches the one that is done first is taken. */
  readonly days: number;
  /** Where the last of them went, -1 to the late ones. */
  readonly bench: number;
  readonly before: State | undefined;
}

/**
 * Jobs with a due day, sorted by it. Where none has to wait, a bench that does its jobs in that order is on time if it
 * can be at all; where some do, few jobs are tried in all orders.
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
  /** For each job and bench, the work that is done there by the due day. */
  readonly limits: readonly (readonly number[])[];
  /** The same by the day on which it may begin. */
  readonly releases: readonly (readonly number[])[];
}

/** What can become of the next job: on time on a bench, where it is done first before others, or late. */
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

/** Goes through the jobs once with the most promising states only: of each number of late jobs those with the least work, done soonest. */
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
 * A lower bound of the late jobs among those from the `i`th on: one bench that does the work of all benches together
 * is late no more often. For one bench it is the least there is (Moore 1968, Management Science 15:102): where a job
 * would be late, the longest so far is put off.
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

/** Tries all choices that could have fewer late jobs than the one found; whether it came to the end. */
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
