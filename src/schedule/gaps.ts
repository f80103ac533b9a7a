/** The first time a bench has for one more job without moving any other. */
import { firstFrom, pick } from '../units/pick.ts';
import type { Placed } from './run.ts';
import type { BenchTime } from './bench-time.ts';
import { releaseOn, type Work } from './work.ts';

/** Where a job would go, and at which place of the list. */
export interface Gap {
  readonly from: number;
  readonly place: number;
}

/** The first gap long enough; the time behind all jobs is one. Placed jobs in the order of time. */
export function firstGap(bench: BenchTime, placed: readonly Placed[], work: Work): Gap {
  const release = releaseOn(bench, work);
  // Jobs that are over by then need not be looked at.
  const first = firstFrom(placed.length, (i) => pick(placed, i).to > release);
  let from = release;
  for (let place = first; place < placed.length; place++) {
    const next = placed[place];
    if (next === undefined || from + work.minutes <= next.from) return { from, place };
    from = Math.max(from, next.to);
  }
  return { from, place: placed.length };
}
