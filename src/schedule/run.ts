/** One bench works off a list of jobs: of those that may begin, always the one that is due first. */
import { firstFrom, pick } from '../units/pick.ts';
import { Heap } from './heap.ts';
import type { BenchTime } from './bench-time.ts';
import { byDue, deadlineOn, releaseOn, type Work } from './work.ts';

/** A job on a bench, in work of the bench since the start. */
export interface Placed {
  readonly work: Work;
  readonly from: number;
  readonly to: number;
}

/** When a bench does its jobs; it never waits while one may begin. Jobs sorted by due day. */
export function run(bench: BenchTime, works: readonly Work[]): Placed[] {
  const placed: Placed[] = [];
  workOff(bench, works, (entry) => placed.push(entry) > 0);
  return placed;
}

/** Calls with each job as it is done, until told to stop by `false`; whether it came to the end. */
function workOff(bench: BenchTime, works: readonly Work[], done: (entry: Placed) => boolean): boolean {
  const free = new Heap<Work>((a, b) => byDue(a, b) < 0);
  for (const work of works) if (work.release === 0) free.push(work);
  const waiting = works.filter(({ release }) => release > 0).sort((a, b) => a.release - b.release);
  let [now, next] = [0, 0];
  for (let count = works.length; count > 0; count--) {
    if (free.size === 0) now = Math.max(now, releaseOn(bench, pick(waiting, next)));
    for (; next < waiting.length && releaseOn(bench, pick(waiting, next)) <= now; next++) {
      free.push(pick(waiting, next));
    }
    const work = free.pop();
    if (work === undefined || !done({ work, from: now, to: now + work.minutes })) return false;
    now += work.minutes;
  }
  return true;
}

/** Whether no job has to wait for its day, so that a bench does them simply by due day. */
export function allFree(works: readonly Work[]): boolean {
  return works.every(({ release }) => release === 0);
}

/** Whether all jobs are on time when the bench works them off so. Jobs sorted by due day. */
export function allOnTime(bench: BenchTime, works: readonly Work[]): boolean {
  if (allFree(works)) {
    let end = 0;
    return works.every((work) => (end += work.minutes) <= deadlineOn(bench, work));
  }
  return workOff(bench, works, ({ work, to }) => to <= deadlineOn(bench, work));
}

/** The list with one more job, still sorted by due day. */
export function withJob(works: readonly Work[], work: Work): Work[] {
  return works.toSpliced(
    firstFrom(works.length, (i) => byDue(pick(works, i), work) >= 0),
    0,
    work,
  );
}

/** The list without one job. */
export function withoutJob(works: readonly Work[], work: Work): Work[] {
  return works.filter((other) => other !== work);
}
