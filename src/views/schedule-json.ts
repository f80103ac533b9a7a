/** The schedule of a backlog for scripts: orders by number whatever the order of the files, work in minutes. */
import type { Agenda, Asked } from '../work/agenda.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { jsonText } from '../pages/json.ts';
import { resultValue } from './materials-json.ts';
import type { Values } from './table.ts';

/** Whole document: `{ schema, day, results, late, benches, promises }`. */
export function scheduleJson(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): string {
  const { from, schedule, task } = agenda;
  return jsonText({
    schema: 'cinchwright/schedule/1',
    day: from,
    results: results.map((result) => ({ ...resultValue(result), ...jobValue(result, agenda) })),
    late: { ...schedule.late, proven: schedule.proven },
    benches: task.benches.map(({ id, minutesADay, weekdays = [] }) => ({
      bench: id,
      minutesADay,
      weekdays: [...weekdays],
    })),
    promises: asked.map(({ order, minutes, due, promise }) => ({
      order: order ?? null,
      minutes,
      due: due ?? null,
      promise: promise.day,
      bench: promise.bench,
      meetsDue: promise.meetsDue,
    })),
  });
}

function jobValue(result: BacklogResult, { jobs, minutes }: Agenda): Values {
  const paper = result.ok ? result.paper : undefined;
  const job = paper === undefined ? undefined : jobs.get(paper.key);
  if (paper === undefined || job === undefined) return {};
  const { bench, startDay, startMinute, endDay, endMinute, promise, lateBy } = job;
  return {
    minutes: minutes.get(job.id) ?? null,
    due: paper.order.due ?? null,
    bench,
    startDay,
    startMinute,
    endDay,
    endMinute,
    promise,
    lateDays: lateBy,
    shelf: paper.shelf ?? null,
  };
}
