/** The schedule: each job's bench, first and last day, and the fewest late jobs that were found. */
import { byText } from '../units/by-text.ts';
import { pick } from '../units/pick.ts';
import { leastLate } from './bound.ts';
import { choose, type Choice } from './choose.ts';
import { firstGap } from './gaps.ts';
import { improve } from './improve.ts';
import { scheduled } from './placed.ts';
import { run, type Placed } from './run.ts';
import type { Schedule, ScheduleTask } from './types.ts';
import { workOf, type Shop, type Work } from './work.ts';

/** Jobs looked at while improving, when the task does not say: about a second of work. */
const usualSteps = 5_000_000;

/**
 * Schedules jobs on benches so that few are late. A job is done on one bench without another in between, over night
 * where it has to; one that ends in the morning lets the next begin the same day. With one bench and all jobs free to
 * begin, no schedule has fewer late jobs (Moore-Hodgson); else `bound` says how many fewer there could be at most.
 * Jobs that are late anyway, then those without a due day, take the first gaps that are left.
 * @throws RangeError on work that is no whole number of minutes, ids used twice, no bench, or no working day
 */
export function planJobs(task: ScheduleTask): Schedule {
  const { shop, works } = workOf(task);
  const dated = works.filter(({ due }) => due < Infinity);
  const bound = leastLate(shop, dated);
  const choice = bestChoice(shop, dated, { bound, steps: task.steps ?? usualSteps });
  const lists = shop.benches.map((bench, i) => run(bench, pick(choice.onTime, i)));
  const off = new Set(choice.late);
  const late = works.filter((work) => off.has(work));
  for (const work of [...late, ...works.filter(({ due }) => due === Infinity)]) layIn(shop, lists, work);
  const jobs = lists.flatMap((list, i) => list.map((placed) => scheduled(shop, { placed, bench: i })));
  jobs.sort((a, b) => byText(a.id, b.id));
  const value = jobs.filter(({ lateBy }) => lateBy > 0).length;
  return { jobs, late: { value, bound }, proven: value === bound };
}

function bestChoice(
  shop: Shop,
  works: readonly Work[],
  { bound, steps }: { bound: number; steps: number },
): Choice {
  const choices = (['first-done', 'fullest'] as const).map((preference) => choose(shop, works, preference));
  const allowance = { steps };
  choices.sort((a, b) => a.late.length - b.late.length);
  for (const choice of choices) {
    if (pick(choices, 0).late.length > bound) improve(shop, choice, { enough: bound, allowance });
  }
  return choices.reduce((a, b) => (b.late.length < a.late.length ? b : a));
}

/** Puts a job into the gap of any bench in which it is done first. */
function layIn({ benches }: Shop, lists: Placed[][], work: Work): void {
  const offers = benches.map((bench, i) => {
    const gap = firstGap(bench, pick(lists, i), work);
    return { i, gap, days: bench.moment(gap.from + work.minutes) };
  });
  const { i, gap } = offers.reduce((a, b) => (b.days < a.days ? b : a));
  pick(lists, i).splice(gap.place, 0, { work, from: gap.from, to: gap.from + work.minutes });
}
