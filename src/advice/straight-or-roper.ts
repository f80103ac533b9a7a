/** Straight or roper? For each style not chosen: what it would be here, and why it is not first. */
import type { Style } from '../order/types.ts';
import { styleIds } from '../cinch/styles.ts';
import { say, type Phrase } from '../units/phrase.ts';
import type { Advice, RankedSpec } from './advice.ts';

export interface OtherStyle {
  readonly style: Style;
  /** The best of that style; undefined when none passes. */
  readonly spec: RankedSpec | undefined;
  /** Why it is not first. */
  readonly why: Phrase;
  /** The criterion that decided; undefined when none of that style passes. */
  readonly criterion: string | undefined;
}

/** One entry for each style that is not the first's; for all three when nothing passes. */
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
      why: narrowest?.reason ?? say`no side is left below the buckle`,
    };
  });
}
