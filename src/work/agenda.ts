/** A backlog as jobs for the benches. */
import { planJobs } from './schedule/plan.ts';
import type { Bench, Job, Minutes, Schedule, ScheduledJob, ScheduleTask } from './schedule/types.ts';
import type { Shop } from '../order/types.ts';
import { toDouble, type Rate } from '../units/money.ts';
import { valueOf } from '../units/pick.ts';
import { weekdayNumber } from './promise.ts';
import type { Keyed } from './planned.ts';
import { sharedShelf, type Share } from './shelf.ts';

export interface From {
  readonly from: string;
  /** Day we order what is short. */
  readonly ordered: string;
}

export type Tied = Pick<Keyed, 'key' | 'order' | 'candidate' | 'ticket' | 'minutes' | 'doubts' | 'welfare'>;

export interface Agenda extends From {
  readonly shop: Shop;
  readonly orders: readonly Tied[];
  readonly task: ScheduleTask;
  readonly schedule: Schedule;
  /** By order key. */
  readonly jobs: ReadonlyMap<string, ScheduledJob>;
  readonly shares: ReadonlyMap<string, Share>;
  readonly minutes: ReadonlyMap<string, Minutes>;
  /** Before rounding up to whole minutes. */
  readonly hours: ReadonlyMap<string, number>;
}

/** What the shop file lacks for a schedule. */
export const missingForAgenda = ({ labor, benches }: Shop): string[] => [
  ...(labor === undefined ? ['how long tying takes (labor)'] : []),
  ...(benches.length === 0 ? ['who works when (benches)'] : []),
];

/**
 * Leaves out orders that need what we can't get.
 * @throws RangeError when the shop file lacks what `missingForAgenda` names
 */
export function agendaOf(orders: readonly Tied[], shop: Shop, days: From): Agenda {
  const { shares } = sharedShelf(orders, shop, days.ordered);
  const task = taskOf(orders, shop, { ...days, shares });
  return withSchedule({ shop, ...days, orders, shares, task }, planJobs(task));
}

/** Benches and jobs of a backlog. */
export function taskOf(
  orders: readonly Tied[],
  shop: Shop,
  { from, shares }: Pick<Agenda, 'from' | 'shares'>,
): ScheduleTask {
  const benches = benchesOf(shop);
  return {
    days: {
      weekdays: [...new Set(benches.flatMap(({ weekdays }) => weekdays))].sort((a, b) => a - b),
      holidays: shop.holidays,
    },
    benches,
    jobs: orders.flatMap((order) => {
      const share = valueOf(shares, order.key);
      return share.shelf === 'refuse' ? [] : [jobOf(order.key, order, share.from)];
    }),
    start: from,
  };
}

/** Adds the schedule, with lookups. */
export function withSchedule(
  agenda: Omit<Agenda, 'schedule' | 'jobs' | 'minutes' | 'hours'>,
  schedule: Schedule,
): Agenda {
  const { task, orders } = agenda;
  return {
    ...agenda,
    schedule,
    jobs: new Map(schedule.jobs.map((job) => [job.id, job])),
    minutes: new Map(task.jobs.map((job) => [job.id, job.minutes])),
    hours: new Map([
      ...task.jobs.map((job) => [job.id, job.minutes / 60] as const),
      ...orders.map((order) => [order.key, hoursOf(order)] as const),
    ]),
  };
}

/** Rounds minutes down, so we never promise time we lack. */
const benchesOf = ({ benches }: Shop): (Bench & { weekdays: readonly number[] })[] =>
  benches.map(({ name, hours, days }) => ({
    id: name,
    minutesADay: Math.floor((hours.over * 60) / hours.under),
    weekdays: days.map((day) => weekdayNumber[day]),
  }));

type Work = Pick<Tied, 'order' | 'minutes'>;

/** Rounded up, at least one. */
function wholeMinutes({ over, under }: Rate): Minutes {
  return Math.max(1, Number((over + under - 1n) / under));
}

/** An order as a job. */
export function jobOf(id: string, { order: { due }, minutes }: Work, from: string | undefined): Job {
  if (minutes === undefined) throw new RangeError('the shop file has no labor');
  return {
    ...{ id, minutes: wholeMinutes(minutes) },
    ...(due === undefined ? {} : { due }),
    ...(from === undefined ? {} : { from }),
  };
}

/** Hours as printed. */
export const hoursOf = ({ minutes }: Work): number => (minutes === undefined ? 0 : toDouble(minutes) / 60);
