/** The first two of all candidates without laying the others: what is known before cords are laid bounds how good they can be. */
import { Bounds, OUT } from './bounds.ts';
import { Contest, type Entrant } from './contest.ts';
import type { Criterion } from './criteria.ts';

/** What is asked of the candidates, which are numbers from 0: what is tied by what is tied, and of each one of every length. */
export interface Field {
  readonly size: number;
  readonly lengths: number;
  /** Number of its style and strand count, and of its buckle at its length. */
  readonly groupOf: (at: number) => number;
  readonly hangOf: (at: number) => number;
  /** Verdicts of rules that look at what is tied, and at where it hangs; packed. */
  readonly makeTally: (at: number) => number;
  readonly hangTally: (at: number) => number;
  /** All verdicts. */
  readonly tally: (at: number) => number;
  readonly passes: (at: number) => boolean;
  readonly seat: () => Entrant;
}

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
