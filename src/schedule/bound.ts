/** How few jobs can be late at best, whatever the benches do. */
import { lateJobs } from './moore-hodgson.ts';
import { deadlineOn, releaseOn, type Shop, type Work } from './work.ts';

/**
 * A lower bound of the number of late jobs. Two relaxations: a job that no bench can do between its days
 * is late; and one bench that does the work of all together, may stop a job for another and begin them all from some
 * day on, is late no more often. The second is tried from every day on which jobs become free, and counts only those
 * that are free from then on. Exact for one bench when every job may begin at once.
 */
export function leastLate({ benches }: Shop, works: readonly Work[]): number {
  const possible = works.filter((work) =>
    benches.some((bench) => work.minutes <= deadlineOn(bench, work) - releaseOn(bench, work)),
  );
  const all = (days: number): number => benches.reduce((sum, bench) => sum + bench.doneIn(days), 0);
  const froms = [...new Set(possible.map(({ release }) => release))];
  const from = (day: number): number =>
    lateJobs(
      possible
        .filter(({ release, due }) => release >= day && due < Infinity)
        .map(({ minutes, due }) => ({ work: minutes, deadline: all(due) - all(day) })),
    ).length;
  // From the start on all jobs count, those that are free only later too.
  return works.length - possible.length + Math.max(0, ...[0, ...froms].map(from));
}
