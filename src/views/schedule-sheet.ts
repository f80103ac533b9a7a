/** The schedule of a backlog as a paper: what is late, who starts what when, what can be promised. */
import type { Agenda, Asked } from '../work/agenda.ts';
import type { Keyed } from '../work/planned.ts';
import { plural } from '../units/phrase.ts';
import { decimals } from '../units/print.ts';
import { doubtBlocks, leftOutBlocks, provisionalNotice, type BacklogResult } from '../words/about-backlog.ts';
import { under, type Block, type Sheet } from '../pages/sheet.ts';
import { capital } from '../units/text.ts';

/** The paper; `asked` is what somebody wants promised. */
export function scheduleSheet(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): Sheet {
  const { orders, shop, from } = agenda;
  const hours = [...agenda.hours.values()].reduce((sum, each) => sum + each, 0);
  return {
    title: `Schedule of ${plural(orders.length, 'order')} from ${from}`,
    shop: shop.name,
    about: [
      `${hoursText(hours)} of work by the labor of the shop file.`,
      `Benches: ${shop.benches.map(benchText).join('; ')}.`,
    ],
    notice: provisionalNotice(orders),
    blocks: [
      ...doubtBlocks(orders),
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
const hoursText = (hours: number): string => `${decimals(hours, 2)} h`;

const benchText = ({ name, hours, days }: Agenda['shop']['benches'][number]): string =>
  `${name} ${String(Number(decimals(hours.over / hours.under, 2)))} h on ${days.map(capital).join(', ')}`;

/** How many are late, whether fewer could be, and which. */
function lateBlocks({ orders, schedule: { jobs, late, proven } }: Agenda): Block[] {
  if (orders.length === 0) return [];
  const due = new Map(orders.map(({ key, order }) => [key, order.due]));
  const items = jobs
    .filter(({ lateBy }) => lateBy > 0)
    .map(
      ({ id, endDay, lateBy }) =>
        `${id}: due ${due.get(id) ?? ''}, done ${endDay}, ${plural(lateBy, 'working day')} late.`,
    );
  const of = `${String(late.value)} of ${plural(jobs.length, 'job')} ${late.value === 1 ? 'is' : 'are'} late`;
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
function jobsTable({ task, schedule, hours }: Agenda): Block {
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
      decimals(hours.get(id) ?? 0, 2),
      bench,
      startDay,
      endDay,
      lateBy === 0 ? promise : `${promise}, ${String(lateBy)} d late`,
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
function askedText({ order, hours, due, already, promise: { day, bench, meetsDue } }: Asked): string {
  const before =
    already === undefined
      ? ''
      : ` An order of that number is in the backlog already, done ${already}: this would be another.`;
  const what =
    order === undefined ? `New work of ${hoursText(hours)}` : `Order ${order}, ${hoursText(hours)}`;
  const asked =
    due === undefined
      ? ''
      : meetsDue
        ? `; that is by ${due}, when it is due`
        : `; too late for ${due}, when it is due`;
  return `${what}: can be promised for ${day} (${bench})${asked}. No promise below is broken for it.${before}`;
}
