/** Late jobs: worked examples of Moore-Hodgson, and every order tried on small random shops. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lateJobs } from '../../src/schedule/moore-hodgson.ts';
import { planJobs } from '../../src/schedule/plan.ts';
import { promiseFor } from '../../src/schedule/promise.ts';
import { dayNumber } from '../../src/units/days.ts';
import { dayAfter, fewestLate, sketches, start, taskOf, type Sketch } from '../support/schedule-cases.ts';

describe('Moore-Hodgson', () => {
  it('example of Pinedo, Scheduling, 3.3.3: jobs 3, 4 and 5 on time, two late', () => {
    // Known from memory; recomputed by trying all orders.
    const work = [7, 8, 4, 6, 6];
    const deadline = [9, 17, 18, 19, 21];
    const late = lateJobs(work.map((own, i) => ({ work: own, deadline: deadline[i]!, id: i + 1 })));
    expect(late.map(({ id }) => id).sort()).toEqual([1, 2]);
  });

  it('ten jobs, two late', () => {
    // A worked example in an open collection of mathematical texts (seen; recomputed by trying all orders).
    const work = [19, 23, 5, 31, 17, 8, 32, 41, 26, 18];
    const deadline = [48, 75, 170, 215, 205, 240, 85, 67, 100, 95];
    expect(lateJobs(work.map((own, i) => ({ work: own, deadline: deadline[i]! })))).toHaveLength(2);
    // The same in days of one minute of work.
    const jobs = work.map((minutes, i) => ({ minutes, earliest: 0, due: deadline[i]! - 1 }));
    expect(planJobs(taskOf(jobs, [1])).late).toEqual({ value: 2, bound: 2 });
  });
});

describe('one bench, every order tried', () => {
  it('all jobs free: no schedule has fewer late jobs, and that is proven', () => {
    fc.assert(
      fc.property(sketches(7, false), (jobs) => {
        const fewest = fewestLate(jobs, [8]);
        expect(planJobs(taskOf(jobs, [8])).late).toEqual({ value: fewest, bound: fewest });
      }),
      { seed: 11, numRuns: 60 },
    );
  });

  it('eight jobs', () => {
    fc.assert(
      fc.property(sketches(8, false), (jobs) => {
        const fewest = fewestLate(jobs, [8]);
        expect(planJobs(taskOf(jobs, [8])).late).toEqual({ value: fewest, bound: fewest });
      }),
      { seed: 12, numRuns: 12 },
    );
  });
});

/** How often the schedule is best and how far off it is in all; the bound must never pass the fewest. */
function measure(
  jobs: fc.Arbitrary<Sketch[]>,
  benches: readonly number[],
  own: readonly (readonly number[])[] = [],
): { best: number; off: number } {
  const seen = { best: 0, off: 0 };
  fc.assert(
    fc.property(jobs, (list) => {
      const fewest = fewestLate(list, benches, own);
      const { late } = planJobs(taskOf(list, benches, own));
      expect(late.bound).toBeLessThanOrEqual(fewest);
      expect(late.value).toBeGreaterThanOrEqual(fewest);
      if (late.value === fewest) seen.best++;
      seen.off += late.value - fewest;
    }),
    { seed: 13, numRuns: 100 },
  );
  return seen;
}

// Measured, not wished for: in how many of a hundred cases the schedule is best, and late jobs too many in all of them.
describe('where the method is not exact, against every order tried, in a hundred cases', () => {
  it('one bench, jobs free only later', () => {
    const { best, off } = measure(sketches(6, true), [8]);
    expect(best).toBeGreaterThanOrEqual(98);
    expect(off).toBeLessThanOrEqual(2);
  });
  it('two benches', () => {
    const { best, off } = measure(sketches(6, false), [8, 6]);
    expect({ best, off }).toEqual({ best: 100, off: 0 });
  });
  it('two benches that do not work on the same days', () => {
    const { best, off } = measure(
      sketches(5, true),
      [8, 6],
      [
        [1, 2, 3, 4, 5],
        [2, 4, 6],
      ],
    );
    expect({ best, off }).toEqual({ best: 100, off: 0 });
  });
  it('two benches, jobs free only later', () => {
    const { best, off } = measure(sketches(5, true), [8, 8]);
    expect({ best, off }).toEqual({ best: 100, off: 0 });
  });
});

describe('the promise for one more job', () => {
  /** First day on which the new job can end in any order that keeps all promises; one bench. */
  function firstDay(jobs: readonly { minutes: number; promise: number }[], minutes: number): number {
    let first = Infinity;
    const place = (left: readonly { minutes: number; promise: number }[], end: number, own: number): void => {
      if (left.length === 0) first = Math.min(first, own >= 0 ? own : Math.ceil((end + minutes) / 8) - 1);
      if (own < 0) place(left, end + minutes, Math.ceil((end + minutes) / 8) - 1);
      left.forEach((job, i) => {
        const after = end + job.minutes;
        if (after <= (job.promise + 1) * 8) place(left.toSpliced(i, 1), after, own);
      });
    };
    place(jobs, 0, -1);
    return first;
  }

  it('is the first day there is on one bench with all jobs free', () => {
    fc.assert(
      fc.property(sketches(5, false), fc.integer({ min: 1, max: 30 }), (jobs, minutes) => {
        const task = taskOf(jobs, [8]);
        const schedule = planJobs(task);
        const promises = schedule.jobs.map(({ id, promise }) => ({
          minutes: task.jobs.find((job) => job.id === id)!.minutes,
          promise: dayNumber(promise) - dayNumber(start),
        }));
        const { day } = promiseFor(task, schedule, { id: 'new', minutes });
        expect(day).toBe(dayAfter(firstDay(promises, minutes)));
      }),
      { seed: 14, numRuns: 80 },
    );
  });
});
