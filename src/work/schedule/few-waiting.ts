/** The most of a few jobs that can be on time where some must wait: every set of them on every bench. */
import { pick, upTo } from '../../units/pick.ts';
import type { Shop, Work } from './work.ts';

/** Sets of more jobs than this are too many. */
export const mostInSets = 12;

/** A set of jobs is a number whose bits say which; the least minute by which a bench is through with it, all on time, and its last job. */
interface Sets {
  readonly ends: Float64Array;
  readonly last: Int8Array;
}

/** For each bench its jobs in the order in which they are done; what stands on none is late. */
export function mostOnTime({ benches }: Shop, works: readonly Work[]): Work[][] {
  const sets = benches.map((bench): Sets => {
    const limits = works.map(({ due }) => bench.doneIn(due));
    const releases = works.map(({ from }) => bench.doneIn(from));
    return setsOf(works, limits, releases);
  });
  const chosen = shared(sets, 2 ** works.length);
  return sets.map(({ last }, bench) => {
    const list: Work[] = [];
    for (let set = pick(chosen, bench); set > 0;) {
      const job = last[set] ?? 0;
      list.unshift(pick(works, job));
      set -= 2 ** job;
    }
    return list;
  });
}

/** Of each set the job that may come last so that the bench is through soonest: what was done before is done soonest too. */
function setsOf(works: readonly Work[], limits: readonly number[], releases: readonly number[]): Sets {
  const ends = new Float64Array(2 ** works.length).fill(Infinity);
  const last = new Int8Array(ends.length).fill(-1);
  ends[0] = 0;
  for (let set = 1; set < ends.length; set++) {
    works.forEach(({ minutes }, job) => {
      if ((set & (1 << job)) === 0) return;
      const end = Math.max(ends[set - 2 ** job] ?? Infinity, pick(releases, job)) + minutes;
      if (end > pick(limits, job) || end >= (ends[set] ?? Infinity)) return;
      ends[set] = end;
      last[set] = job;
    });
  }
  return { ends, last };
}

/** One set for each bench, none twice: the most jobs, done soonest. */
function shared(sets: readonly Sets[], count: number): number[] {
  let before = upTo(count).map((): { jobs: number; end: number; parts: number[] } => ({
    ...{ jobs: 0, end: 0, parts: [] },
  }));
  for (const { ends } of sets) {
    before = upTo(count).map((all) => {
      const none = pick(before, all);
      let best = { jobs: none.jobs, end: none.end, part: 0 };
      for (let part = all; part > 0; part = (part - 1) & all) {
        const end = ends[part] ?? Infinity;
        if (end === Infinity) continue;
        const rest = pick(before, all - part);
        const now = { jobs: rest.jobs + bits(part), end: rest.end + end, part };
        if (now.jobs > best.jobs || (now.jobs === best.jobs && now.end < best.end)) best = now;
      }
      return { ...best, parts: [...pick(before, all - best.part).parts, best.part] };
    });
  }
  return pick(before, count - 1).parts;
}

const bits = (set: number): number => {
  let count = 0;
  for (let left = set; left > 0; left &= left - 1) count++;
  return count;
};
