/** A backlog as jobs of the benches: hours from the labor model, due days from the orders, deliveries, days and benches from the shop file. */
import { planJobs } from './schedule/plan.ts';
import type { Bench, Job, Minutes, Schedule, ScheduledJob, ScheduleTask } from './schedule/types.ts';
import type { Shop } from '../order/types.ts';
import { toDouble, type Rate } from '../units/money.ts';
import { weekdayNumber } from './promise.ts';
import type { Keyed } from './planned.ts';
import { sharedShelf, type Share } from './shelf.ts';

/** Days an agenda starts from. */
export interface From {
  /** First day on which work can be done. */
  readonly from: string;
  /** The day on which what is short is ordered. */
  readonly ordered: string;
}

/** An order as it will be tied. */
export type Tied = Pick<Keyed, 'key' | 'order' | 'candidate' | 'ticket' | 'minutes' | 'doubts' | 'welfare'>;

export interface Agenda extends From {
  readonly shop: Shop;
  readonly orders: readonly Tied[];
  readonly task: ScheduleTask;
  readonly schedule: Schedule;
  /** Of each order that can be tied, by its name in the backlog. */
  readonly jobs: ReadonlyMap<string, ScheduledJob>;
  /** What each order finds on the shelf. */
  readonly shares: ReadonlyMap<string, Share>;
  readonly minutes: ReadonlyMap<string, Minutes>;
  /** The same as it is told: to the hundredth of an hour, before it is rounded up to whole minutes. */
  readonly hours: ReadonlyMap<string, number>;
}

/** What a shop file must say before anything can be scheduled; empty when it says it all. */
export const missingForAgenda = ({ labor, benches }: Shop): string[] => [
  ...(labor === undefined ? ['how long tying takes (labor)'] : []),
  ...(benches.length === 0 ? ['who works when (benches)'] : []),
];

/**
 * The schedule of a backlog. Orders that lack what is not to be had are no jobs. Pure.
 * @throws RangeError when the shop file lacks what `missingForAgenda` names
 */
export function agendaOf(orders: readonly Tied[], shop: Shop, days: From): Agenda {
  const { shares } = sharedShelf(orders, shop, days.ordered);
  const task = taskOf(orders, shop, { ...days, shares });
  return withSchedule({ shop, ...days, orders, shares, task }, planJobs(task));
}

/** What is to be scheduled when so much of the shelf is each order's. */
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
      const share = shares.get(order.key);
      return share?.shelf === 'refuse' ? [] : [jobOf(order.key, order, share?.from)];
    }),
    start: from,
  };
}

/** An agenda with everything that is looked up in it. */
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

/** Whole minutes, down: what is less cannot be promised. */
const benchesOf = ({ benches }: Shop): (Bench & { weekdays: readonly number[] })[] =>
  benches.map(({ name, hours, days }) => ({
    id: name,
    minutesADay: Math.floor((hours.over * 60) / hours.under),
    weekdays: days.map((day) => weekdayNumber[day]),
  }));

/** An order with its minutes, whatever spec is taken for it. */
type Work = Pick<Tied, 'order' | 'minutes'>;

/** Whole minutes, up, at least one. */
function wholeMinutes({ over, under }: Rate): Minutes {
  return Math.max(1, Number((over + under - 1n) / under));
}

/** An order as a job that waits for a day. */
export function jobOf(id: string, { order: { due }, minutes }: Work, from: string | undefined): Job {
  if (minutes === undefined) throw new RangeError('the shop file has no labor');
  return {
    ...{ id, minutes: wholeMinutes(minutes) },
    ...(due === undefined ? {} : { due }),
    ...(from === undefined ? {} : { from }),
  };
}

/** Hours as they are told. */
export const hoursOf = ({ minutes }: Work): number => (minutes === undefined ? 0 : toDouble(minutes) / 60);
