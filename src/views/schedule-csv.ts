/** The schedule of a backlog as a table: one row an order, then one for each promise asked for. */
import type { Agenda, Asked } from '../work/agenda.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { unreadNote } from '../words/unread-note.ts';

/** Columns in order, each with what it holds. */
export const scheduleColumns = [
  ['order', 'the order'],
  ['file', 'the file it came from; empty for new work'],
  ['outcome', 'scheduled, asked, nothing passes, or not read'],
  ['minutes', 'minutes of work'],
  ['bench', 'the bench that does it'],
  ['starts', 'day on which it starts'],
  ['done', 'day on which it is done'],
  ['due', 'day on which it is due; empty when the order does not say'],
  ['promised', 'the due day when it is met, else the day on which it is done'],
  ['late_days', 'working days after the due day'],
  ['shelf', 'judgement of the rule stock: good when all of it is on the shelf'],
  ['note', 'why it is not scheduled'],
] as const;

type Row = Partial<Record<(typeof scheduleColumns)[number][0], Cell>>;

/** The table with its head. */
export function scheduleCsv(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): string {
  const rows = [...results.map((result) => orderRow(result, agenda)), ...asked.map(askedRow)];
  return csvText([
    scheduleColumns.map(([name]) => name),
    ...rows.map((row) => scheduleColumns.map(([name]) => row[name])),
  ]);
}

function orderRow(result: BacklogResult, { jobs, minutes }: Agenda): Row {
  const { order, file } = result;
  if (!result.ok) return { order, file, outcome: 'not read', note: unreadNote(result) };
  const { paper, none } = result;
  const job = paper === undefined ? undefined : jobs.get(paper.key);
  if (paper === undefined || job === undefined) return { order, file, outcome: 'nothing passes', note: none };
  return {
    order: paper.key,
    file,
    outcome: 'scheduled',
    minutes: minutes.get(job.id),
    bench: job.bench,
    starts: job.startDay,
    done: job.endDay,
    due: paper.order.due,
    promised: job.promise,
    late_days: job.lateBy,
    shelf: paper.shelf,
  };
}

const askedRow = ({ order, minutes, due, promise }: Asked): Row => ({
  order,
  outcome: 'asked',
  minutes,
  bench: promise.bench,
  due,
  promised: promise.day,
  note: promise.meetsDue ? undefined : 'too late for the day it is due',
});
