/** Late jobs against Moore-Hodgson, every order tried, and HiGHS, an integer programming solver. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planJobs } from '../../src/work/schedule/plan.ts';
import { promiseFor } from '../../src/work/schedule/promise.ts';
import { dayNumber } from '../../src/units/days.ts';
import { cases } from '../support/cases.ts';
import {
  dayAfter,
  fewestLate,
  fewestLateByHighs,
  sketches,
  start,
  taskOf,
} from '../support/schedule-cases.ts';

/** A minute of work per day, as in the examples. */
const inMinutes = (work: readonly number[], deadline: readonly number[]) =>
  work.map((minutes, i) => ({ minutes, due: deadline[i]! - 1 }));

describe('worked examples', () => {
  it('example of Pinedo, Scheduling, 3.3.3: jobs 3, 4 and 5 on time, two late', () => {
    // From memory; recomputed by trying all orders.
    const { jobs, late } = planJobs(taskOf(inMinutes([7, 8, 4, 6, 6], [9, 17, 18, 19, 21]), [1]));
    expect(late).toEqual({ value: 2, bound: 2 });
    expect(jobs.filter(({ lateBy }) => lateBy > 0).map(({ id }) => id)).toEqual(['job 0', 'job 1']);
  });

  it('ten jobs, two late', () => {
    // A worked example in an open collection of mathematical texts (seen; recomputed by trying all orders).
    const work = [19, 23, 5, 31, 17, 8, 32, 41, 26, 18];
    const deadline = [48, 75, 170, 215, 205, 240, 85, 67, 100, 95];
    expect(planJobs(taskOf(inMinutes(work, deadline), [1])).late).toEqual({ value: 2, bound: 2 });
  });

  it('six jobs on two benches, none late', () => {
    // By hand: 1, 3 and 8 hours end at 1, 4 and 12 on one bench, 3, 5 and 6 at 3, 8 and 14 on the other.
    const jobs = inMinutes([5, 8, 3, 6, 1, 3], [9, 12, 11, 14, 3, 3]);
    expect(fewestLate(jobs, [1, 1])).toBe(0);
    expect(planJobs(taskOf(jobs, [1, 1])).late).toEqual({ value: 0, bound: 0 });
  });
});

describe('the fewest late jobs there can be, and proven', () => {
  const weekdays = [
    [1, 2, 3, 4, 5],
    [2, 4, 6],
  ];
  it.each([
    { name: 'one bench', count: 7, benches: [8], own: [] },
    { name: 'two benches', count: 6, benches: [8, 6], own: [] },
    { name: 'two benches that work on other days', count: 6, benches: [8, 6], own: weekdays },
  ])('$name, every order tried', ({ count, benches, own }) => {
    fc.assert(
      fc.property(sketches(count), (jobs) => {
        const fewest = fewestLate(jobs, benches, own);
        expect(planJobs(taskOf(jobs, benches, own)).late).toEqual({ value: fewest, bound: fewest });
      }),
      { seed: 13, numRuns: cases(30, 60) },
    );
  });

  it.each([
    { name: 'one bench', count: 7, benches: [8], own: [] },
    { name: 'two benches that work on other days', count: 5, benches: [8, 6], own: weekdays },
  ])('$name where jobs wait for deliveries, every order tried', ({ count, benches, own }) => {
    const waiting = fc.tuple(sketches(count), fc.array(fc.nat(8), { minLength: count, maxLength: count }));
    fc.assert(
      fc.property(waiting, ([drawn, days]) => {
        const jobs = drawn.map((job, i) => ({ ...job, from: days[i]! }));
        const fewest = fewestLate(jobs, benches, own);
        expect(planJobs(taskOf(jobs, benches, own)).late).toEqual({ value: fewest, bound: fewest });
      }),
      { seed: 15, numRuns: 60 },
    );
  });

  it.each([
    ['eleven', 10, 1],
    ['up to twenty', 19, 12],
  ])('%s jobs on two benches, the last waits, against HiGHS without that one', (_, count, least) => {
    fc.assert(
      fc.property(sketches(count, least), (jobs) => {
        const waits = [...jobs, { minutes: 1, due: 60, from: 40 }];
        const fewest = fewestLateByHighs(jobs, [8, 6]);
        const { value, bound } = planJobs(taskOf(waits, [8, 6])).late;
        expect(value).toBe(fewest);
        if (least === 1) expect(bound).toBe(fewest);
        else expect(bound).toBeLessThanOrEqual(fewest);
      }),
      { seed: 16, numRuns: cases(8, 20) },
    );
  });

  it.each([
    { name: 'ten jobs on two benches', count: 10, least: 1, benches: [8, 6] },
    { name: 'ten jobs on three benches', count: 10, least: 1, benches: [6, 5, 5] },
    { name: 'thirty jobs on one bench', count: 30, least: 13, benches: [20] },
    { name: 'thirty jobs on two benches', count: 30, least: 13, benches: [14, 10] },
    { name: 'sixteen jobs on three benches', count: 16, least: 13, benches: [6, 5, 5] },
  ])('$name, against HiGHS', ({ count, least, benches }) => {
    fc.assert(
      fc.property(sketches(count, least), (jobs) => {
        const fewest = fewestLateByHighs(jobs, benches);
        expect(planJobs(taskOf(jobs, benches)).late).toEqual({ value: fewest, bound: fewest });
      }),
      { seed: 14, numRuns: cases(20, 60) },
    );
  });
});

describe('the promise for one more job', () => {
  /** First day the new job can end in any order that keeps all promises; one bench. */
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

  it('is the first day there is on one bench', () => {
    fc.assert(
      fc.property(sketches(5), fc.integer({ min: 1, max: 30 }), (jobs, minutes) => {
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
