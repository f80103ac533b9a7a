/** The scheduling task in working days from the start. */
import { byText } from '../../units/by-text.ts';
import { dayNumber } from '../../units/days.ts';
import { BenchTime } from './bench-time.ts';
import { Calendar } from './calendar.ts';
import type { Job, ScheduleTask } from './types.ts';

export interface Work {
  readonly id: string;
  readonly minutes: number;
  /** Working days to the end of its due day; Infinity without one. */
  readonly due: number;
  /** Working days before it may start. */
  readonly from: number;
  readonly job: Job;
}

export interface Shop {
  readonly calendar: Calendar;
  /** Most work per day first. */
  readonly benches: readonly BenchTime[];
}

/** Jobs by due day. @throws RangeError on minutes that are not whole, ids used twice, or no bench */
export function workOf(task: ScheduleTask): { shop: Shop; works: Work[] } {
  checkTask(task);
  const calendar = new Calendar(task.days, task.start);
  const benches = [...task.benches]
    .sort((a, b) => b.minutesADay - a.minutesADay || byText(a.id, b.id))
    .map((bench) => new BenchTime(bench, task, calendar));
  const works = task.jobs.map((job) => workOn(calendar, task.start, job)).sort(byDue);
  return { shop: { calendar, benches }, works };
}

/** `start` is day 0. */
export function workOn(calendar: Calendar, start: string, job: Job): Work {
  const { id, minutes, due, from } = job;
  const overdue = due !== undefined && dayNumber(due) < dayNumber(start);
  return {
    ...{ id, minutes, job, from: from === undefined ? 0 : calendar.before(from) },
    due: due === undefined ? Infinity : overdue ? 0 : calendar.through(due),
  };
}

/** By due day, then shorter, then id. */
export function byDue(a: Work, b: Work): number {
  if (a.due !== b.due) return a.due < b.due ? -1 : 1;
  return a.minutes - b.minutes || byText(a.id, b.id);
}

function checkTask({ benches, jobs }: ScheduleTask): void {
  if (benches.length === 0) throw new RangeError('a schedule needs a bench');
  for (const { id, minutesADay } of benches) whole(`minutes a day of bench ${id}`, minutesADay, 1);
  for (const { id, minutes } of jobs) whole(`minutes of job ${id}`, minutes, 1);
  for (const list of [benches, jobs]) {
    const seen = new Set<string>();
    for (const { id } of list) {
      if (seen.has(id)) throw new RangeError(`${id} is there twice`);
      seen.add(id);
    }
  }
}

function whole(what: string, value: number, least: number): void {
  if (!Number.isSafeInteger(value) || value < least) {
    throw new RangeError(`${what} is ${value}; it must be a whole number, ${least} or more`);
  }
}
