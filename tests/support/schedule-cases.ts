/** Small schedules for tests, and the fewest late jobs found by trying every order on every bench. */
import fc from 'fast-check';
import type { Job, ScheduleTask } from '../../src/schedule/types.ts';
import { dayNumber, dayOf } from '../../src/units/days.ts';

export const start = '2026-11-30';
const everyDay = { weekdays: [1, 2, 3, 4, 5, 6, 7], holidays: [] };

/** The day so many days after the start. */
export const dayAfter = (days: number): string => dayOf(dayNumber(start) + days);

export interface Sketch {
  readonly minutes: number;
  /** Days after the start. */
  readonly earliest: number;
  /** Days after the start, -1 the day before it; undefined without one. */
  readonly due: number | undefined;
}

/** Jobs of up to some days, few of them free only later. */
export const sketches = (jobs: number, later: boolean): fc.Arbitrary<Sketch[]> =>
  fc.array(
    fc.record({
      minutes: fc.integer({ min: 1, max: 24 }),
      earliest: later ? fc.integer({ min: 0, max: 6 }) : fc.constant(0),
      due: fc.integer({ min: -1, max: 9 }),
    }),
    { minLength: 1, maxLength: jobs },
  );

/** A task that works on all days. */
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
    jobs: jobs.map(({ minutes, earliest, due }, i): Job => {
      const job = { id: `job ${i}`, minutes, earliest: dayAfter(earliest) };
      return due === undefined ? job : { ...job, due: dayAfter(due) };
    }),
  };
}

/** Fewest late jobs by trying every bench for every job and every order on it. The start is a Monday. */
export function fewestLate(
  jobs: readonly Sketch[],
  benches: readonly number[],
  own: readonly (readonly number[])[] = [],
): number {
  const gone = (bench: number, days: number): number => {
    const worked = Array.from({ length: days }, (_, day) => (day % 7) + 1);
    const weekdays = own[bench];
    const count =
      weekdays === undefined ? days : worked.filter((weekday) => weekdays.includes(weekday)).length;
    return count * benches[bench]!;
  };
  let fewest = jobs.length;
  const place = (left: readonly Sketch[], ends: readonly number[], late: number): void => {
    if (late >= fewest) return;
    if (left.length === 0) fewest = late;
    left.forEach((job, i) => {
      benches.forEach((_, b) => {
        const end = Math.max(ends[b]!, gone(b, job.earliest)) + job.minutes;
        const isLate = job.due !== undefined && end > gone(b, job.due + 1);
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
