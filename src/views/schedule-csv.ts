/** The schedule of a backlog as a table: one row an order, then one for each promise asked for. */
import type { Agenda, Asked } from '../work/agenda.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import type { Name } from '../words/names.ts';
import { failedRow } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** In order. */
export const scheduleColumns: readonly Name[] = [
  'list',
  'order',
  'file',
  'minutes',
  'bench',
  'startDay',
  'endDay',
  'due',
  'promise',
  'lateDays',
  'shelf',
  'reason',
  'problem',
];

/** The table with its head. */
export function scheduleCsv(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): string {
  return tableCsv(scheduleColumns, [
    ...results.map((result) => orderRow(result, agenda)),
    ...asked.map(askedRow),
  ]);
}

function orderRow(result: BacklogResult, { jobs, minutes }: Agenda): Values {
  const list = 'order';
  if (!result.ok) return { list, ...failedRow(result) };
  const { order, file, paper, none } = result;
  const job = paper === undefined ? undefined : jobs.get(paper.key);
  if (paper === undefined || job === undefined) return { list, order, file, reason: none };
  const { bench, startDay, endDay, promise, lateBy: lateDays } = job;
  return {
    list,
    order: paper.key,
    file,
    minutes: minutes.get(job.id),
    bench,
    startDay,
    endDay,
    due: paper.order.due,
    promise,
    lateDays,
    shelf: paper.shelf,
  };
}

const askedRow = ({ order, minutes, due, promise }: Asked): Values => ({
  list: 'promise',
  order,
  minutes,
  bench: promise.bench,
  due,
  promise: promise.day,
  reason: promise.meetsDue ? undefined : 'too late for the day it is due',
});
