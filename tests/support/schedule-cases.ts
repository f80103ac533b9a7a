/** Small schedules, and the fewest late jobs by trying all and by HiGHS. */
import fc from 'fast-check';
import type { Job, ScheduleTask } from '../../src/work/schedule/types.ts';
import { dayNumber, dayOf } from '../../src/units/days.ts';
import { optimum } from './highs.ts';

export const start = '2026-11-30';
const everyDay = { weekdays: [1, 2, 3, 4, 5, 6, 7], holidays: [] };

export const dayAfter = (days: number): string => dayOf(dayNumber(start) + days);

export interface Sketch {
  readonly minutes: number;
  /** Days after the start, -1 the day before. */
  readonly due: number | undefined;
  /** Days after the start. */
  readonly from?: number;
}

export const sketches = (jobs: number, least = 1): fc.Arbitrary<Sketch[]> =>
  fc.array(
    fc.record({
      minutes: fc.integer({ min: 1, max: 24 }),
      due: fc.integer({ min: -1, max: 9 }),
    }),
    { minLength: least, maxLength: jobs },
  );

/** Works on all days. */
export function taskOf(
  jobs: readonly Sketch[],
  benches: readonly number[],
  own: readonly (readonly number[])[] = [],
): ScheduleTask {
  return {
    days: everyDay,
    start,
    benches: benches.map((minutesADay, i) => {
      const weekdays = own[i];
      return { id: `bench ${i}`, minutesADay, ...(weekdays === undefined ? {} : { weekdays }) };
    }),
    jobs: jobs.map(({ minutes, due, from }, i): Job => {
      const job = { id: `job ${i}`, minutes, ...(from === undefined ? {} : { from: dayAfter(from) }) };
      return due === undefined ? job : { ...job, due: dayAfter(due) };
    }),
  };
}

/** Minutes a bench works in days from the start, a Monday. */
function gone(minutesADay: number, weekdays: readonly number[] | undefined, days: number): number {
  const worked = Array.from({ length: days }, (_, day) => (day % 7) + 1);
  return minutesADay * worked.filter((weekday) => weekdays?.includes(weekday) ?? true).length;
}

/** Tries every job on every bench in every order. */
export function fewestLate(
  jobs: readonly Sketch[],
  benches: readonly number[],
  own: readonly (readonly number[])[] = [],
): number {
  let fewest = jobs.length;
  const place = (left: readonly Sketch[], ends: readonly number[], late: number): void => {
    if (late >= fewest) return;
    if (left.length === 0) fewest = late;
    left.forEach((job, i) => {
      benches.forEach((minutesADay, b) => {
        const end = Math.max(ends[b]!, gone(minutesADay, own[b], job.from ?? 0)) + job.minutes;
        const isLate = job.due !== undefined && end > gone(minutesADay, own[b], job.due + 1);
        place(left.toSpliced(i, 1), ends.with(b, end), late + (isLate ? 1 : 0));
      });
    });
  };
  place(
    jobs,
    benches.map(() => 0),
    0,
  );
  return fewest;
}

/** An integer program: a bench's jobs on time fit into the days until each due day. */
export function fewestLateByHighs(jobs: readonly Sketch[], benches: readonly number[]): number {
  const name = (job: number, bench: number): string => `x${job}_${bench}`;
  const names = jobs.flatMap((_, i) => benches.map((__, b) => name(i, b)));
  const rows = jobs.flatMap(({ due = 0 }, i) => [
    `${benches.map((_, b) => name(i, b)).join(' + ')} <= 1`,
    ...benches.map((minutesADay, b) => {
      const before = jobs.flatMap((job, k) =>
        (job.due ?? 0) <= due ? [`${job.minutes} ${name(k, b)}`] : [],
      );
      return `${before.join(' + ')} <= ${gone(minutesADay, undefined, due + 1)}`;
    }),
  ]);
  const text = [
    `Maximize\n obj: ${names.join(' + ')}\nSubject To`,
    ...rows.map((row, i) => ` c${i}: ${row}`),
    `Binary\n ${names.join(' ')}\nEnd`,
  ].join('\n');
  return jobs.length - optimum(text);
}
