/** The schedule for scripts, work in minutes; as a table, one row per order, then per promise. */
import { jsonText } from '../pages/json.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { lacksText } from '../words/about-shelf.ts';
import type { Name } from '../words/names.ts';
import type { Agenda } from '../work/agenda.ts';
import type { Asked } from '../work/new-work.ts';
import type { Keyed } from '../work/planned.ts';
import { orderValue, shelfValue } from './materials-data.ts';
import { paperRow, paperValue } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `{ schema, day, results, late, benches, promises }`. */
export function scheduleJson(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): string {
  const { from, schedule, task } = agenda;
  return jsonText({
    schema: 'cinchwright/schedule/1',
    day: from,
    results: results.map((result) => paperValue(result, (paper) => jobValue(paper, agenda))),
    late: { ...schedule.late, proven: schedule.proven },
    benches: task.benches.map(({ id, minutesADay, weekdays = [] }) => ({
      bench: id,
      minutesADay,
      weekdays: [...weekdays],
    })),
    promises: asked.map(askedValue),
  });
}

function jobValue(paper: Keyed, { jobs, minutes, shares }: Agenda): Values {
  const job = jobs.get(paper.key);
  const told = ['bench', 'startDay', 'startMinute', 'endDay', 'endMinute', 'promise'] as const;
  return {
    ...orderValue(paper, shares),
    minutes: minutes.get(paper.key) ?? null,
    due: paper.order.due ?? null,
    ...Object.fromEntries(told.map((key) => [key, job?.[key] ?? null])),
    lateDays: job?.lateBy ?? null,
    // No promise without a known delivery day.
    ...(shares.get(paper.key)?.certain === false ? { promise: null } : {}),
  };
}

const askedValue = ({ order, minutes, due, promise, share, moves }: Asked): Values => ({
  order: order ?? null,
  minutes,
  due: due ?? null,
  promise: promise?.day ?? null,
  bench: promise?.bench ?? null,
  meetsDue: promise?.meetsDue ?? null,
  ...shelfValue(share),
  movedPromises: moves.map(({ key, before, after }) => ({
    order: key,
    promiseBefore: before,
    promise: after ?? null,
  })),
});

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

/** The table. */
export function scheduleCsv(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): string {
  return tableCsv(scheduleColumns, [
    ...results.map((result) => ({
      list: 'order',
      ...paperRow(result, (paper) => jobRow(paper, agenda)),
    })),
    ...asked.map((each) => ({ list: 'promise', ...askedRow(each) })),
  ]);
}

function jobRow(paper: Keyed, agenda: Agenda): Values {
  const { jobs, shares } = agenda;
  const share = shares.get(paper.key);
  return {
    ...jobValue(paper, agenda),
    note: share && lacksText(share),
    reason: jobs.has(paper.key) ? undefined : 'short',
  };
}

const askedRow = (asked: Asked): Values => ({
  ...askedValue(asked),
  note: asked.share && lacksText(asked.share),
  reason: asked.promise?.meetsDue === false ? 'too late for the due day' : undefined,
});
