/** The fewest late jobs on one bench that may begin every job at once. */
import { Heap } from './heap.ts';

export interface Timed {
  readonly work: number;
  /** Work of the bench that is done by the end of the due day; Infinity without one. */
  readonly deadline: number;
}

/**
 * The jobs that are late in a schedule with the fewest late jobs; exact. Jobs enter by their deadlines, and where one
 * would be late the longest so far is put off. Moore 1968, Management Science 15:102, with Hodgson's rule.
 * @param jobs any order; of jobs that are alike the later ones are put off
 */
export function lateJobs<T extends Timed>(jobs: readonly T[]): T[] {
  const order = jobs
    .map((job, i) => ({ job, i }))
    .sort((a, b) => (a.job.deadline < b.job.deadline ? -1 : a.job.deadline > b.job.deadline ? 1 : a.i - b.i));
  const longest = new Heap<{ job: T; i: number }>(
    (a, b) => a.job.work > b.job.work || (a.job.work === b.job.work && a.i > b.i),
  );
  const late: T[] = [];
  let end = 0;
  for (const entry of order) {
    longest.push(entry);
    end += entry.job.work;
    if (end <= entry.job.deadline) continue;
    const off = longest.pop();
    if (off === undefined) continue;
    end -= off.job.work;
    late.push(off.job);
  }
  return late;
}
