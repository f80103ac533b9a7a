/** Like cinches on like horses, which should turn out alike. */
import { learning } from '../numbers/learning-numbers.ts';
import type { OutcomeResult } from '../numbers/outcome-results.ts';
import type { Evidence } from './evidence.ts';

/** Same spec, same measurements. */
export const alikeKey = ({ clearance, slack }: Evidence): string =>
  [clearance.value, clearance.sd, slack.value, slack.sd].join(' ');

export interface Contrary {
  /** Over k. */
  readonly clearance: number;
  readonly counts: ReadonlyMap<OutcomeResult, number>;
}

/** Both too long and too short, or many rubs and many good after long use. */
export function contraries(evidence: readonly Evidence[]): Contrary[] {
  const groups = new Map<string, Evidence[]>();
  for (const each of evidence) groups.set(alikeKey(each), [...(groups.get(alikeKey(each)) ?? []), each]);
  return [...groups.values()].filter(isContrary).map((group) => {
    const counts = new Map<OutcomeResult, number>();
    for (const { result } of group) counts.set(result, (counts.get(result) ?? 0) + 1);
    return { clearance: group[0]?.clearance.value ?? 0, counts };
  });
}

function isContrary(group: readonly Evidence[]): boolean {
  const count = (of: (each: Evidence) => boolean): number => group.filter(of).length;
  const is = (result: OutcomeResult): boolean => group.some((each) => each.result === result);
  const rubs = count(({ result }) => result === 'elbow-rub' || result === 'buckle-rub');
  const good = count(({ result, days }) => result === 'good' && days >= learning('days-to-rub'));
  const fewer = Math.min(rubs, good);
  const both = fewer >= 2 && fewer >= learning('contrary-share') * (rubs + good);
  return both || (is('too-long') && is('too-short'));
}
