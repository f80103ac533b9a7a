/** One bench works off a list of jobs: of those that may begin, always the one that is due first. */
import { pick } from '../units/pick.ts';
import { Heap } from './heap.ts';
import type { Bench } from './types.ts';
import { byDue, deadlineOn, releaseOn, type Work } from './work.ts';

/** A job on a bench, in work of the bench since the start. */
export interface Placed {
  readonly work: Work;
  readonly from: number;
  readonly to: number;
}

/** When a bench does its jobs; it never waits while one may begin. */
export function run(bench: Bench, works: readonly Work[]): Placed[] {
  const free = new Heap<Work>((a, b) => byDue(a, b) < 0);
  const waiting = [...works].sort((a, b) => a.release - b.release || byDue(a, b));
  const placed: Placed[] = [];
  let [now, next] = [0, 0];
  while (placed.length < works.length) {
    if (free.size === 0 && next < waiting.length) {
      now = Math.max(now, releaseOn(bench, pick(waiting, next)));
    }
    while (next < waiting.length && releaseOn(bench, pick(waiting, next)) <= now) {
      free.push(pick(waiting, next++));
    }
    const work = free.pop();
    if (work === undefined) break;
    placed.push({ work, from: now, to: now + work.minutes });
    now += work.minutes;
  }
  return placed;
}

/** Whether all jobs are on time when the bench works them off so. Jobs sorted by due day. */
export function allOnTime(bench: Bench, works: readonly Work[]): boolean {
  if (works.every(({ release }) => release === 0)) {
    let end = 0;
    return works.every((work) => (end += work.minutes) <= deadlineOn(bench, work));
  }
  return run(bench, works).every(({ work, to }) => to <= deadlineOn(bench, work));
}

/** The list with one more job, still sorted by due day. */
export function withJob(works: readonly Work[], work: Work): Work[] {
  let [low, high] = [0, works.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (byDue(pick(works, middle), work) < 0) low = middle + 1;
    else high = middle;
  }
  return [...works.slice(0, low), work, ...works.slice(low)];
}

/** The list without one job. */
export function withoutJob(works: readonly Work[], work: Work): Work[] {
  return works.filter((other) => other !== work);
}
