/** Which jobs shall be on time, and on which bench: jobs enter by due day, and where one would be late the longest is put off. */
import { pick, upTo } from '../units/pick.ts';
import { allOnTime, run, withoutJob } from './run.ts';
import { deadlineOn, releaseOn, type Shop, type Work } from './work.ts';

/** For each bench the jobs that are on time there, by due day, and the jobs that are late. */
export interface Choice {
  readonly onTime: Work[][];
  late: Work[];
}

/** Which of the benches where a job is on time gets it: the one that is done with it first, or the fullest. */
export type Preference = 'first-done' | 'fullest';

interface State extends Choice {
  readonly shop: Shop;
  /** When each bench is through with its jobs. */
  readonly ends: number[];
}

/**
 * Moore-Hodgson carried over to several benches and to jobs that may not begin at once; there it is no longer exact.
 * @param works jobs with a due day, sorted by it
 */
export function choose(shop: Shop, works: readonly Work[], preference: Preference): Choice {
  const state: State = {
    shop,
    onTime: shop.benches.map(() => []),
    late: [],
    ends: shop.benches.map(() => 0),
  };
  for (const work of works) {
    const bench = append(state, work, preference);
    if (bench === undefined && !exchange(state, work)) state.late.push(work);
  }
  return { onTime: state.onTime, late: state.late };
}

/** Puts a job behind the others of a bench where it is on time then. */
function append({ shop, onTime, ends }: State, work: Work, preference: Preference): number | undefined {
  let best: { bench: number; end: number; days: number } | undefined;
  shop.benches.forEach((bench, i) => {
    const end = Math.max(pick(ends, i), releaseOn(bench, work)) + work.minutes;
    if (end > deadlineOn(bench, work)) return;
    const days = bench.moment(end);
    const better = best === undefined || (preference === 'fullest' ? days > best.days : days < best.days);
    if (better) best = { bench: i, end, days };
  });
  if (best === undefined) return undefined;
  pick(onTime, best.bench).push(work);
  ends[best.bench] = best.end;
  return best.bench;
}

/** Takes the job in for a longer one, which is then late; false when that helps nowhere. */
function exchange({ shop, onTime, ends, late }: State, work: Work): boolean {
  const offers = upTo(shop.benches.length).map((bench) => {
    const longest = pick(onTime, bench).reduce<Work | undefined>(
      (a, b) => (a === undefined || b.minutes >= a.minutes ? b : a),
      undefined,
    );
    return { bench, longest };
  });
  offers.sort((a, b) => (b.longest?.minutes ?? 0) - (a.longest?.minutes ?? 0) || a.bench - b.bench);
  for (const { bench, longest } of offers) {
    if (longest === undefined || longest.minutes <= work.minutes) continue;
    const works = [...withoutJob(pick(onTime, bench), longest), work];
    if (!allOnTime(pick(shop.benches, bench), works)) continue;
    onTime[bench] = works;
    ends[bench] = run(pick(shop.benches, bench), works).at(-1)?.to ?? 0;
    late.push(longest);
    return true;
  }
  return false;
}
