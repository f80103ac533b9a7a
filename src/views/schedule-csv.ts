/** The schedule of a backlog as a table: one row an order, then one for each promise asked for. */
import type { Agenda } from '../work/agenda.ts';
import type { Asked } from '../work/new-work.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { lacksText } from '../words/about-shelf.ts';
import { unreadNote } from '../words/unread-note.ts';

/** Columns in order, each with what it holds. */
export const scheduleColumns = [
  ['order', 'the order'],
  ['file', 'the file it came from; empty for new work'],
  ['outcome', 'scheduled, short, asked, nothing passes, or not read'],
  ['minutes', 'minutes of work'],
  ['bench', 'the bench that does it'],
  ['starts', 'day on which it starts'],
  ['done', 'day on which it is done'],
  ['due', 'day on which it is due; empty when the order does not say'],
  ['promised', 'the due day when it is met, else the day on which it is done; empty when not known'],
  ['late_days', 'working days after the due day'],
  ['shelf', 'as the rule stock judges: good when all of it is on the shelf'],
  ['note', 'what it waits for, or why it is not scheduled'],
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

function orderRow(result: BacklogResult, { jobs, minutes, shares }: Agenda): Row {
  const { order, file } = result;
  if (!result.ok) return { order, file, outcome: 'not read', note: unreadNote(result) };
  const { paper, none } = result;
  if (paper === undefined) return { order, file, outcome: 'nothing passes', note: none };
  const [job, share] = [jobs.get(paper.key), shares.get(paper.key)];
  const note = share === undefined ? undefined : lacksText(share);
  const own = { order: paper.key, file, due: paper.order.due, shelf: share?.shelf, note };
  if (job === undefined) return { ...own, outcome: 'short' };
  return {
    ...own,
    outcome: 'scheduled',
    minutes: minutes.get(job.id),
    bench: job.bench,
    starts: job.startDay,
    done: job.endDay,
    promised: share?.certain === false ? undefined : job.promise,
    late_days: job.lateBy,
  };
}

const askedRow = ({ order, minutes, due, promise, share }: Asked): Row => ({
  order,
  outcome: 'asked',
  minutes,
  bench: promise?.bench,
  due,
  promised: promise?.day,
  shelf: share?.shelf,
  note: promise?.meetsDue === false ? 'too late for the day it is due' : share && lacksText(share),
});
