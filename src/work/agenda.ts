/** A backlog as jobs of the benches: hours from the labor model, due days from the orders, days and benches from the shop file. */
import { planJobs } from './schedule/plan.ts';
import { promiseFor, type NewPromise } from './schedule/promise.ts';
import type { Bench, Job, Minutes, Schedule, ScheduledJob, ScheduleTask } from './schedule/types.ts';
import type { Shop } from '../order/types.ts';
import { toDouble, type Rate } from '../units/money.ts';
import { weekdayNumber, type PromiseWindow } from './promise.ts';
import type { Keyed, Planned } from './planned.ts';

export interface Agenda {
  readonly shop: Shop;
  /** First day on which work can be done. */
  readonly from: string;
  readonly orders: readonly Keyed[];
  readonly task: ScheduleTask;
  readonly schedule: Schedule;
  /** Of each order, by its name in the backlog. */
  readonly jobs: ReadonlyMap<string, ScheduledJob>;
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
 * The schedule of a backlog from a day on. Pure.
 * @throws RangeError when the shop file lacks what `missingForAgenda` names
 */
export function agendaOf(orders: readonly Keyed[], shop: Shop, from: string): Agenda {
  const benches = benchesOf(shop);
  const task: ScheduleTask = {
    days: {
      weekdays: [...new Set(benches.flatMap(({ weekdays }) => weekdays))].sort((a, b) => a - b),
      holidays: shop.holidays,
    },
    benches,
    jobs: orders.map((order) => jobOf(order.key, order)),
    start: from,
  };
  const schedule = planJobs(task);
  const jobs = new Map(schedule.jobs.map((job) => [job.id, job]));
  return {
    shop,
    from,
    orders,
    task,
    schedule,
    jobs,
    minutes: new Map(task.jobs.map((job) => [job.id, job.minutes])),
    hours: new Map(orders.map((order) => [order.key, hoursOf(order)])),
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
type Work = Pick<Planned, 'order' | 'minutes'>;

/** Whole minutes, up, at least one. */
function wholeMinutes({ over, under }: Rate): Minutes {
  return Math.max(1, Number((over + under - 1n) / under));
}

function jobOf(id: string, { order: { due }, minutes }: Work): Job {
  if (minutes === undefined) throw new RangeError('the shop file has no labor');
  return { id, minutes: wholeMinutes(minutes), ...(due === undefined ? {} : { due }) };
}

const hoursOf = ({ minutes }: Work): number => (minutes === undefined ? 0 : toDouble(minutes) / 60);

/** Something new to be promised: an order, or hours alone. */
export interface Asked {
  /** Undefined when only hours are known. */
  readonly order: string | undefined;
  readonly minutes: Minutes;
  readonly hours: number;
  readonly due: string | undefined;
  readonly promise: NewPromise;
  /** Set when an order of that number is in the backlog already: the day on which that one is done. */
  readonly already?: string | undefined;
}

/** The first honest promise for so much more work, every promise already given kept. */
export function promiseOn(
  { task, schedule, jobs }: Agenda,
  { order, minutes, hours, due }: Omit<Asked, 'promise' | 'already'>,
): Asked {
  let id = order ?? 'new';
  while (jobs.has(id)) id += ' (new)';
  const job: Job = { id, minutes, ...(due === undefined ? {} : { due }) };
  const already = order === undefined ? undefined : jobs.get(order)?.endDay;
  return { order, minutes, hours, due, promise: promiseFor(task, schedule, job), already };
}

/** The same for an order as it would be tied. */
export function promiseForOrder(agenda: Agenda, planned: Work): Asked {
  const { minutes, due } = jobOf('', planned);
  return promiseOn(agenda, { order: planned.order.order, minutes, hours: hoursOf(planned), due });
}

/** When an order can be ready beside a backlog: as it is scheduled there when it is in it, else the first honest promise. */
export function windowBeside(agenda: Agenda, planned: Work): PromiseWindow {
  const { orders, jobs, from } = agenda;
  const own = orders.find(({ order }) => order.order === planned.order.order);
  const job = own === undefined ? undefined : jobs.get(own.key);
  const others = orders.length - (job === undefined ? 0 : 1);
  const count =
    others === 0 ? 'no other order' : `${String(others)} other ${others === 1 ? 'order' : 'orders'}`;
  const beside = `beside ${count} from ${from}`;
  if (job !== undefined) return { earliest: job.endDay, basis: `as the backlog has it scheduled ${beside}` };
  const { promise } = promiseForOrder(agenda, planned);
  return {
    earliest: promise.day,
    basis: `by the schedule of the benches, ${beside}; what is promised for those is kept`,
  };
}
