/** Which cinch an order gets, the same on every paper. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import { checkCinch } from '../advice/check.ts';
import type { Judged } from '../advice/judge.ts';

/** `chosen`: not our first. */
export type Takes = 'wish' | 'first' | 'chosen';

export interface Taken {
  readonly takes: Takes;
  readonly spec: Judged;
  /** Undefined for a wish we did not rank. */
  readonly ranked: RankedSpec | undefined;
}

/** Unless somebody chooses; undefined when nothing passes. */
export function takenOf(advice: Advice): Taken | undefined {
  const { wants } = advice.facts.order;
  const wish = wants === undefined ? undefined : checkCinch(wants, 'wants', advice);
  const spec = wish?.passes === true ? wish.judged : undefined;
  // We report a wish that may rub, but do not tie it.
  if (spec !== undefined && spec.judgementOf('elbow-clearance') !== 'poor') {
    return { takes: 'wish', spec, ranked: advice.specs.find((each) => same(each, spec)) };
  }
  const [first] = advice.specs;
  return first === undefined ? undefined : { takes: 'first', spec: first, ranked: first };
}

/** A ranked spec as taken. */
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
