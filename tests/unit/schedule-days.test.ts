/** Benches, days and gaps by hand: what one bench does by when, where a job goes, and how late it is. */
import { describe, expect, test } from 'vitest';
import { BenchTime } from '../../src/work/schedule/bench-time.ts';
import { Calendar } from '../../src/work/schedule/calendar.ts';
import { planJobs } from '../../src/work/schedule/plan.ts';
import { promiseFor } from '../../src/work/schedule/promise.ts';
import { Timeline } from '../../src/work/schedule/timeline.ts';
import type { Bench, Job, ScheduleTask } from '../../src/work/schedule/types.ts';
import type { Work } from '../../src/work/schedule/work.ts';

/** A Monday; the shop works Monday to Friday. */
const start = '2026-11-30';
const days = { weekdays: [1, 2, 3, 4, 5], holidays: [] as string[] };
const everyDay: Bench = { id: 'b', minutesADay: 100 };
const taskOf = (jobs: readonly Job[], benches: readonly Bench[] = [everyDay]): ScheduleTask => ({
  ...{ days, benches, jobs, start },
});
const benchOf = (bench: Bench) => new BenchTime(bench, taskOf([], [bench]), new Calendar(days, start));

describe('a bench', () => {
  const twice = benchOf({ id: 't', minutesADay: 100, weekdays: [2, 4] });

  test('of Tuesdays and Thursdays has done nothing by Monday, and tells days of the shop', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7].map((n) => twice.doneIn(n))).toEqual([
      0, 0, 100, 100, 200, 200, 200, 300,
    ]);
    expect(twice.doneIn(Infinity)).toBe(Infinity);
    expect([0, 1, 2].map((n) => twice.dayOf(n))).toEqual([1, 3, 6]);
    expect([1, 100, 101, 200, 201].map((minutes) => twice.lastDay(minutes))).toEqual([1, 1, 3, 3, 6]);
    expect([50, 100, 150, 225].map((minutes) => twice.moment(minutes))).toEqual([1.5, 2, 3.5, 6.25]);
  });

  test('that works whenever the shop does counts its days as the shop does', () => {
    for (const bench of [benchOf(everyDay), benchOf({ ...everyDay, weekdays: [5, 4, 3, 2, 1] })]) {
      expect([bench.doneIn(3), bench.dayOf(3), bench.lastDay(101), bench.moment(150)]).toEqual([
        300, 3, 1, 1.5,
      ]);
      expect(bench.doneIn(Infinity)).toBe(Infinity);
    }
  });

  test('works on no day that the shop does not', () => {
    expect(() => benchOf({ id: 's', minutesADay: 100, weekdays: [1, 6] })).toThrow(
      'bench s works on weekday 6, the shop does not',
    );
  });
});

test('a job goes into the first gap that holds it whole, else to the end; nothing moves', () => {
  const work = (minutes: number, from = 0) => ({ minutes, from }) as Work;
  const timeline = new Timeline(benchOf(everyDay), [work(50, 1)]);
  // Free is the first day; the second is taken to its middle.
  expect([80, 100, 101].map((minutes) => timeline.endOf(work(minutes)))).toEqual([80, 100, 251]);
  expect(timeline.add(work(80))).toBe(80);
  expect([20, 21].map((minutes) => timeline.endOf(work(minutes)))).toEqual([100, 171]);
  expect(timeline.add(work(10, 3))).toBe(310);
  // From 150 to 300 is a second gap, of which a job that waits until the third day has half.
  expect(timeline.add(work(100, 2))).toBe(300);
  expect([timeline.add(work(50)), timeline.add(work(20)), timeline.add(work(1))]).toEqual([200, 100, 311]);
  expect(timeline.spans.map(({ from, to }) => [from, to])).toEqual([
    ...[
      [0, 80],
      [80, 100],
      [100, 150],
      [150, 200],
      [200, 300],
      [300, 310],
      [310, 311],
    ],
  ]);
});

test('a shop of holidays alone has no working day', () => {
  const calendar = new Calendar({ weekdays: [1], holidays: [start] }, start);
  expect([calendar.dayAt(0), calendar.before('2026-12-08'), calendar.works(start)]).toEqual([
    '2026-12-07',
    1,
    false,
  ]);
  const mondays = Array.from({ length: 600 }, (_, week) => new Date(Date.UTC(2026, 10, 30 + 7 * week)));
  const never = { weekdays: [1], holidays: mondays.map((day) => day.toISOString().slice(0, 10)) };
  expect(() => new Calendar(never, start).dayAt(0)).toThrow('the holidays leave no working day');
});

describe('a plan', () => {
  const planned = (jobs: readonly Job[], benches?: readonly Bench[]) => planJobs(taskOf(jobs, benches)).jobs;

  test('has each job from its minute to its minute, the next the same day, and due that very day is in time', () => {
    expect(
      planned([
        { id: 'a', minutes: 150, due: '2026-12-01' },
        { id: 'b', minutes: 50, due: '2026-12-01' },
        { id: 'c', minutes: 100 },
      ]),
    ).toEqual([
      {
        id: 'a',
        bench: 'b',
        startDay: start,
        startMinute: 50,
        endDay: '2026-12-01',
        endMinute: 100,
        promise: '2026-12-01',
        lateBy: 0,
      },
      {
        id: 'b',
        bench: 'b',
        startDay: start,
        startMinute: 0,
        endDay: start,
        endMinute: 50,
        promise: '2026-12-01',
        lateBy: 0,
      },
      {
        id: 'c',
        bench: 'b',
        startDay: '2026-12-02',
        startMinute: 0,
        endDay: '2026-12-02',
        endMinute: 100,
        promise: '2026-12-02',
        lateBy: 0,
      },
    ]);
  });

  test('counts working days of delay: due on Friday and done on Monday is one, due the day before the start two', () => {
    const late = (minutes: number, due: string) => planned([{ id: 'a', minutes, due }])[0]!;
    expect(late(501, '2026-12-04')).toMatchObject({ lateBy: 1, endDay: '2026-12-07', promise: '2026-12-07' });
    expect(late(500, '2026-12-04')).toMatchObject({ lateBy: 0, promise: '2026-12-04' });
    expect(late(101, '2026-11-29')).toMatchObject({ lateBy: 2 });
    expect(late(1, '2026-11-27')).toMatchObject({ lateBy: 1, promise: start });
  });

  test('puts a late job, and then one without a day, where it is done first: on the free or the quicker bench', () => {
    const benches = [everyDay, { id: 'q', minutesADay: 200 }];
    const jobs = planned(
      [
        { id: 'late', minutes: 200, due: '2026-11-29' },
        { id: 'none', minutes: 100 },
        { id: 'wait', minutes: 10, from: '2026-12-03' },
      ],
      benches,
    );
    expect(jobs.map(({ id, bench, endDay }) => [id, bench, endDay])).toEqual([
      ['late', 'q', start],
      ['none', 'b', start],
      ['wait', 'q', '2026-12-03'],
    ]);
  });

  test('keeps as many on time as whole jobs fit on the benches, and proves no more than it tried', () => {
    const equal = (count: number): Job[] =>
      Array.from({ length: count }, (_, i) => ({ id: `${i}`, minutes: 60, due: '2026-12-04' }));
    const benches = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ id, minutesADay: 100 }));
    // Eight of 60 minutes in 500 on each; 41 of the 2500 of all.
    expect(planJobs(taskOf(equal(45), benches)).late).toEqual({ value: 5, bound: 4 });
    expect(planJobs(taskOf(equal(20), benches.slice(0, 2))).late).toEqual({ value: 4, bound: 4 });
    expect(planJobs(taskOf(equal(12), benches.slice(0, 1))).late).toEqual({ value: 4, bound: 4 });
  });

  const many = (count: number, job: Omit<Job, 'id'>): Job[] =>
    Array.from({ length: count }, (_, i) => ({ id: `many ${i}`, ...job }));

  test('gives up two long jobs for three short ones, where one for one gains nothing', () => {
    const jobs = [
      { id: 'long', minutes: 15, due: '2026-12-01' },
      { id: 'longer', minutes: 15, due: '2026-12-02' },
      ...many(11, { minutes: 10, due: '2026-12-03' }),
    ];
    // Four of ten minutes in four days.
    expect(planJobs(taskOf(jobs, [{ id: 'b', minutesADay: 10 }])).late).toEqual({ value: 9, bound: 9 });
  });

  test('of many that wait claims no more late than must be: two fit in no time they have, one before its turn', () => {
    const jobs = [
      { id: 'too long', minutes: 150, due: start },
      { id: 'too late', minutes: 50, due: start, from: '2026-12-01' },
      { id: 'waits', minutes: 100, due: '2026-12-02', from: '2026-12-02' },
      { id: 'before', minutes: 200, due: '2026-12-03' },
      ...many(11, { minutes: 5, due: '2026-12-11', from: '2026-12-04' }),
    ];
    expect(planJobs(taskOf(jobs.slice(2))).late).toEqual({ value: 0, bound: 0 });
    const benches = [everyDay, { id: 'c', minutesADay: 100 }];
    expect(planJobs(taskOf(jobs, benches)).late).toEqual({ value: 2, bound: 2 });
  });

  test('shares few jobs among benches so that they are done early, each in an order that keeps its day', () => {
    const jobs = ['2026-12-02', '2026-12-01'].map((from, i) => ({
      ...{ id: `${i}`, minutes: 100, due: '2026-12-04', from },
    }));
    const benches = [everyDay, { id: 'a', minutesADay: 100 }];
    expect(planned(jobs, benches).map(({ endDay }) => endDay)).toEqual(['2026-12-02', '2026-12-01']);
    expect(planned(jobs).map(({ endDay }) => endDay)).toEqual(['2026-12-02', '2026-12-01']);
    const same = ['x', 'y', 'z'].map((id) => ({ id, minutes: 100, due: '2026-12-04' }));
    expect(
      new Set(planned(same, [...benches, { id: 'c', minutesADay: 100 }]).map(({ endDay }) => endDay)),
    ).toEqual(new Set([start]));
  });

  test('puts many jobs where each is done first, on benches of other days and hours too', () => {
    const all = many(14, { minutes: 40, due: '2026-12-31' });
    const jobs = planned(all, [
      { id: 'big', minutesADay: 200, weekdays: [2] },
      { id: 'small', minutesADay: 80 },
    ]);
    // Two a day on the small bench, on Tuesday five on the big one.
    const ends = ['2026-11-30', '2026-12-01', '2026-12-02', '2026-12-03', '2026-12-04'];
    expect(ends.map((day) => jobs.filter(({ endDay }) => endDay === day).length)).toEqual([2, 7, 2, 2, 1]);
    expect(jobs.map(({ id }) => id)).toEqual(all.map(({ id }) => id).sort());
  });

  test('is not made of parts of minutes, of one name twice, or of no bench', () => {
    expect(() => planned([{ id: 'a', minutes: 1.5 }])).toThrow(
      'minutes of job a is 1.5; it must be a whole number, 1 or more',
    );
    expect(() => planned([{ id: 'a', minutes: 0 }])).toThrow('1 or more');
    expect(() => planned([], [{ id: 'b', minutesADay: 0 }])).toThrow('minutes a day of bench b is 0');
    expect(() =>
      planned([
        { id: 'a', minutes: 1 },
        { id: 'a', minutes: 2 },
      ]),
    ).toThrow('a is there twice');
    expect(() => planned([], [everyDay, everyDay])).toThrow('b is there twice');
    expect(() => planned([], [])).toThrow('a schedule needs a bench');
  });
});

describe('a promise for one more', () => {
  const jobs = [
    { id: 'soon', minutes: 100, due: start },
    { id: 'slack', minutes: 100, due: '2026-12-04' },
    { id: 'none', minutes: 50 },
  ];
  const task = taskOf(jobs);
  const promised = (job: Job, of = task) => promiseFor(of, planJobs(of), job);

  test('is the first day that moves no promise, and its bench stands in that order', () => {
    // Done are soon on Monday, slack on Tuesday and none on Wednesday; slack has until Friday.
    const { day, bench, meetsDue, jobs: all } = promised({ id: 'new', minutes: 100, due: '2026-12-01' });
    expect([day, bench, meetsDue]).toEqual(['2026-12-01', 'b', true]);
    expect(all.map(({ id, endDay }) => [id, endDay])).toEqual([
      ...[
        ['soon', start],
        ['new', '2026-12-01'],
        ['none', '2026-12-02'],
        ['slack', '2026-12-03'],
      ],
    ]);
    expect(promised({ id: 'new', minutes: 100, due: start }).meetsDue).toBe(false);
    expect(promised({ id: 'new', minutes: 1 })).toMatchObject({ day: '2026-12-01', meetsDue: true });
    expect(promised({ id: 'new', minutes: 1, from: '2026-12-09' }).day).toBe('2026-12-09');
  });

  test('is on the bench that is done first, by name where both are', () => {
    const two = taskOf(jobs, [
      { id: 'z', minutesADay: 100 },
      { id: 'a', minutesADay: 100 },
    ]);
    // On a soon has Monday; on z slack can wait.
    expect(promised({ id: 'new', minutes: 100 }, two)).toMatchObject({ bench: 'z', day: start });
    expect(promised({ id: 'new', minutes: 100 }, taskOf([], two.benches))).toMatchObject({
      bench: 'a',
      day: start,
    });
  });

  test('is not given beside a plan of other jobs', () => {
    expect(() => promiseFor(taskOf([]), planJobs(task), { id: 'new', minutes: 1 })).toThrow(
      'the task has no job',
    );
  });
});
