/** Invented outcomes of cinches that rub below a known clearance, without the program's formulas. */
import { seededRandom } from '../../src/math/random.ts';
import type { Evidence } from '../../src/learn/evidence.ts';

export interface Truth {
  /** At this clearance one cinch in ten rubs. */
  readonly required: number;
  readonly softness: number;
  readonly give: number;
}

export function outcomesOf(count: number, seed: number, { required, softness, give }: Truth): Evidence[] {
  const random = seededRandom(seed);
  const waiting = (mean: number): number => -mean * Math.log(random.uniform());
  const happens = (logOdds: number): boolean => random.uniform() < 1 / (1 + Math.exp(-logOdds));
  return Array.from({ length: count }, (): Evidence => {
    const clearance = { value: 1.35 + 0.22 * random.normal(), sd: 0.2 + 0.3 * random.uniform() };
    const slack = { value: 6.5 + random.normal(), sd: 0.25 + random.uniform() };
    const ridden = Math.floor(waiting(40));
    const truly = clearance.value + clearance.sd * random.normal();
    const run = slack.value + slack.sd * random.normal() - give / 2;
    const rubs = happens((required - truly) / softness + Math.log(0.1 / 0.9)) ? waiting(14) : Infinity;
    const long = happens((3 - run) / 0.5) ? waiting(5) : Infinity;
    const short = happens((run - 10) / 0.5) ? waiting(5) : Infinity;
    const first = Math.min(rubs, long, short);
    if (first > ridden) return { result: 'good', days: ridden, clearance, slack };
    const result = first === rubs ? 'elbow-rub' : first === long ? 'too-long' : 'too-short';
    return { result, days: Math.ceil(first), clearance, slack };
  });
}

/** One report. */
export const one = (result: Evidence['result'], value: number, days = 60): Evidence => ({
  result,
  days,
  clearance: { value, sd: 0.2 },
  slack: { value: 6.5, sd: 0.3 },
});
export const many = (count: number, each: Evidence): Evidence[] => Array.from({ length: count }, () => each);
