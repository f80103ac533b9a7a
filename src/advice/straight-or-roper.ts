/** Straight or roper: each other style's best, and why not first. */
import type { Style } from '../order/types.ts';
import { styleIds } from '../cinch/styles.ts';
import { say, type Phrase } from '../units/phrase.ts';
import type { Advice, RankedSpec } from './advice.ts';

export interface OtherStyle {
  readonly style: Style;
  readonly spec: RankedSpec | undefined;
  readonly why: Phrase;
  /** Undefined when none passes. */
  readonly criterion: string | undefined;
}

/** All three when nothing passes. */
export function otherStyles(
  advice: Pick<Advice, 'first' | 'specs' | 'refused' | 'firstBefore'>,
): OtherStyle[] {
  const { first, specs, refused } = advice;
  const others = styleIds.filter((style) => style !== first?.candidate.style);
  return others.map((style) => {
    const spec = specs.find(({ candidate }) => candidate.style === style);
    if (spec !== undefined) {
      const { words, criterion } = advice.firstBefore(spec);
      return { style, spec, why: words, criterion };
    }
    const narrowest = refused.find((entry) => entry.style === style);
    return {
      style,
      spec,
      criterion: undefined,
      why: narrowest?.reason ?? say`no room below the buckle`,
    };
  });
}
