/** The schedule of a backlog for scripts: orders by number whatever the order of the files, work in minutes. */
import type { Agenda, Asked } from '../work/agenda.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { jsonText } from '../pages/json.ts';
import { resultValue } from './materials-json.ts';

/** Whole document: `{ schema, from, results, late, benches, promises }`. */
export function scheduleJson(
  agenda: Agenda,
  asked: readonly Asked[],
  results: readonly BacklogResult[],
): string {
  const { from, schedule, task } = agenda;
  return jsonText({
    schema: 'cinchwright/schedule/1',
    from,
    results: results.map((result) => ({ ...resultValue(result), ...jobValue(result, agenda) })),
    late: { count: schedule.late.value, bound: schedule.late.bound, proven: schedule.proven },
    benches: task.benches.map(({ id, minutesADay, weekdays = [] }) => ({
      name: id,
      minutesADay,
      weekdays: [...weekdays],
    })),
    promises: asked.map(({ order, minutes, due, promise }) => ({
      order: order ?? null,
      minutes,
      due: due ?? null,
      day: promise.day,
      bench: promise.bench,
      meetsDue: promise.meetsDue,
    })),
  });
}

function jobValue(result: BacklogResult, { jobs, minutes }: Agenda): Record<string, unknown> {
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
    lateBy,
    shelf: paper.shelf ?? null,
  };
}
