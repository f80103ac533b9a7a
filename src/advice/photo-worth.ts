/** What a photo buys: how sure the first spec is with it, and how sure it would be without. */
import type { Facts } from '../horse/facts.ts';
import type { Clearance } from '../cinch/candidate.ts';
import { lay } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { Advice, RankedSpec } from './advice.ts';

export interface PhotoWorth {
  /** First with the photo; undefined when nothing passes. */
  readonly first: RankedSpec | undefined;
  /** The same cinch as if there were no photo. */
  readonly without: Clearance | undefined;
  /** What would be first then. */
  readonly firstWithout: RankedSpec | undefined;
}

/** Holds the advice on an order against that on the same order without its photo. */
export function photoWorth(
  { specs: [first] }: Advice,
  bare: { facts: Facts; specs: readonly RankedSpec[] },
): PhotoWorth {
  const without = first === undefined ? undefined : lay(first.candidate, sideOf(bare.facts))?.clearance;
  return { first, without, firstWithout: bare.specs[0] };
}
