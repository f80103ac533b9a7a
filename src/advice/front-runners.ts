/** The first two of all candidates without laying the others: what is known before cords are laid bounds how good they can be. */
import { Bounds, OUT, type Field } from './bounds.ts';
import { Contest } from './contest.ts';
import type { Criterion } from './criteria.ts';

/** Numbers of the first two, of different groups; fewer when no more pass. */
export function frontRunners(field: Field, criteria: readonly Criterion[]): number[] {
  const bounds = new Bounds(field, criteria);
  const contest = new Contest(criteria, [field.seat(), field.seat()]);
  const found: number[] = [];
  while (bounds.least < OUT && found.length < 2) {
    const members = bounds.takeLeast();
    while (members.length > 0 && found.length < 2) {
      const taken = found.map((at) => field.groupOf(at));
      contest.restart();
      for (const at of members) if (!taken.includes(field.groupOf(at))) contest.enter(at);
      if (contest.first === undefined) break;
      found.push(contest.first);
    }
  }
  return found;
}
