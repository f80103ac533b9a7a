/** The schedule for scripts, sorted by order number, work in minutes. */
import type { Agenda } from '../work/agenda.ts';
import type { Asked } from '../work/new-work.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { jsonText } from '../pages/json.ts';
import { resultValue, shelfValue } from './materials-json.ts';
import type { Values } from './table.ts';

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
    results: results.map((result) => ({
      ...resultValue(result, agenda.shares),
      ...jobValue(result, agenda),
    })),
    late: { ...schedule.late, proven: schedule.proven },
    benches: task.benches.map(({ id, minutesADay, weekdays = [] }) => ({
      bench: id,
      minutesADay,
      weekdays: [...weekdays],
    })),
    promises: asked.map(({ order, minutes, due, promise, share, moves }) => ({
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
    })),
  });
}

function jobValue(result: BacklogResult, { jobs, minutes, shares }: Agenda): Values {
  const paper = result.ok ? result.paper : undefined;
  if (paper === undefined) return {};
  const [job, share] = [jobs.get(paper.key), shares.get(paper.key)];
  const told = ['bench', 'startDay', 'startMinute', 'endDay', 'endMinute', 'promise'] as const;
  return {
    minutes: minutes.get(paper.key) ?? null,
    due: paper.order.due ?? null,
    ...Object.fromEntries(told.map((key) => [key, job?.[key] ?? null])),
    lateDays: job?.lateBy ?? null,
    // No promise without a known delivery day.
    ...(share?.certain === false ? { promise: null } : {}),
  };
}
