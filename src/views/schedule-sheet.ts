/** The schedule: what we can promise, what is late or waits, and each bench's jobs. */
import type { Agenda, Tied } from '../work/agenda.ts';
import type { Asked } from '../work/new-work.ts';
import type { ScheduledJob } from '../work/schedule/types.ts';
import { plural } from '../units/phrase.ts';
import { decimals, formatLength } from '../units/print.ts';
import { doubtBlocks, leftOutBlocks, provisionalNotice, type BacklogResult } from '../words/about-backlog.ts';
import { shortBlocks } from '../words/about-shelf.ts';
import { left, right, under, type Block, type Sheet } from '../pages/sheet.ts';
import { capital } from '../units/text.ts';

/** `asked` is new work, already part of the agenda. */
export function scheduleSheet(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): Sheet {
  const { orders, shop, from } = agenda;
  const known = orders.length - asked.filter(({ order }) => order !== undefined).length;
  const hours = [...agenda.hours.values()].reduce((sum, each) => sum + each, 0);
  return {
    title: `Schedule of ${plural(known, 'order')}${asked.length === 0 ? '' : ' and new work'} from ${from}`,
    shop: shop.name,
    about: [
      `${hoursText(hours)} of work, by the labor times in the shop file.`,
      `Benches: ${shop.benches.map(benchText).join('; ')}.`,
    ],
    notice: provisionalNotice(orders),
    blocks: [
      ...doubtBlocks(orders),
      ...under('New work', [{ kind: 'list', items: asked.map((each) => askedText(each, agenda)) }]),
      ...under('Late', lateBlocks(agenda)),
      ...shortBlocks(agenda.shares, agenda.ordered),
      ...shop.benches.flatMap(({ name }) => under(capital(name), jobsTable(agenda, name))),
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

function lateBlocks({ orders, schedule: { jobs, late, proven } }: Agenda): Block[] {
  if (jobs.length === 0) return [];
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
    : `no schedule has fewer than ${String(late.bound)}; we don't know whether one has fewer than ${String(late.value)}`;
  const text = late.value === 0 ? 'No job is late.' : `${of}: ${bound}.`;
  return [
    { kind: 'text', tone: 'strong', text },
    { kind: 'list', items },
  ];
}

/** A late job is promised for the day it is done; without a known delivery day there is no promise. */
function jobsTable(agenda: Agenda, bench: string): Block[] {
  const { schedule, hours, shares } = agenda;
  const jobs = schedule.jobs
    .filter((job) => job.bench === bench)
    .sort(
      (a, b) =>
        Number(a.startDay > b.startDay) - Number(a.startDay < b.startDay) || a.startMinute - b.startMinute,
    );
  if (jobs.length === 0) return [];
  const promise = ({ id, promise: day }: ScheduledJob): string =>
    shares.get(id)?.certain === false ? 'when it comes' : day;
  return [
    {
      kind: 'table',
      columns: [...left('Order'), ...right('Hours'), ...left('Starts', 'Done', 'Promised')],
      rows: jobs.map((job) => [
        nameText(job.id, agenda),
        decimals(hours.get(job.id) ?? 0, 2),
        job.startDay,
        job.endDay,
        promise(job),
      ]),
    },
  ];
}

/** "2411 Marble, straight 19, 32 in"; hours alone have only a name. */
function nameText(key: string, { orders }: Pick<Agenda, 'orders'>): string {
  const own = orders.find((order) => order.key === key);
  return own === undefined ? capital(key) : orderText(own);
}

function orderText({
  key,
  candidate: { style, strands, length },
  ticket: { horse, quantity },
}: Tied): string {
  const many = quantity === 1 ? '' : `${String(quantity)} x `;
  const name = horse === undefined ? key : `${key} ${horse}`;
  return `${name}, ${many}${style} ${String(strands)}, ${formatLength(length, 'in')}`;
}

function askedText(asked: Asked, agenda: Agenda): string {
  const { key, order, hours, due, already, promise, share } = asked;
  const what = order === undefined ? `New work` : `Order ${nameText(key, agenda)}`;
  const before =
    already === undefined
      ? ''
      : ` The backlog already has an order with that number, done ${already}; this would be a second.`;
  if (promise === undefined) return `${what}: cannot be promised.${movesText(asked)}${before}`;
  const { day, bench, meetsDue } = promise;
  const wait =
    share?.certain === false ? ', if what we order for it is here by then (the shop file does not say)' : '';
  const asksFor =
    due === undefined
      ? ''
      : meetsDue
        ? `, in time for ${due}, when it is due`
        : `, too late for ${due}, when it is due`;
  return `${what}, ${hoursText(hours)}: can be promised for ${day} (${bench})${wait}${asksFor}.${movesText(asked)}${before}`;
}

function movesText({ moves }: Asked): string {
  if (moves.length === 0) return ' Nothing else moves.';
  const later = moves.map(({ key, before, after }) =>
    after === undefined ? `${key} can no longer be promised` : `${key} from ${before} to ${after}`,
  );
  return ` It takes cord or hardware before later orders; these promises move: ${later.join(', ')}.`;
}
