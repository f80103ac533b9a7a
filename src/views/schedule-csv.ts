/** The schedule as a table: one row per order, then one per promise asked for. */
import type { Agenda } from '../work/agenda.ts';
import type { Asked } from '../work/new-work.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { lacksText } from '../words/about-shelf.ts';
import type { Name } from '../words/names.ts';
import { failedRow } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `list` is order or promise. */
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
  'note',
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

function orderRow(result: BacklogResult, { jobs, minutes, shares }: Agenda): Values {
  const list = 'order';
  if (!result.ok) return { list, ...failedRow(result) };
  const { order, file, paper, none } = result;
  if (paper === undefined) return { list, order, file, reason: none };
  const [job, share] = [jobs.get(paper.key), shares.get(paper.key)];
  const note = share === undefined ? undefined : lacksText(share);
  const own = { list, order: paper.key, file, due: paper.order.due, shelf: share?.shelf, note };
  if (job === undefined) return { ...own, reason: 'short' };
  return {
    ...own,
    minutes: minutes.get(job.id),
    bench: job.bench,
    startDay: job.startDay,
    endDay: job.endDay,
    promise: share?.certain === false ? undefined : job.promise,
    lateDays: job.lateBy,
  };
}

const askedRow = ({ order, minutes, due, promise, share }: Asked): Values => ({
  list: 'promise',
  order,
  minutes,
  bench: promise?.bench,
  due,
  promise: promise?.day,
  shelf: share?.shelf,
  note: share && lacksText(share),
  reason: promise?.meetsDue === false ? 'too late for the due day' : undefined,
});
