/** The schedule of a backlog as a paper: what is late, who starts what when, what can be promised. */
import type { Agenda, Asked } from '../paper/agenda.ts';
import type { Keyed } from '../paper/planned.ts';
import { decimals } from '../units/print.ts';
import { counted, leftOutBlocks, provisionalNotice, type BacklogResult } from './about-backlog.ts';
import { under, type Block, type Sheet } from './sheet.ts';

/** The paper; `asked` is what somebody wants promised. */
export function scheduleSheet(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): Sheet {
  const { orders, shop, from, task } = agenda;
  const minutes = task.jobs.reduce((sum, job) => sum + job.minutes, 0);
  return {
    title: `Schedule of ${counted(orders.length, 'order')} from ${from}`,
    shop: shop.name,
    about: [
      `${hoursText(minutes)} of work by the labor of the shop file.`,
      `Benches: ${shop.benches.map(benchText).join('; ')}.`,
    ],
    notice: provisionalNotice(orders),
    blocks: [
      ...under('New work', [{ kind: 'list', items: asked.map(askedText) }]),
      ...under('Late', lateBlocks(agenda)),
      ...under('Jobs', [jobsTable(agenda)]),
      ...under('Not all on the shelf: the wait for what is ordered is not counted', [
        { kind: 'list', items: waiting(orders) },
      ]),
      ...leftOutBlocks(results),
    ],
    rules: [],
    cautions: [],
  };
}

/** "1.65 h". */
const hoursText = (minutes: number): string => `${String(Number(decimals(minutes / 60, 2)))} h`;

const benchText = ({ name, hours, days }: Agenda['shop']['benches'][number]): string =>
  `${name} ${hoursText((60 * hours.over) / hours.under)} on ${days.join(', ')}`;

/** How many are late, whether fewer could be, and which. */
function lateBlocks({ orders, schedule: { jobs, late, proven } }: Agenda): Block[] {
  if (orders.length === 0) return [];
  const due = new Map(orders.map(({ key, order }) => [key, order.due]));
  const items = jobs
    .filter(({ lateBy }) => lateBy > 0)
    .map(
      ({ id, endDay, lateBy }) =>
        `${id}: due ${due.get(id) ?? ''}, done ${endDay}, ${counted(lateBy, 'working day')} late.`,
    );
  const of = `${String(late.value)} of ${counted(jobs.length, 'job')} ${late.value === 1 ? 'is' : 'are'} late`;
  const bound = proven
    ? 'the fewest possible'
    : `no schedule has fewer than ${String(late.bound)}; whether one has fewer than ${String(late.value)} is not known`;
  const text = late.value === 0 ? 'No job is late.' : `${of}: ${bound}.`;
  return [
    { kind: 'text', tone: 'strong', text },
    { kind: 'list', items },
  ];
}

/** By the day and minute of the start; the day done of a late job is the honest one. */
function jobsTable({ task, schedule, minutes }: Agenda): Block {
  const place = new Map(task.benches.map(({ id }, i) => [id, i]));
  const jobs = [...schedule.jobs].sort(
    (a, b) =>
      Number(a.startDay > b.startDay) - Number(a.startDay < b.startDay) ||
      (place.get(a.bench) ?? 0) - (place.get(b.bench) ?? 0) ||
      a.startMinute - b.startMinute,
  );
  return {
    kind: 'table',
    columns: [
      { head: 'Order' },
      { head: 'Hours', align: 'right' },
      { head: 'Bench' },
      { head: 'Starts' },
      { head: 'Done' },
      { head: 'Promised' },
    ],
    rows: jobs.map(({ id, bench, startDay, endDay, promise, lateBy }) => [
      id,
      String(Number(decimals((minutes.get(id) ?? 0) / 60, 2))),
      bench,
      startDay,
      endDay,
      lateBy === 0 ? promise : `${String(lateBy)} d late`,
    ]),
  };
}

const waiting = (orders: readonly Keyed[]): string[] => {
  const names = orders
    .filter(({ shelf }) => shelf !== 'good' && shelf !== 'not-applicable')
    .map(({ key }) => key);
  return names.length === 0 ? [] : [`${names.join(', ')}.`];
};

/** What can be promised, and that it holds. */
function askedText({ order, minutes, due, promise: { day, bench, meetsDue } }: Asked): string {
  const what =
    order === undefined ? `New work of ${hoursText(minutes)}` : `Order ${order}, ${hoursText(minutes)}`;
  const asked =
    due === undefined
      ? ''
      : meetsDue
        ? `; that is by ${due}, when it is due`
        : `; too late for ${due}, when it is due`;
  return `${what}: can be promised for ${day} (${bench})${asked}. No promise below is broken for it.`;
}
