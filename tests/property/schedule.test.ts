/** Laws of schedules on random shops: jobs whole, one at a time, promises kept. */
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, it } from 'vitest';
import { planJobs } from '../../src/work/schedule/plan.ts';
import { promiseFor } from '../../src/work/schedule/promise.ts';
import type { Job, Schedule, ScheduledJob, ScheduleTask } from '../../src/work/schedule/types.ts';
import { cases } from '../support/cases.ts';

const first = DateTime.fromISO('2027-12-20', { zone: 'utc' });
const day = (min: number, max: number) =>
  fc.integer({ min, max }).map((days) => first.plus({ days }).toISODate()!);

const job = (id: string): fc.Arbitrary<Job> =>
  fc.record(
    {
      id: fc.constant(id),
      minutes: fc.integer({ min: 1, max: 900 }),
      due: day(-3, 40),
      from: day(-3, 20),
    },
    { requiredKeys: ['id', 'minutes'] },
  );

const drawn = fc.record({
  days: fc.record({
    weekdays: fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1 }),
    holidays: fc.array(day(0, 30), { maxLength: 8 }),
  }),
  start: fc.constant(first.toISODate()!),
  benches: fc
    .array(
      fc.record({ minutesADay: fc.integer({ min: 120, max: 600 }), own: fc.integer({ min: 0, max: 127 }) }),
      {
        minLength: 1,
        maxLength: 3,
      },
    )
    .map((all) => all.map((bench, i) => ({ id: `bench ${i}`, ...bench }))),
  jobs: fc
    .integer({ min: 0, max: 15 })
    .chain((count) => fc.tuple(...Array.from({ length: count }, (_, i) => job(`job ${i}`)))),
});

/** Benches drawn without weekdays work on all of the shop's. */
const tasks: fc.Arbitrary<ScheduleTask> = drawn.map(({ benches, ...task }) => ({
  ...task,
  benches: benches.map(({ own, ...bench }) => {
    const weekdays = task.days.weekdays.filter((weekday) => (own & (1 << (weekday - 1))) !== 0);
    return weekdays.length === 0 ? bench : { ...bench, weekdays };
  }),
}));

/** Days by luxon. */
const walked = Array.from({ length: 4000 }, (_, days) => {
  const at = first.plus({ days: days - 20 });
  return { iso: at.toISODate()!, weekday: at.weekday };
});
const placeOf = new Map(walked.map(({ iso }, i) => [iso, i]));
const yesterday = (iso: string): string => walked[placeOf.get(iso)! - 1]!.iso;

/** Working days after one day up to another. */
function workingDays(
  { days }: ScheduleTask,
  {
    after,
    last,
    weekdays = days.weekdays,
  }: { after: string; last: string; weekdays?: readonly number[] | undefined },
): number {
  if (!placeOf.has(after) || !placeOf.has(last)) throw new Error(`${after} or ${last} is too far off`);
  return walked
    .slice(placeOf.get(after)! + 1, placeOf.get(last)! + 1)
    .filter(({ iso, weekday }) => weekdays.includes(weekday) && !days.holidays.includes(iso)).length;
}

/** Minutes of its bench's work until a job begins and ends. */
function minutesOf(task: ScheduleTask, job: ScheduledJob): { from: number; to: number } {
  const { minutesADay, weekdays } = task.benches.find(({ id }) => id === job.bench)!;
  const after = yesterday(task.start);
  const at = (on: string, minute: number): number =>
    (workingDays(task, { after, last: on, weekdays }) - 1) * minutesADay + minute;
  return { from: at(job.startDay, job.startMinute), to: at(job.endDay, job.endMinute) };
}

function checkBench(task: ScheduleTask, jobs: readonly ScheduledJob[]): void {
  const spans = jobs.map((entry) => ({ ...minutesOf(task, entry), entry })).sort((a, b) => a.from - b.from);
  spans.forEach(({ from, to, entry }, i) => {
    const asked = task.jobs.find(({ id }) => id === entry.id)!;
    expect(to - from).toBe(asked.minutes);
    if (i > 0) expect(from).toBeGreaterThanOrEqual(spans[i - 1]!.to);
    expect(entry.startDay >= (asked.from ?? '')).toBe(true);
    for (const on of [entry.startDay, entry.endDay]) {
      const { weekdays } = task.benches.find(({ id }) => id === entry.bench)!;
      expect(workingDays(task, { after: yesterday(on), last: on, weekdays })).toBe(1);
    }
    const lateBy = asked.due === undefined ? 0 : workingDays(task, { after: asked.due, last: entry.endDay });
    expect(entry.lateBy).toBe(lateBy);
    expect(entry.promise).toBe(asked.due !== undefined && lateBy === 0 ? asked.due : entry.endDay);
  });
}

const holds = (law: (task: ScheduleTask, schedule: Schedule) => void): void => {
  fc.assert(
    fc.property(tasks, (task) => {
      law(task, planJobs(task));
    }),
    { seed: 41, numRuns: cases(60, 120) },
  );
};

describe('a schedule', () => {
  it('does each job once and whole, one at a time, on working days', () => {
    holds((task, { jobs }) => {
      expect(jobs.map(({ id }) => id).sort()).toEqual(task.jobs.map(({ id }) => id).sort());
      for (const { id } of task.benches) {
        checkBench(
          task,
          jobs.filter(({ bench }) => bench === id),
        );
      }
    });
  });

  it('counts the late jobs, and has no bound above them', () => {
    holds((_, { jobs, late, proven }) => {
      expect(late.value).toBe(jobs.filter(({ lateBy }) => lateBy > 0).length);
      expect(late.bound).toBeLessThanOrEqual(late.value);
      expect(proven).toBe(late.bound === late.value);
    });
  });

  it('is the same whatever the order of the input', () => {
    holds((task, schedule) => {
      const turned = {
        ...task,
        jobs: [...task.jobs].reverse(),
        benches: [...task.benches].reverse(),
        days: { weekdays: [...task.days.weekdays].reverse(), holidays: [...task.days.holidays].reverse() },
      };
      expect(planJobs(turned)).toEqual(schedule);
    });
  });
});

describe('a promise for one more job', () => {
  it('moves no promise, makes no job late, and can be kept itself', () => {
    fc.assert(
      fc.property(tasks, job('new'), (task, added) => {
        const schedule = planJobs(task);
        const promise = promiseFor(task, schedule, added);
        const longer = { ...task, jobs: [...task.jobs, added] };
        checkBench(longer, promise.jobs);
        const given = schedule.jobs.filter(({ bench }) => bench === promise.bench);
        expect(promise.jobs.map(({ id }) => id).sort()).toEqual([...given.map(({ id }) => id), 'new'].sort());
        for (const before of given) {
          const now = promise.jobs.find(({ id }) => id === before.id)!;
          expect(now.endDay <= before.promise).toBe(true);
          expect(now.lateBy).toBeLessThanOrEqual(before.lateBy);
        }
        const own = promise.jobs.find(({ id }) => id === 'new')!;
        expect(promise.day >= own.endDay).toBe(true);
        expect(promise.meetsDue).toBe(own.lateBy === 0);
      }),
      { seed: 42, numRuns: cases(75, 150) },
    );
  });
});

describe('what no caller may hand over', () => {
  const task: ScheduleTask = {
    days: { weekdays: [1], holidays: [] },
    start: '2026-11-30',
    benches: [{ id: 'b', minutesADay: 480 }],
    jobs: [{ id: 'j', minutes: 60 }],
  };
  it.each([
    ['no bench', { ...task, benches: [] }, /needs a bench/],
    [
      'a bench on a day off',
      { ...task, benches: [{ id: 'b', minutesADay: 480, weekdays: [1, 6] }] },
      /weekday 6/,
    ],
    ['parts of minutes', { ...task, jobs: [{ id: 'j', minutes: 0.5 }] }, /minutes of job j is 0.5/],
    ['an id used twice', { ...task, jobs: [...task.jobs, ...task.jobs] }, /j is there twice/],
  ])('%s', (_, wrong, message) => {
    expect(() => planJobs(wrong)).toThrow(message);
  });
});
