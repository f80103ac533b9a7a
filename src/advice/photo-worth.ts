/** How sure the first spec is, with the photo and without. */
import type { Facts } from '../horse/facts.ts';
import type { Clearance } from '../cinch/candidate.ts';
import { lay } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { Advice, RankedSpec } from './advice.ts';

export interface PhotoWorth {
  readonly first: RankedSpec | undefined;
  /** The same cinch. */
  readonly without: Clearance | undefined;
  readonly firstWithout: RankedSpec | undefined;
}

/** `bare` is without the photo. */
export function photoWorth(
  { specs: [first] }: Advice,
  bare: { facts: Facts; specs: readonly RankedSpec[] },
): PhotoWorth {
  const without = first === undefined ? undefined : lay(first.candidate, sideOf(bare.facts))?.clearance;
  return { first, without, firstWithout: bare.specs[0] };
}
