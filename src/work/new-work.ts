/** New work beside a backlog: the first day, and which promises move. */
import { valueOf } from '../units/pick.ts';
import { waitText, type PromiseWindow } from './promise.ts';
import { hoursOf, jobOf, taskOf, withSchedule, type Agenda, type Tied } from './agenda.ts';
import { planJobs } from './schedule/plan.ts';
import { promiseFor, type NewPromise } from './schedule/promise.ts';
import type { Job, Minutes, ScheduledJob } from './schedule/types.ts';
import { sharedShelf, type Share } from './shelf.ts';

/** An order, or hours alone. */
export interface Asked {
  readonly key: string;
  readonly order: string | undefined;
  readonly minutes: Minutes;
  readonly hours: number;
  readonly due: string | undefined;
  /** Undefined when it needs what we can't get. */
  readonly promise: NewPromise | undefined;
  readonly share: Share | undefined;
  /** Promises this order delays at the shelf; `after` is undefined when no day is left. */
  readonly moves: readonly {
    readonly key: string;
    readonly before: string;
    readonly after: string | undefined;
  }[];
  /** Day the backlog finishes that order number. */
  readonly already?: string | undefined;
}

export interface Promised {
  readonly asked: Asked;
  readonly agenda: Agenda;
}

/** Every other promise holds. */
export function promiseOn(agenda: Agenda, minutes: Minutes): Promised {
  const key = newKey(agenda, 'new work');
  const { promise, agenda: after } = added(agenda, { id: key, minutes }, agenda.jobs);
  const asked = { key, order: undefined, minutes, hours: minutes / 60, due: undefined };
  return { asked: { ...asked, promise, share: undefined, moves: [] }, agenda: after };
}

type New = Omit<Tied, 'key'>;

/** The order takes from the shelf by due day, so those due later may wait. */
export function promiseForOrder(agenda: Agenda, planned: New): Promised {
  const { order } = planned.order;
  const key = newKey(agenda, order);
  const orders = [...agenda.orders, { ...planned, key }];
  const { shares } = sharedShelf(orders, agenda.shop, agenda.ordered);
  const beside = withShares(agenda, shares);
  const share = valueOf(shares, key);
  const job = jobOf(key, planned, share.from);
  const { promise, agenda: after } =
    share.shelf === 'refuse' ? { promise: undefined, agenda: beside } : added(beside, job, agenda.jobs);
  const asked: Asked = {
    ...{ key, order, minutes: job.minutes, hours: hoursOf(planned), due: job.due, promise, share },
    moves: movesOf(agenda, after),
    already: agenda.jobs.get(order)?.endDay,
  };
  return { asked, agenda: withSchedule({ ...after, orders }, after.schedule) };
}

function newKey({ orders, task }: Agenda, name: string): string {
  const names = new Set([...orders, ...task.jobs.map(({ id }) => ({ key: id }))].map(({ key }) => key));
  let key = name;
  while (names.has(key)) key += ' (new)';
  return key;
}

/** Rescheduled only where a wait changes. */
function withShares(agenda: Agenda, shares: Agenda['shares']): Agenda {
  const { orders } = agenda;
  const same = orders.every(({ key }) => {
    const [before, now] = [valueOf(agenda.shares, key), valueOf(shares, key)];
    return before.from === now.from && before.shelf === now.shelf;
  });
  if (same) return { ...agenda, shares };
  const ids = new Set(orders.map(({ key }) => key));
  const { jobs, ...rest } = taskOf(orders, agenda.shop, { from: agenda.from, shares });
  const task = { ...rest, jobs: [...jobs, ...agenda.task.jobs.filter(({ id }) => !ids.has(id))] };
  return withSchedule({ ...agenda, shares, task }, planJobs(task));
}

const movesOf = ({ jobs }: Agenda, after: Agenda): Asked['moves'] =>
  [...jobs.values()].flatMap(({ id, promise }) => {
    const now = after.jobs.get(id)?.promise;
    return now !== undefined && now <= promise ? [] : [{ key: id, before: promise, after: now }];
  });

/** Jobs of its bench may move within the days promised. */
function added(agenda: Agenda, job: Job, given: Agenda['jobs']): { promise: NewPromise; agenda: Agenda } {
  const { task, schedule } = agenda;
  const promise = promiseFor(task, schedule, job);
  const moved = new Map(promise.jobs.map((each) => [each.id, each]));
  const asBefore = (each: ScheduledJob): ScheduledJob => {
    const before = each.id === job.id ? promise.day : given.get(each.id)?.promise;
    return before === undefined || before < each.endDay ? each : { ...each, promise: before };
  };
  const all = [...schedule.jobs.filter(({ id }) => !moved.has(id)), ...moved.values()].map(asBefore);
  const value = all.filter(({ lateBy }) => lateBy > 0).length;
  const late = { value, bound: schedule.late.bound };
  const after = { jobs: all, late, proven: value === late.bound };
  return {
    promise,
    agenda: withSchedule({ ...agenda, task: { ...task, jobs: [...task.jobs, job] } }, after),
  };
}

/** As scheduled if the backlog has it, else the first day we can promise. */
export function windowBeside(agenda: Agenda, planned: New): PromiseWindow | undefined {
  const { orders, jobs, shares, from } = agenda;
  const own = orders.find(({ order }) => order.order === planned.order.order);
  const others = orders.length - (own === undefined ? 0 : 1);
  const count =
    others === 0 ? 'no other order' : `${String(others)} other ${others === 1 ? 'order' : 'orders'}`;
  const beside = `beside ${count} from ${from}`;
  if (own !== undefined) {
    const day = jobs.get(own.key)?.endDay;
    const basis = `as scheduled ${beside}`;
    return day === undefined
      ? undefined
      : { earliest: day, basis: basis + waitText(valueOf(shares, own.key)) };
  }
  const { asked, agenda: after } = promiseForOrder(agenda, planned);
  const { promise, moves } = asked;
  if (promise === undefined) return undefined;
  const kept =
    moves.length === 0
      ? 'those promises hold'
      : `${moves.length} of those promises ${moves.length === 1 ? 'moves' : 'move'} later`;
  return {
    earliest: promise.day,
    basis: `by the bench schedule, ${beside}; ${kept}${waitText(valueOf(after.shares, asked.key))}`,
  };
}
