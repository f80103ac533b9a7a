/** The most of few jobs on time: tries every set on every bench. */
import { pick, upTo } from '../../units/pick.ts';
import type { BenchTime } from './bench-time.ts';
import type { Shop, Work } from './work.ts';

/** More have too many sets. */
export const few = 12;

/** A set is a number; its bits say which jobs. */
interface Sets {
  /** Per set, on time: minute it is done, sum of days, last job. */
  readonly ends: Float64Array;
  readonly days: Float64Array;
  readonly last: Int8Array;
}

/** Jobs per bench in order; those on none are late. */
export function mostOnTime({ benches }: Shop, works: readonly Work[]): Work[][] {
  const sets = benches.map((bench) => setsOf(bench, works));
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

/** Ends each set with the job that finishes it earliest, on time. */
function setsOf(bench: BenchTime, works: readonly Work[]): Sets {
  const limits = works.map(({ due }) => bench.doneIn(due));
  const releases = works.map(({ from }) => bench.doneIn(from));
  const ends = new Float64Array(2 ** works.length).fill(Infinity);
  const days = new Float64Array(ends.length);
  const last = new Int8Array(ends.length).fill(-1);
  ends[0] = 0;
  for (let set = 1; set < ends.length; set++) {
    works.forEach(({ minutes }, job) => {
      if ((set & (1 << job)) === 0) return;
      const end = Math.max(ends[set - 2 ** job] ?? Infinity, pick(releases, job)) + minutes;
      if (end > pick(limits, job) || end > (ends[set] ?? Infinity)) return;
      ends[set] = end;
      days[set] = (days[set - 2 ** job] ?? 0) + bench.moment(end);
      last[set] = job;
    });
  }
  return { ends, days, last };
}

/** One disjoint set per bench: most jobs, then earliest finish. */
function shared(sets: readonly Sets[], count: number): number[] {
  let before = upTo(count).map((): { jobs: number; days: number; parts: number[] } => ({
    ...{ jobs: 0, days: 0, parts: [] },
  }));
  for (const { ends, days } of sets) {
    before = upTo(count).map((all) => {
      const none = pick(before, all);
      let best = { jobs: none.jobs, days: none.days, part: 0 };
      for (let part = all; part > 0; part = (part - 1) & all) {
        if (ends[part] === Infinity) continue;
        const rest = pick(before, all - part);
        const now = { jobs: rest.jobs + bits(part), days: rest.days + (days[part] ?? 0), part };
        if (now.jobs > best.jobs || (now.jobs === best.jobs && now.days < best.days)) best = now;
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
