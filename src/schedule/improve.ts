/** Fewer late jobs by trying: a late job goes in somewhere, or for another one that goes in elsewhere. */
import { byText } from '../units/by-text.ts';
import { pick, upTo } from '../units/pick.ts';
import type { Choice } from './choose.ts';
import { allFree, allOnTime, withJob, withoutJob } from './run.ts';
import type { Shop, Work } from './work.ts';

/** Going through jobs that wait for their day takes about so many times as long. */
const waitingCosts = 12;

/** Work left for trying, in jobs looked at. */
export interface Allowance {
  steps: number;
}

/** Improves a choice in place until nothing helps, `enough` late jobs are left or the steps are spent; always the same way. */
export function improve(
  shop: Shop,
  choice: Choice,
  { enough, allowance }: { enough: number; allowance: Allowance },
): void {
  for (let better = true; better && choice.late.length > enough;) {
    better = false;
    const order = [...choice.late].sort((a, b) => a.minutes - b.minutes || byText(a.id, b.id));
    for (const work of order) {
      if (allowance.steps <= 0 || choice.late.length <= enough) return;
      if (!goIn({ shop, choice, allowance }, work) && !goInFor({ shop, choice, allowance }, work)) continue;
      choice.late = withoutJob(choice.late, work);
      better = true;
    }
  }
}

interface Search {
  readonly shop: Shop;
  readonly choice: Choice;
  readonly allowance: Allowance;
}

/** The list of a bench with the job in it, if all are on time then. */
function taken(
  { shop, allowance }: Search,
  bench: number,
  { works, work }: { works: readonly Work[]; work: Work },
): Work[] | undefined {
  const longer = withJob(works, work);
  allowance.steps -= longer.length * (allFree(longer) ? 1 : waitingCosts);
  return allOnTime(pick(shop.benches, bench), longer) ? longer : undefined;
}

function goIn(search: Search, work: Work, but = -1): boolean {
  const { onTime } = search.choice;
  return upTo(onTime.length).some((bench) => {
    if (bench === but) return false;
    const works = taken(search, bench, { works: pick(onTime, bench), work });
    if (works === undefined) return false;
    onTime[bench] = works;
    return true;
  });
}

/** The job goes in for one that finds a place on another bench. */
function goInFor(search: Search, work: Work): boolean {
  const { onTime } = search.choice;
  return upTo(onTime.length).some((bench) => {
    const before = pick(onTime, bench);
    return before.some((other) => {
      if (search.allowance.steps <= 0) return false;
      const works = taken(search, bench, { works: withoutJob(before, other), work });
      if (works === undefined || !goIn(search, other, bench)) return false;
      onTime[bench] = works;
      return true;
    });
  });
}
