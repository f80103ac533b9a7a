/** Which cinch an order gets: the same on its quote, on its ticket, in the pull list and in the schedule. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import { checkCinch } from '../advice/check.ts';
import type { Judged } from '../advice/judge.ts';

/** What the customer asked for, the first of the ranking, or another of it that somebody chose. */
export type Takes = 'wish' | 'first' | 'chosen';

export interface Taken {
  readonly takes: Takes;
  readonly spec: Judged;
  /** Its rank; of a wish that differs in buckle or length from the ranked spec of its style and strands, none. */
  readonly ranked: RankedSpec | undefined;
}

/** What is tied unless somebody chooses; undefined when nothing passes. Pure. */
export function takenOf(advice: Advice): Taken | undefined {
  const { wants } = advice.facts.order;
  const wish = wants === undefined ? undefined : checkCinch(wants, 'wants', advice);
  const spec = wish?.passes === true ? wish.judged : undefined;
  // A wish that may well rub is told, not tied: the shop would have to ask first.
  if (spec !== undefined && spec.judgementOf('elbow-clearance') !== 'poor') {
    return { takes: 'wish', spec, ranked: advice.specs.find((each) => same(each, spec)) };
  }
  const [first] = advice.specs;
  return first === undefined ? undefined : { takes: 'first', spec: first, ranked: first };
}

/** A ranked spec, taken because it is the first or because somebody chose it. */
export const takenSpec = (spec: RankedSpec): Taken => ({
  takes: spec.rank === 1 ? 'first' : 'chosen',
  spec,
  ranked: spec,
});

/** Whether both are tied alike. */
export function same({ candidate: a }: Judged, { candidate: b }: Judged): boolean {
  return (
    a.style === b.style && a.strands === b.strands && a.length === b.length && a.buckle.id === b.buckle.id
  );
}
